using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;
using UnitsNet.Units;

namespace Poultry.Growth.Fitting;

/// <content>What it answers.</content>
public sealed partial class GrowthFit
{
    /// <summary>The mean weight of the flock at an age.</summary>
    /// <param name="age">Any age the law has a weight for.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1. Under equal variance it is open below where it would reach 0.</param>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The law gives no weight so early, or the level is no share.</exception>
    public Estimate<Mass> MeanAt(Age age, double level = DefaultLevel) => FitPrediction.At(this, age, level, _ => 0);

    /// <summary>The mean of a next weigh-in of so many birds: the flock's mean and the chance of the catch.</summary>
    /// <param name="age">Any age the law has a weight for.</param>
    /// <param name="birds">How many birds will be weighed, 1 or more.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1. Under equal variance it is open below where it would reach 0.</param>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The law gives no weight so early, there is no bird, or the level is no share.</exception>
    public Estimate<Mass> NextWeighInAt(Age age, int birds, double level = DefaultLevel)
    {
        Require.AtLeast(birds, 1);
        return FitPrediction.At(this, age, level, kilograms => FitPrediction.WeighInDeviation(this, kilograms, birds));
    }

    /// <summary>The weight of one bird picked at random.</summary>
    /// <param name="age">Any age the law has a weight for.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1. Under equal variance it is open below where it would reach 0.</param>
    /// <returns>The estimate; null where nothing weighed tells how far birds lie apart (means without standard deviation under equal variance).</returns>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The law gives no weight so early, or the level is no share.</exception>
    public Estimate<Mass>? BirdAt(Age age, double level = DefaultLevel) => FitPrediction.BirdDeviation(this, 1) is null
        ? null
        : FitPrediction.At(this, age, level, kilograms => FitPrediction.BirdDeviation(this, kilograms)!.Value);

    /// <summary>The age at which the flock's mean reaches a weight.</summary>
    /// <param name="weight">Above 0.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1: all ages at which the interval of the mean holds the weight. Open where it holds it for ever.</param>
    /// <returns>The estimate; null where the curve never reaches the weight, which <see cref="IGrowthCurve.AgeAt"/> explains.</returns>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0, or the level is no share.</exception>
    public Estimate<Age>? AgeAt(Mass weight, double level = DefaultLevel) => FitPrediction.AgeAt(this, weight, level);

    /// <summary>
    /// Limits of the parameters from the whole fit: values beyond them cannot be made to fit well enough whatever the other parameters.
    /// Open where the weights give no bound.
    /// </summary>
    /// <param name="level">The chance that they claim, between 0 and 1.</param>
    /// <returns>One interval a parameter, in the family's order and units.</returns>
    /// <remarks>
    /// Least squares: S(parameter) = S (1 + t²/df) (Bates and Watts 1988, memory for the page). Maximum likelihood: the same cut on the
    /// profiled sum S times the squared geometric mean, that is a fall of the log-likelihood by N/2 ln(1 + t²/df). Iterated weights: the
    /// weights stay as they are at the optimum. Known scatter: S + z².
    /// </remarks>
    /// <exception cref="InvalidOperationException">There is no curve (see <see cref="Status"/>), or the hatch weight was given: then use the standard errors.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The level is no share.</exception>
    public IReadOnlyList<Interval<double>> ProfileLimits(double level = DefaultLevel) => FitProfile.Limits(this, level);

    /// <summary>How far each weigh-in lies from the curve; empty without one.</summary>
    public IReadOnlyList<FitResidual> Residuals() => FitPrediction.Residuals(this);

    /// <summary>The report for reading: what was fitted, how sure each figure is, what to mind.</summary>
    /// <param name="unit">The unit of weights: kg, g, lb or oz.</param>
    /// <param name="level">The chance that intervals claim, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another unit, or the level is no share.</exception>
    public string Report(MassUnit unit = MassUnit.Kilogram, double level = DefaultLevel) => FitReport.Text(this, unit, level);
}
