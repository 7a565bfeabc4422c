using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>What the inspector takes out: live birds before killing, and carcasses after. Each has its own denominator.</summary>
public sealed class Condemnation
{
    private Condemnation(double live, double carcass) => (LiveShare, CarcassShare) = (live, carcass);

    /// <summary>The source of the official rates.</summary>
    internal static Citation NassSource { get; } = new(
        "NassSlaughter", "USDA National Agricultural Statistics Service, Poultry Slaughter", HowKnown.ReadInSource, "February 2012, September 2015, November 2015, March 2019");

    /// <summary>Equations and source.</summary>
    public static ModelInfo Model { get; } = new(
        "condemnation",
        "Condemned birds and carcasses",
        "ante = 100 c_l / W; post = 100 c_c / (R + c_c)",
        [
            new ModelSymbol("ante", "condemned before killing", "% of live weight"),
            new ModelSymbol("c_l", "live weight condemned", "kg"),
            new ModelSymbol("W", "live weight inspected", "kg"),
            new ModelSymbol("post", "condemned after killing", "% of carcass"),
            new ModelSymbol("c_c", "carcass weight condemned", "kg"),
            new ModelSymbol("R", "carcass weight passed", "kg"),
        ],
        [NassSource],
        "The denominators reproduce the printed percentages of four months; the carcass passed alone would not. All inspected poultry, mostly large plants: a small plant's own figure is better.",
        HowKnown.Derived);

    /// <summary>Nothing is condemned, or a ratio already holds what was.</summary>
    public static Condemnation None { get; } = new(0, 0);

    /// <summary>All inspected poultry of the United States: 0.24 % (0.21 to 0.25) of live weight, 0.97 % (0.87 to 1.05) of carcasses, means of the four months.</summary>
    public static Condemnation UnitedStates { get; } = new(0.0024, 0.0097);

    /// <summary>Condemned before killing, as a share of the live weight.</summary>
    public Probability OfLive => Probability.FromFraction(LiveShare);

    /// <summary>Condemned after killing, as a share of all carcass weight, passed and condemned.</summary>
    public Probability OfCarcass => Probability.FromFraction(CarcassShare);

    internal double LiveShare { get; }

    internal double CarcassShare { get; }

    /// <summary>Shares of one's own.</summary>
    /// <param name="ofLive">Of the live weight, 0 to 0.999.</param>
    /// <param name="ofCarcass">Of all carcass weight, passed and condemned, 0 to 0.999.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is out of its range: nothing would be left.</exception>
    public static Condemnation Of(Probability ofLive, Probability ofCarcass)
    {
        const double Most = 0.999;
        return new(Require.Between(ofLive.Fraction, 0, Most, "", nameof(ofLive)), Require.Between(ofCarcass.Fraction, 0, Most, "", nameof(ofCarcass)));
    }

    /// <summary>The share condemned before killing, from weights.</summary>
    /// <param name="condemned">Live weight condemned, 0 or more.</param>
    /// <param name="live">All live weight inspected, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight makes no sense.</exception>
    public static Probability ShareOfLive(Mass condemned, Mass live) => Probability.FromFraction(
        Require.NotNegative(condemned.Kilograms, "kg", nameof(condemned)) / Require.Positive(live.Kilograms, "kg", nameof(live)));

    /// <summary>The share condemned after killing, from weights.</summary>
    /// <param name="condemned">Carcass weight condemned, 0 or more.</param>
    /// <param name="passed">Carcass weight passed, above 0: the denominator is both together.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight makes no sense.</exception>
    public static Probability ShareOfCarcass(Mass condemned, Mass passed) => Probability.FromFraction(
        Require.NotNegative(condemned.Kilograms, "kg", nameof(condemned)) / (Require.Positive(passed.Kilograms, "kg", nameof(passed)) + condemned.Kilograms));

    /// <summary>As in <c>0.24 % of live weight, 0.97 % of carcasses</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{100 * LiveShare:0.##} % of live weight, {100 * CarcassShare:0.##} % of carcasses");
}
