using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>What all curves of this library share: quantities at the edge, doubles in kg and days inside.</summary>
public abstract class GrowthCurve : IGrowthCurve
{
    private protected GrowthCurve()
    {
    }

    /// <inheritdoc/>
    public abstract ModelInfo Model { get; }

    /// <inheritdoc/>
    public abstract Mass? MatureWeight { get; }

    /// <inheritdoc/>
    public virtual Inflection? Inflection => null;

    /// <inheritdoc/>
    public Mass WeightAt(Age age) => Mass.FromKilograms(Weight(age.Days, nameof(age)));

    /// <inheritdoc/>
    public MassFlow GainAt(Age age) => MassFlow.FromKilogramsPerDay(Gain(age.Days, nameof(age)));

    /// <inheritdoc/>
    public DailyRate RelativeGainAt(Age age) => DailyRate.FromPerDay(Gain(age.Days, nameof(age)) / Weight(age.Days, nameof(age)));

    /// <inheritdoc/>
    public MassFlow MeanGain(Age from, Age to)
    {
        Require.Above(to.Days, from.Days, "d", nameof(to));
        double gained = Weight(to.Days, nameof(to)) - Weight(from.Days, nameof(from));
        return MassFlow.FromKilogramsPerDay(gained / (to.Days - from.Days));
    }

    /// <inheritdoc/>
    public AgeAtWeight AgeAt(Mass weight) => AgeAtKilograms(Require.Positive(weight.Kilograms, "kg", nameof(weight)));

    /// <inheritdoc/>
    public void WeightsAt(ReadOnlySpan<double> ageDays, Span<double> kilograms)
    {
        Require.SameLength(ageDays.Length, kilograms.Length, nameof(kilograms));
        for (int i = 0; i < ageDays.Length; i++)
        {
            kilograms[i] = Weight(Require.NotNegative(ageDays[i], "d", nameof(ageDays)), nameof(ageDays));
        }
    }

    /// <inheritdoc/>
    public void GainsAt(ReadOnlySpan<double> ageDays, Span<double> kilogramsPerDay)
    {
        Require.SameLength(ageDays.Length, kilogramsPerDay.Length, nameof(kilogramsPerDay));
        for (int i = 0; i < ageDays.Length; i++)
        {
            kilogramsPerDay[i] = Gain(Require.NotNegative(ageDays[i], "d", nameof(ageDays)), nameof(ageDays));
        }
    }

    /// <summary>The law and its mature weight, as in <c>Gompertz growth curve, mature weight 5.1 kg (11.24 lb)</c>, in every culture.</summary>
    public override string ToString() => Model.Name + (MatureWeight is { } mature ? ", mature weight " + WeightText.Of(mature.Kilograms) : "");

    /// <summary>The ages the curve speaks of, to end "is not allowed; ".</summary>
    private protected virtual string AgesCovered => "the curve has no weight above 0 with a finite gain there";

    /// <summary>Live weight in kg at an age in days, 0 or more; NaN or not above 0 where the curve has none.</summary>
    private protected abstract double Kilograms(double days);

    /// <summary>Gain in kg/d at an age in days, 0 or more; NaN where the curve has no weight.</summary>
    private protected abstract double KilogramsPerDay(double days);

    /// <summary>The inverse of <see cref="Kilograms"/> in days, for a weight from hatch weight to below mature weight; may be no finite number within a rounding of the latter.</summary>
    private protected abstract double DaysAt(double kilograms);

    /// <summary>The answer for a weight in kg above 0.</summary>
    private protected virtual AgeAtWeight AgeAtKilograms(double kilograms)
    {
        if (kilograms < Kilograms(0))
        {
            return AgeAtWeight.BelowHatchWeight(kilograms);
        }

        double matureKilograms = MatureWeight?.Kilograms ?? double.PositiveInfinity;
        double days = kilograms < matureKilograms ? DaysAt(kilograms) : double.PositiveInfinity;

        // Asked for the very weight at hatch, the inverse may come out a rounding before it.
        return double.IsFinite(days)
            ? AgeAtWeight.Reached(kilograms, Math.Max(0, days))
            : AgeAtWeight.AboveMatureWeight(kilograms, matureKilograms);
    }

    private double Weight(double days, string argument)
    {
        double kilograms = Kilograms(days);
        return kilograms > 0 && double.IsFinite(kilograms) ? kilograms : throw NotCovered(days, argument);
    }

    private double Gain(double days, string argument)
    {
        double kilogramsPerDay = KilogramsPerDay(days);
        return double.IsFinite(kilogramsPerDay) ? kilogramsPerDay : throw NotCovered(days, argument);
    }

    private ArgumentOutOfRangeException NotCovered(double days, string argument) =>
        new(argument, string.Create(CultureInfo.InvariantCulture, $"{days} d is not allowed; {AgesCovered}."));
}
