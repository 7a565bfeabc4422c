using System.Globalization;
using Poultry.Growth.Weighing;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>How far a weigh-in lies from the fitted curve.</summary>
public sealed class FitResidual
{
    internal FitResidual(WeighIn weighIn, double fittedKilograms, double standardised) =>
        (WeighIn, FittedKilograms, Standardised) = (weighIn, fittedKilograms, standardised);

    /// <summary>The weigh-in.</summary>
    public WeighIn WeighIn { get; }

    /// <summary>The weight on the curve at its age.</summary>
    public Mass Fitted => Mass.FromKilograms(FittedKilograms);

    /// <summary>Mean weighed less fitted.</summary>
    public Mass Difference => Mass.FromKilograms(WeighIn.MeanKilograms - FittedKilograms);

    /// <summary>The difference over the standard deviation that the error model gives it, a pure number: beyond 3 either way it deserves a second look.</summary>
    public double Standardised { get; }

    /// <summary>As in <c>21 d: 895 g (31.57 oz) weighed, 870 g (30.69 oz) fitted (+1.1 standard deviations)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{WeighIn.Age}: {WeightText.Of(WeighIn.MeanKilograms)} weighed, {WeightText.Of(FittedKilograms)} fitted ({Standardised:+0.0;-0.0;0.0} standard deviations)");

    private double FittedKilograms { get; }
}
