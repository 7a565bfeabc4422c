using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Parts of the pages that several commands share.</summary>
internal static class SpreadTable
{
    /// <summary>What a page of outdoor birds opens with.</summary>
    public static void Open(IReadOnlyList<Caution> cautions, Page page)
    {
        if (cautions is [{ Code: "no-outdoor-data" } first, ..])
        {
            page.Line(first.Text);
            page.Line("");
        }
    }

    /// <summary>The cautions that did not open the page.</summary>
    public static void Cautions(IReadOnlyList<Caution> cautions, Page page) => page.Cautions([.. cautions.Where(caution => caution.Code != "no-outdoor-data")]);

    /// <summary>Two figures, and below 0.001 none: shares reach over five orders of magnitude.</summary>
    public static string Percent(BirdPrevalence? share) => share is { } known ? Two(known.Percent) : "-";

    public static string Two(double number) => number is > 0 and < 0.001 ? "<0.001" : number >= 10 ? Numbers.Whole(number) : number.ToString("G2", CultureInfo.InvariantCulture);

    public static void Print(string title, BatchPrevalence batch, double level, Page page)
    {
        page.Title(title);
        Interval<BirdPrevalence> half = batch.IntervalAt(0.5), wanted = batch.IntervalAt(level), wide = batch.IntervalAt(0.95);
        string asked = Numbers.Percent(level) + " %";
        string Range(Interval<BirdPrevalence> interval) => Percent(interval.Low) + " to " + Percent(interval.High);
        page.Table(
            ["mean", "median", "50 % of flocks", asked + " of flocks", .. level == 0.95 ? Array.Empty<string>() : ["95 % of flocks"]],
            [[Percent(batch.Mean), Percent(batch.Median), Range(half), Range(wanted), .. level == 0.95 ? Array.Empty<string>() : [Range(wide)]]]);
        page.Title("Chance that a flock has more");
        page.Table(
            ["more than %", .. SpreadNode.Limits.Select(Numbers.Whole)],
            [["chance %", .. ChanceNode.Of(batch).Select(chance => Two(chance.ChancePercent))]]);
    }
}
