using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>A fit in plain numbers, to be saved and loaded to the last bit by any serialiser. Units stand in the names.</summary>
public sealed class GrowthFitRecord
{
    /// <summary>Id of the curve family.</summary>
    public required string Family { get; init; }

    /// <summary>Id of the error model.</summary>
    public required string Errors { get; init; }

    /// <summary>Stated CV between birds as a fraction; null where it came from the birds weighed.</summary>
    public double? CoefficientOfVariation { get; init; }

    /// <summary>Stated error of a whole weigh-in as a fraction.</summary>
    public double WeighInError { get; init; }

    /// <summary>Given weight at hatch in kg; null where it was free.</summary>
    public double? HatchWeightKilograms { get; init; }

    /// <summary>How the fit ended.</summary>
    public required FitStatus Status { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>What was fitted.</summary>
    public required IReadOnlyList<WeighInRecord> WeighIns { get; init; }

    /// <summary>The curve and its errors; null where there is none.</summary>
    public FittedCurveRecord? Curve { get; init; }

    /// <summary>Weight at hatch in kg of the exponential where no finite mature weight exists; else null.</summary>
    public double? ExponentialHatchKilograms { get; init; }

    /// <summary>Rate per day of the exponential where no finite mature weight exists; else null.</summary>
    public double? ExponentialRatePerDay { get; init; }

    internal static GrowthFitRecord Of(GrowthFit fit) => new()
    {
        Family = fit.Family.Id,
        Errors = fit.Errors.Id,
        CoefficientOfVariation = fit.Errors.CoefficientOfVariation,
        WeighInError = fit.Errors.WeighInError,
        HatchWeightKilograms = fit.HatchWeight?.Kilograms,
        Status = fit.Status,
        Reason = fit.Reason,
        WeighIns = [.. fit.WeighIns.Select(weighIn => weighIn.ToRecord())],
        Curve = fit.Outcome.Shape is null ? null : FittedCurveRecord.Of(fit.Outcome),
        ExponentialHatchKilograms = fit.Exponential?.HatchWeight.Kilograms,
        ExponentialRatePerDay = fit.Exponential?.Rate.PerDay,
    };

    internal GrowthFit Restore()
    {
        CurveFamily family = CurveFamilies.Find(Family) ?? throw new ArgumentException($"\"{Family}\" is no curve family of this library.", nameof(Family));
        ErrorModel errors = ErrorModel.Find(Errors, CoefficientOfVariation, WeighInError)
            ?? throw new ArgumentException($"\"{Errors}\" is no error model of this library.", nameof(Errors));
        double hatchKilograms = HatchWeightKilograms is { } hatch ? Require.Positive(hatch, "kg", nameof(HatchWeightKilograms)) : 0;
        WeighInSeries weighIns = WeighInSeries.Of(WeighIns.Select(WeighIn.FromRecord));
        if ((Require.Named(Status) == FitStatus.Converged) != (Curve is not null))
        {
            throw new ArgumentException($"The status is {Status}, and there is {(Curve is null ? "no" : "a")} curve; expected a curve where the fit converged, and only there.", nameof(Curve));
        }

        FitOutcome outcome = Curve is not null
            ? Curve.Restore(family, hatchKilograms, weighIns.Count)
            : FitOutcome.Refused(Status, Reason).With(
                (ExponentialHatchKilograms, ExponentialRatePerDay) is ({ } kilograms, { } rate) ? ExponentialCurve.FromKilograms(kilograms, rate) : null);
        return GrowthFit.Restored(weighIns, family, errors, hatchKilograms, outcome);
    }
}
