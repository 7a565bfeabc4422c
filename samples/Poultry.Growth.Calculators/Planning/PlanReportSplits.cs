using System.Xml.Linq;
using Poultry.Growth.Evidence;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The batch on two days, for every pair of days the share that brings most.</summary>
internal static class PlanReportSplits
{
    public static IEnumerable<XElement> Of(PlanAnswer answer) =>
    [
        Parts.Table(
            answer.Splits[0].Birds == FirstBirds.Largest ? "The largest birds first" : "Those caught first",
            ["<first, then", "margin", "gain", "better"],
            answer.Splits.DistinctBy(split => (split.First.Date, split.Second.Date)).Select(split => (IReadOnlyList<ReportCell>)
            [
                ReportCell.Of(split.First.Date, Numbers.Percent(split.Share.Fraction) + " %; rest " + split.Second),
                Range(split.Margin),
                Range(split.Gain),
                split.ChanceBetter.ToString(),
            ])),
        .. HarvestSplit.Cautions.Select(caution => Parts.Paragraph(caution.Text)),
    ];

    private static ReportCell Range(Estimate<Money> money) =>
        new(Numbers.Whole(money.Value.Amount), Numbers.Bound(money.Interval.Low?.Amount, 0) + " to " + Numbers.Bound(money.Interval.High?.Amount, 0));
}
