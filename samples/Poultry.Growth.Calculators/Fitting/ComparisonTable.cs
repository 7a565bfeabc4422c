using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The families side by side: how well they fit, and how far they part at the oldest age asked for.</summary>
internal static class ComparisonTable
{
    public static void Print(FitAnswer answer, Page page)
    {
        if (answer.Comparison.Count == 0)
        {
            return;
        }

        Age oldest = answer.Ages[^1];
        page.Title("Curves compared (AICc less the best: above 2 the weights prefer the best; evidence: share among these)");
        page.Table(
            ["<curve", "<status", "AICc diff", "evidence %", page.Units.Weight + " at " + oldest, "low", "high"],
            answer.Comparison.Select(row => Row(row, oldest, answer.Level, page)));
    }

    private static IReadOnlyList<string> Row(ComparedFamily row, Age oldest, double level, Page page)
    {
        ProjectedWeight? projection = row.Fit.Curve is null ? null : ProjectedWeight.Of(row.Fit, oldest, level);
        string Weight(Mass? weight) => weight is { } known ? Numbers.Fixed(page.Units.Of(known), 2) : "-";
        return
        [
            row.Fit.Family.Id,
            Codes.Of(row.Fit.Status),
            row.AiccDifference is { } difference ? Numbers.Fixed(difference, 1) : "-",
            row.Weight is { } weight ? Numbers.Percent(weight) : "-",
            Weight(projection?.Mean.Value),
            Weight(projection?.Mean.Interval.Low),
            Weight(projection?.Mean.Interval.High),
        ];
    }
}
