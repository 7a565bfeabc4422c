using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>How heavy a bird is at any age. Every room that needs weights takes one of these.</summary>
public interface IGrowthCurve
{
    /// <summary>What the curve is and where it comes from.</summary>
    ModelInfo Model { get; }

    /// <summary>The weight the curve tends to; null where it has none. Fitted to young birds it is an extrapolation, not the mature weight of the bird.</summary>
    Mass? MatureWeight { get; }

    /// <summary>Where gain is highest; null where the curve has no such point after hatch.</summary>
    Inflection? Inflection { get; }

    /// <summary>Live weight at an age.</summary>
    /// <param name="age">Within the ages of the curve: a law covers 0 d and more, a table the ages of its rows.</param>
    /// <exception cref="ArgumentOutOfRangeException">The curve says nothing about this age.</exception>
    Mass WeightAt(Age age);

    /// <summary>Gain a day at an age: the slope of the curve.</summary>
    /// <param name="age">Within the ages of the curve.</param>
    /// <exception cref="ArgumentOutOfRangeException">The curve says nothing about this age.</exception>
    MassFlow GainAt(Age age);

    /// <summary>Gain a day as a share of the weight.</summary>
    /// <param name="age">Within the ages of the curve.</param>
    /// <exception cref="ArgumentOutOfRangeException">The curve says nothing about this age.</exception>
    DailyRate RelativeGainAt(Age age);

    /// <summary>Mean gain a day between two ages.</summary>
    /// <param name="from">The earlier age, within those of the curve.</param>
    /// <param name="to">The later age, within those of the curve.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="to"/> is not later than <paramref name="from"/>, or the curve says nothing about one of them.</exception>
    MassFlow MeanGain(Age from, Age to);

    /// <summary>The age at which the curve reaches a weight, or why it never does.</summary>
    /// <param name="weight">Above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above zero.</exception>
    AgeAtWeight AgeAt(Mass weight);

    /// <summary>Live weights at many ages.</summary>
    /// <param name="ageDays">Ages in days, 0 or more, in any order.</param>
    /// <param name="kilograms">Receives the weights in kg; as long as <paramref name="ageDays"/>.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The curve says nothing about one of the ages.</exception>
    void WeightsAt(ReadOnlySpan<double> ageDays, Span<double> kilograms);

    /// <summary>Gains a day at many ages.</summary>
    /// <param name="ageDays">Ages in days, 0 or more, in any order.</param>
    /// <param name="kilogramsPerDay">Receives the gains in kg/d; as long as <paramref name="ageDays"/>.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The curve says nothing about one of the ages.</exception>
    void GainsAt(ReadOnlySpan<double> ageDays, Span<double> kilogramsPerDay);
}
