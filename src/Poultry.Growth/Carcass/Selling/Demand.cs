using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>How many packs will sell at their price: a guess with its range, or without limit where the user says so.</summary>
/// <remarks>A range low, likely, high is taken for a triangular law: what sells is averaged over it, so that a demand that may fall short counts as that.</remarks>
public sealed class Demand
{
    private readonly double low, likely, high;

    private Demand(double low, double likely, double high)
    {
        (this.low, this.likely, this.high) = (low, likely, high);
        Packs = IsUnlimited ? null : LikelyRange<double>.Of(low, likely, high);
    }

    /// <summary>Whatever there is sells. To be said, never to be taken for granted.</summary>
    public static Demand Unlimited { get; } = new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>The law of demand and what sells of it.</summary>
    public static ModelInfo Model { get; } = new(
        "packs-sold",
        "Packs that sell, of an uncertain demand",
        "E min(D, s) = s - G(s), G(s) = integral of F from 0 to s, D triangular (low, likely, high)",
        [
            new ModelSymbol("D", "packs asked for", "-"),
            new ModelSymbol("s", "packs there are", "-"),
            new ModelSymbol("F", "distribution function of D", "-"),
            new ModelSymbol("G(s)", "packs left over, expected", "-"),
        ],
        [new Citation("TriangularDemand", "Mathematics that anyone can check; that a guess of low, likely and high is triangular is an assumption", HowKnown.Assumption)],
        "As good as the guess.",
        HowKnown.Assumption);

    /// <summary>Whether it has no limit.</summary>
    public bool IsUnlimited => double.IsPositiveInfinity(likely);

    /// <summary>The packs asked for; null without limit.</summary>
    public LikelyRange<double>? Packs { get; }

    /// <summary>The mean of the packs asked for; infinite without limit.</summary>
    internal double Mean => (low + likely + high) / 3;

    /// <summary>A guess with its range.</summary>
    /// <param name="lowPacks">Packs that will sell in the worst case, 0 or more.</param>
    /// <param name="likelyPacks">Packs that will probably sell, between the other two.</param>
    /// <param name="highPacks">Packs that may sell at best, not below <paramref name="likelyPacks"/>.</param>
    /// <exception cref="ArgumentException">The figures are out of order.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is negative or not finite.</exception>
    public static Demand Of(double lowPacks, double likelyPacks, double highPacks)
    {
        Require.NotNegative(lowPacks, "packs");
        Require.NotNegative(highPacks, "packs");
        LikelyRange<double> range = LikelyRange<double>.Of(lowPacks, likelyPacks, highPacks);
        return new(range.Low, range.Likely, range.High);
    }

    /// <summary>Exactly so many packs, as ordered beforehand.</summary>
    /// <param name="packs">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public static Demand Ordered(int packs) => Of(packs, packs, packs);

    /// <summary>In packs, as in <c>40 (25 to 60)</c>, in every culture.</summary>
    public override string ToString() => IsUnlimited ? "unlimited" : string.Create(CultureInfo.InvariantCulture, $"{likely:0.##} ({low:0.##} to {high:0.##})");

    /// <summary>G(s): of s packs, how many are left over on average.</summary>
    internal double LeftOver(double s)
    {
        if (s <= low || IsUnlimited)
        {
            return 0;
        }

        return s <= likely ? Cube(s - low) / (3 * (high - low) * (likely - low))
            : s < high ? s - Mean + (Cube(high - s) / (3 * (high - low) * (high - likely)))
            : s - Mean;
    }

    private static double Cube(double value) => value * value * value;
}
