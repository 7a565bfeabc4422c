using System.Text.Json;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The answer of <c>myopathy risk</c> for programs.</summary>
internal sealed record RiskDocument
{
    public required int Birds { get; init; }

    public required double KillAgeDays { get; init; }

    public required double Level { get; init; }

    public required double MeanPercent { get; init; }

    public required double MedianPercent { get; init; }

    public required double LowPercent { get; init; }

    public required double HighPercent { get; init; }

    public required IReadOnlyList<ChanceNode> ChanceAbove { get; init; }

    public required double BirdsExpected { get; init; }

    public required int BirdsLow { get; init; }

    public required int BirdsHigh { get; init; }

    public required double ChanceOfNonePercent { get; init; }

    public required double LossKg { get; init; }

    public required double LossLowKg { get; init; }

    public required double LossHighKg { get; init; }

    public required double LossPerAffectedBirdKg { get; init; }

    /// <summary>Birds sold on the bone with a lesion, on average.</summary>
    public required double HiddenLesions { get; init; }

    public required int HiddenLesionsLow { get; init; }

    public required int HiddenLesionsHigh { get; init; }

    public required double ExpectedRefunds { get; init; }

    public required ChangeNode? Change { get; init; }

    /// <summary>The average of one farm over many such batches; null where its own record says more.</summary>
    public required FarmAverageNode? FarmAverage { get; init; }

    /// <summary>With the ranges of all figures within.</summary>
    public required SpreadNode AllRanges { get; init; }

    public required IReadOnlyList<SensitivityNode> Sensitivity { get; init; }

    public required IReadOnlyList<FactorNode> Factors { get; init; }

    /// <summary>Odds ratios of this batch that no data stand behind.</summary>
    public required IReadOnlyList<OddsNode> Assumptions { get; init; }

    public required IReadOnlyList<OddsNode> OddsRatios { get; init; }

    public required IReadOnlyList<CautionNode> Statements { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static RiskDocument Of(RiskAnswer answer)
    {
        SpreadNode spread = SpreadNode.Of(answer.Prevalence, answer.Level);
        OddsNode[] ratios = [.. answer.Prevalence.OddsRatios.Select(OddsNode.Of)];
        return new()
        {
            Birds = answer.Question.Birds,
            KillAgeDays = answer.Question.Batch.KillAge.Days,
            Level = answer.Level,
            MeanPercent = spread.MeanPercent,
            MedianPercent = spread.MedianPercent,
            LowPercent = spread.LowPercent,
            HighPercent = spread.HighPercent,
            ChanceAbove = spread.ChanceAbove,
            BirdsExpected = answer.Affected.ExpectedBirds,
            BirdsLow = answer.Affected.Interval.Low!.Value,
            BirdsHigh = answer.Affected.Interval.High!.Value,
            ChanceOfNonePercent = answer.Affected.ChanceOfNone.Percent,
            LossKg = answer.Loss.LostAtPlant.Value.Kilograms,
            LossLowKg = answer.Loss.LostAtPlant.Interval.Low!.Value.Kilograms,
            LossHighKg = answer.Loss.LostAtPlant.Interval.High!.Value.Kilograms,
            LossPerAffectedBirdKg = answer.PerAffectedBird.Kilograms,
            HiddenLesions = answer.Loss.Hidden?.ExpectedBirds ?? 0,
            HiddenLesionsLow = answer.Loss.Hidden?.Interval.Low ?? 0,
            HiddenLesionsHigh = answer.Loss.Hidden?.Interval.High ?? 0,
            ExpectedRefunds = answer.Loss.ExpectedRefunds.Amount,
            Change = answer.Change is { } change ? new(answer.Question.ChangeOdds!.Value, change.SparedBirds, change.PerBatch.Amount, change.BatchesToSee) : null,
            FarmAverage = FarmAverageNode.Of(answer),
            AllRanges = SpreadNode.Of(answer.AllRanges, answer.Level),
            Sensitivity = [.. answer.Sensitivity.Select(row => new SensitivityNode(
                row.Code, row.Name, row.Low, row.High, SpreadNode.Of(row.AtLow, answer.Level), SpreadNode.Of(row.AtHigh, answer.Level)))],
            Factors = [.. RiskFactors.All.Select(FactorNode.Of)],
            Assumptions = [.. ratios.Where(ratio => ratio.HowKnown == "assumption")],
            OddsRatios = ratios,
            Statements = [.. LesionStatement.All.Select(statement => new CautionNode(statement.Code, statement.Text)), new("trade-report", TradeReport.QuarterOfABadFlock.Verdict)],
            Cautions = CautionNode.Of(answer.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.RiskDocument);
}
