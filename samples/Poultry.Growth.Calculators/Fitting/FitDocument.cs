using System.Text.Json;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The answer of <c>fit</c> for programs.</summary>
internal sealed record FitDocument
{
    public required string File { get; init; }

    public required string Status { get; init; }

    public required string Reason { get; init; }

    public required string Family { get; init; }

    public required string Errors { get; init; }

    /// <summary>The weight at hatch that was given; null where it was free.</summary>
    public required double? HatchWeightKg { get; init; }

    public required DateOnly? Placed { get; init; }

    public required double? AgeAtPlacementDays { get; init; }

    /// <summary>The chance that every low and high claims.</summary>
    public required double Level { get; init; }

    /// <summary>What the low and high of parameters are: profile limits, or none.</summary>
    public required string Limits { get; init; }

    public required IReadOnlyDictionary<string, ParameterNode> Parameters { get; init; }

    public double? ResidualStandardDeviation { get; init; }

    /// <summary>kg; fraction, of the weight of one bird; or known, where it is 1 by assumption.</summary>
    public string? ResidualStandardDeviationUnit { get; init; }

    /// <summary>Of weights in kg.</summary>
    public double? LogLikelihood { get; init; }

    public double? Aicc { get; init; }

    public double? Observations { get; init; }

    /// <summary>Null without a curve, and where the size of the scatter is known beforehand.</summary>
    public double? DegreesOfFreedom { get; init; }

    public required ExponentialNode? Exponential { get; init; }

    public required IReadOnlyList<ResidualNode> Residuals { get; init; }

    public required IReadOnlyList<ProjectionNode> Projections { get; init; }

    public required TargetNode? Target { get; init; }

    public required IReadOnlyList<ComparedNode> Comparison { get; init; }

    public required IReadOnlyList<FlaggedNode> Flagged { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static FitDocument Of(FitAnswer answer)
    {
        GrowthFit fit = answer.Fit;
        FitDocument document = new()
        {
            File = answer.Reading.File,
            Status = Codes.Of(fit.Status),
            Reason = fit.Reason,
            Family = fit.Family.Id,
            Errors = fit.Errors.Id,
            HatchWeightKg = fit.HatchWeight?.Kilograms,
            Placed = answer.Reading.Placed,
            AgeAtPlacementDays = answer.Reading.AgeAtPlacement?.Days,
            Level = answer.Level,
            Limits = answer.Limits is null ? "none" : "profile",
            Parameters = ParameterNode.Of(answer),
            Exponential = ExponentialNode.Of(fit),
            Residuals = ResidualNode.Of(fit),
            Projections = [.. answer.Projections.Select(projection => ProjectionNode.Of(projection, answer.Calendar))],
            Target = TargetNode.Of(answer.Target, answer.Calendar),
            Comparison = ComparedNode.Of(answer),
            Flagged = FlaggedNode.Of(answer.Reading.Suspicions),
            Cautions = CautionNode.Of(answer.Beyond is { } beyond ? [.. answer.Cautions, beyond] : answer.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
        return fit.Curve is null ? document : document with
        {
            ResidualStandardDeviation = fit.ResidualStandardDeviation,
            ResidualStandardDeviationUnit = fit.Errors == ErrorModel.EqualVariance ? "kg" : double.IsInfinity(fit.DegreesOfFreedom) ? "known" : "fraction",
            LogLikelihood = fit.LogLikelihood,
            Aicc = fit.Aicc,
            Observations = fit.Observations,
            DegreesOfFreedom = double.IsInfinity(fit.DegreesOfFreedom) ? null : fit.DegreesOfFreedom,
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.FitDocument);
}
