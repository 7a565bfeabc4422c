using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>Growth at a constant rate: W = W0 exp(r t). What young birds' weights support when they do not bend yet.</summary>
/// <remarks>It has no mature weight and no inflection; beyond the ages it was fitted to it is soon absurd.</remarks>
public sealed class ExponentialCurve : GrowthCurve
{
    private readonly double hatchKilograms;
    private readonly double ratePerDay;

    private ExponentialCurve(double hatchKilograms, double ratePerDay)
    {
        this.hatchKilograms = Require.Positive(hatchKilograms, "kg", "hatchWeight");
        this.ratePerDay = Require.Positive(ratePerDay, "1/d", "rate");
    }

    /// <summary>What the curve is and where it comes from.</summary>
    public static ModelInfo Info { get; } = new(
        "exponential",
        "Exponential growth",
        "W = W0 exp(r t)",
        [
            CurveSources.Weight,
            CurveSources.Age,
            new ModelSymbol("W0", "weight at hatch", "kg"),
            new ModelSymbol("r", "relative gain a day", "1/d"),
        ],
        [CurveSources.LimitOfFamilies],
        CurveSources.FormAccuracy,
        HowKnown.Derived);

    /// <inheritdoc/>
    public override ModelInfo Model => Info;

    /// <summary>Always null: the exponential tends to no weight.</summary>
    public override Mass? MatureWeight => null;

    /// <summary>The weight at hatch.</summary>
    public Mass HatchWeight => Mass.FromKilograms(hatchKilograms);

    /// <summary>The relative gain, the same every day.</summary>
    public DailyRate Rate => DailyRate.FromPerDay(ratePerDay);

    /// <summary>The curve from hatch weight and rate.</summary>
    /// <param name="hatchWeight">W0, above 0.</param>
    /// <param name="rate">r, above 0 per day.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static ExponentialCurve Of(Mass hatchWeight, DailyRate rate) => new(hatchWeight.Kilograms, rate.PerDay);

    internal static ExponentialCurve FromKilograms(double hatchKilograms, double ratePerDay) => new(hatchKilograms, ratePerDay);

    private protected override double Kilograms(double days) => hatchKilograms * Math.Exp(ratePerDay * days);

    private protected override double KilogramsPerDay(double days) => ratePerDay * Kilograms(days);

    private protected override double DaysAt(double kilograms) => Math.Log(kilograms / hatchKilograms) / ratePerDay;
}
