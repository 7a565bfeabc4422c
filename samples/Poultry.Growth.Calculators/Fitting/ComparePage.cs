using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A batch against a standard as a table, cautions and sources.</summary>
internal static class ComparePage
{
    private const int WeightDecimals = 3;

    public static void Print(CompareAnswer answer, Page page)
    {
        page.Line("Weigh-ins of " + answer.Reading.File + ": " + answer.Reading.Series);
        page.PassedOver(answer.Reading);
        page.Line("Standard: " + answer.Table.Model.Name);
        if (!answer.HasAnswer)
        {
            page.Line("No answer: the standard covers none of these ages and weights.");
        }

        page.Title("Batch less standard (" + Numbers.Percent(answer.Level) + " % intervals; above 0 the batch is ahead)");
        ByAge(answer, page);
        page.Flagged(answer.Reading.Suspicions);
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static void ByAge(CompareAnswer answer, Page page)
    {
        string unit = page.Units.Weight;
        bool sexed = answer.ByAge.Any(age => age.Sex != Sex.Mixed);
        string[] sex = sexed ? ["<sex"] : [];
        page.Table(
            ["age d", "date", .. sex, "birds", "mean " + unit, "standard", "difference", "low", "high", "days ahead", "low", "high"],
            answer.ByAge.Select(age => (IReadOnlyList<string>)
            [
                Numbers.Days(age.Age),
                Numbers.Date(answer.Calendar.DateAt(age.Age)),
                .. sexed ? [Codes.Of(age.Sex)] : Array.Empty<string>(),
                Numbers.Whole(age.Birds),
                page.Units.Text(age.MeanWeight, WeightDecimals),
                page.Units.Text(age.StandardWeight, WeightDecimals),
                .. Signed(age.Difference, weight => Numbers.Signed(page.Units.Of(weight), WeightDecimals)),
                .. Signed(age.Ahead, time => Numbers.Signed(time.Days)),
            ]));
    }

    /// <summary>An estimate and its bounds; dashes where the standard says nothing.</summary>
    private static string[] Signed<T>(Estimate<T>? estimate, Func<T, string> text)
        where T : struct, IComparable<T>
    {
        string Bound(T? bound) => bound is { } known ? text(known) : "open";
        return estimate is null ? ["-", "-", "-"] : [text(estimate.Value), Bound(estimate.Interval.Low), Bound(estimate.Interval.High)];
    }
}
