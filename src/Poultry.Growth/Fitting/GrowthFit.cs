using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>
/// The growth curve that a batch's weigh-ins follow, by themselves: fitted and certified, with its errors, or with the reason why there is none.
/// </summary>
/// <remarks>
/// A fit knows nothing but the weigh-ins and the family. Beyond the last weigh-in every value assumes that this family is exactly right,
/// and its interval is too narrow; each such result says so. Immutable, and safe to share between threads.
/// </remarks>
public sealed partial class GrowthFit
{
    /// <summary>The chance that an interval claims where no other is asked for.</summary>
    public const double DefaultLevel = 0.90;

    private readonly double hatchKilograms;

    private GrowthFit(WeighInSeries weighIns, CurveFamily family, ErrorModel errors, double hatchKilograms, FitOutcome outcome)
    {
        (WeighIns, Family, Errors, this.hatchKilograms, Outcome) = (weighIns, family, errors, hatchKilograms, outcome);
        Parameters = [];
        Correlations = [];
        if (outcome.Shape is not { } shape)
        {
            return;
        }

        (double[] values, double[] covariance) = shape.ToParameters();
        int count = values.Length;
        double[] standardErrors = new double[count];
        FittedParameter[] parameters = new FittedParameter[count];
        for (int i = 0; i < count; i++)
        {
            standardErrors[i] = Math.Sqrt(covariance[(i * count) + i]);
            parameters[i] = new FittedParameter(family.Parameters[i], values[i], standardErrors[i]);
        }

        for (int i = 0; i < covariance.Length; i++)
        {
            // A parameter that the given hatch weight fixes goes with no other.
            double scale = standardErrors[i / count] * standardErrors[i % count];
            covariance[i] = scale > 0 ? covariance[i] / scale : i / count == i % count ? 1 : 0;
        }

        (Curve, Parameters, Correlations) = (family.FromParameters(values), parameters, covariance);
    }

    /// <summary>What was fitted.</summary>
    public WeighInSeries WeighIns { get; }

    /// <summary>The family fitted.</summary>
    public CurveFamily Family { get; }

    /// <summary>What was assumed about scatter.</summary>
    public ErrorModel Errors { get; }

    /// <summary>The weight at hatch that was given beforehand; null where it was free.</summary>
    public Mass? HatchWeight => hatchKilograms > 0 ? Mass.FromKilograms(hatchKilograms) : null;

    /// <summary>How the fit ended.</summary>
    public FitStatus Status => Outcome.Status;

    /// <summary>Why, in one or two sentences.</summary>
    public string Reason => Outcome.Reason;

    /// <summary>The curve; null unless <see cref="Status"/> is <see cref="FitStatus.Converged"/>.</summary>
    public IGrowthCurve? Curve { get; }

    /// <summary>Growth at a constant rate, where no finite mature weight exists and that is what the weights support; otherwise null.</summary>
    public ExponentialCurve? Exponential => Outcome.Exponential;

    /// <summary>The parameters with standard errors, in the family's order; empty without a curve.</summary>
    public IReadOnlyList<FittedParameter> Parameters { get; }

    /// <summary>Correlations of the parameters, row by row, pure numbers from -1 to 1; 0 with a parameter that the given hatch weight fixes. Empty without a curve.</summary>
    public IReadOnlyList<double> Correlations { get; }

    /// <summary>What to mind before acting on the fit; values beyond the last weigh-in carry more.</summary>
    public IReadOnlyList<Caution> Cautions => field ??= FitCautions.Of(this);

    /// <summary>How many observations the fit rests on: single birds and means with standard deviation count every bird, other means count once.</summary>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    public double Observations => Found().Numbers.Observations;

    /// <summary>Observations less parameters; infinite where the size of the scatter is known beforehand.</summary>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    public double DegreesOfFreedom => Found().Numbers.DegreesOfFreedom;

    /// <summary>
    /// Standard deviation of an observation about the curve: in kg for equal variance, as a fraction of the weight of one bird for the
    /// proportional models; 1 where the scatter is known beforehand.
    /// </summary>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    public double ResidualStandardDeviation => Found().Numbers.Sigma;

    /// <summary>Logarithm of the likelihood of the weights in kg: comparable between families and error models for the same weigh-ins.</summary>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    public double LogLikelihood => Found().Numbers.LogLikelihood;

    /// <summary>Akaike's criterion corrected for few observations: the lower the better; null where there are too few observations for it.</summary>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    public double? Aicc => Found().Numbers.Aicc;

    /// <summary>What the optimum leaves to be explained by a small change of the parameters, as a share of the residuals: below 1e-6, but for weights that lie on the curve to the last digit, whose residuals are rounding.</summary>
    /// <exception cref="InvalidOperationException">There is no curve: see <see cref="Status"/>.</exception>
    public double Certificate => Found().Numbers.Certificate;

    internal FitOutcome Outcome { get; }

    /// <summary>Fits a growth curve to weigh-ins.</summary>
    /// <param name="weighIns">What was weighed.</param>
    /// <param name="family">The kind of curve; Gompertz where none is named.</param>
    /// <param name="errors">What is assumed about scatter; <see cref="ErrorModel.Proportional"/> where none is named.</param>
    /// <param name="hatchWeight">A weight at hatch that the curve must have, above 0; null leaves it free.</param>
    /// <returns>The fit. One that did not work says so in <see cref="Status"/> and <see cref="Reason"/>; it is not an exception.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hatch weight is not above 0.</exception>
    public static GrowthFit Of(WeighInSeries weighIns, CurveFamily? family = null, ErrorModel? errors = null, Mass? hatchWeight = null)
    {
        ArgumentNullException.ThrowIfNull(weighIns);
        family ??= CurveFamilies.Gompertz;
        errors ??= ErrorModel.Proportional;
        double hatchKilograms = hatchWeight is { } hatch ? Require.Positive(hatch.Kilograms, "kg", nameof(hatchWeight)) : 0;
        return new GrowthFit(weighIns, family, errors, hatchKilograms, GrowthFitter.Fit(new WeighInColumns(weighIns, errors), family, errors, hatchKilograms));
    }

    /// <summary>The whole fit in plain numbers, to be saved.</summary>
    public GrowthFitRecord ToRecord() => GrowthFitRecord.Of(this);

    /// <summary>The fit that was saved: the same numbers to the last bit, nothing is fitted again.</summary>
    /// <param name="record">From <see cref="ToRecord"/>.</param>
    /// <exception cref="ArgumentException">The record names no family or error model of this library, or its numbers do not belong together.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static GrowthFit FromRecord(GrowthFitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Restore();
    }

    /// <summary>The status and, with a curve, its parameters, in one line and in every culture.</summary>
    public override string ToString() => Curve is null ? Status + ": " + Reason : Family.Model.Name + ": " + string.Join(", ", Parameters);

    internal static GrowthFit Restored(WeighInSeries weighIns, CurveFamily family, ErrorModel errors, double hatchKilograms, FitOutcome outcome) =>
        new(weighIns, family, errors, hatchKilograms, outcome);

    internal (FittedShape Shape, FitNumbers Numbers) Found() => (Outcome.Shape, Outcome.Numbers) is ({ } shape, { } numbers)
        ? (shape, numbers)
        : throw new InvalidOperationException("There is no curve. " + Reason);
}
