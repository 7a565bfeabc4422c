namespace Poultry.Growth.Myopathy;

/// <summary>How well the two figures of <see cref="FlappingResponse"/> are known: their likelihood in the one trial, on a grid, and draws from it.</summary>
internal sealed class FlappingLikelihood
{
    /// <summary>Doses that gave lesions, and nothing at 5 cycles; the number of muscles in a group is not known, 40 is assumed for the doubt.</summary>
    private const double MusclesAGroup = 40, At10 = 0.07, At20 = 0.33;

    private const int Steps = 120;
    private const double LeastExponent = 0.3, LargestExponent = 9, LeastHalf = 15, LargestHalf = 200;

    private readonly double[] exponentBelow = new double[Steps];
    private readonly double[][] halfBelow = new double[Steps][];

    private FlappingLikelihood()
    {
        for (int i = 0; i < Steps; i++)
        {
            halfBelow[i] = new double[Steps];
            double sum = 0;
            for (int j = 0; j < Steps; j++)
            {
                sum += Math.Exp(LogLikelihood(ExponentAt(i), HalfAt(j)));
                halfBelow[i][j] = sum;
            }

            exponentBelow[i] = sum + (i == 0 ? 0 : exponentBelow[i - 1]);
        }
    }

    /// <summary>The trial of h 2.71 and C50 26.0.</summary>
    public static FlappingLikelihood OfTrial { get; } = new();

    /// <summary>h and C50 by two numbers between 0 and 1, so that even numbers give the likelihood's own spread.</summary>
    public (double Exponent, double HalfCycles) Draw(double first, double second)
    {
        double i = Place(exponentBelow, first);
        double j = Place(halfBelow[Math.Clamp((int)i, 0, Steps - 1)], second);
        return (ExponentAt(i - 0.5), HalfAt(j - 0.5));
    }

    /// <summary>Where in the cells a share of the whole is reached, in cells.</summary>
    private static double Place(double[] sums, double share)
    {
        double wanted = share * sums[^1];
        int cell = Array.BinarySearch(sums, wanted);
        cell = Math.Min(cell < 0 ? ~cell : cell, sums.Length - 1);
        double before = cell == 0 ? 0 : sums[cell - 1];
        return cell + ((wanted - before) / (sums[cell] - before));
    }

    private static double ExponentAt(double cell) => LeastExponent + ((LargestExponent - LeastExponent) * (cell + 0.5) / Steps);

    private static double HalfAt(double cell) => LeastHalf * Math.Pow(LargestHalf / LeastHalf, (cell + 0.5) / Steps);

    /// <summary>Binomial, of 0 of n at 5 cycles, 7 % at 10 and 33 % at 20; flat in h and ln C50.</summary>
    private static double LogLikelihood(double h, double half)
    {
        double Of(double share, double cycles)
        {
            double p = FlappingResponse.Share(cycles, h, half);
            return (share == 0 ? 0 : share * Math.Log(p)) + ((1 - share) * Math.Log(1 - p));
        }

        return MusclesAGroup * (Of(0, 5) + Of(At10, 10) + Of(At20, 20));
    }
}
