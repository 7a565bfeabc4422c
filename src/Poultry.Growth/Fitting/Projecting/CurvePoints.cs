using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>Points of a standard normal number, with weights that sum to 1, by which the weight of a curve is tried where birds lie about it.</summary>
internal readonly struct CurvePoints
{
    /// <summary>Below this part of the spread between birds, the doubt about the curve is smooth enough for nine points.</summary>
    private const double Narrow = 0.8;

    /// <summary>Even points go so many standard deviations out.</summary>
    private const double Reach = 4.5;

    /// <summary>The most points to one side, where birds are all but alike.</summary>
    private const int Most = 200;

    private readonly int side;
    private readonly double total;

    /// <param name="deviation">Of ln W of the curve.</param>
    /// <param name="variation">Between birds.</param>
    public CurvePoints(double deviation, double variation)
    {
        side = Side(deviation, variation);
        total = 1;
        for (int i = 1; i <= side; i++)
        {
            total += 2 * Density(i);
        }
    }

    public int Length => side == 0 ? GaussHermite.Points.Length : (2 * side) + 1;

    public (double Z, double Weight) this[int index] => side == 0
        ? (GaussHermite.Points[index], GaussHermite.Weights[index])
        : (Reach * (index - side) / side, Density(index - side) / total);

    public static int Count(double deviation, double variation) => new CurvePoints(deviation, variation).Length;

    /// <summary>How many even points to one side lie no further apart than birds do; 0 for the nine.</summary>
    private static int Side(double deviation, double variation) =>
        deviation <= Narrow * variation ? 0 : (int)Math.Min(Most, Math.Ceiling(Reach * deviation / variation));

    private double Density(int place)
    {
        double z = Reach * place / side;
        return Math.Exp(-z * z / 2);
    }
}
