using System.Globalization;
using System.Text;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>The study as a page.</summary>
internal static class StudyPage
{
    public const string CaseHeader =
        "truth,prior,days:birds:mean kg:sd kg,low 49,median 49,high 49,low 56,median 56,high 56,low 63,median 63,high 63";

    private static readonly double[] ChanceEdges = [0, 0.15, 0.30, 0.50, 0.70, 0.85, 1.0000001];

    public static string Of(IReadOnlyList<StudyResult> results, int batches, long seed)
    {
        StringBuilder page = new();
        page.AppendLine(CultureInfo.InvariantCulture, $$"""
            # Study: how often the projection is right

            <!-- Generated: dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study projection -->

            Simulated batches, {{batches}} a row, seed {{seed}}; no constant of the method was chosen on them (standard error of a coverage about .01, of a median error
            about 4 % of itself). Weigh-ins at 7, 14, ... d to the stop, 10 to 60 birds each, spread between birds 8 to 14 % known only from the birds weighed, and an
            error of the whole weigh-in of 2 % unless the row says otherwise. Outdoors: mixed birds, weigh-ins at 21 and 35 d, none, one or both of them.
            A cell is median error % / 90th percentile %, coverage of the 90 % interval, median width %; **bold** where it misses what was asked.
            What was asked was set before, from another program's results on other seeds. Nothing here is about real birds: it says what the method does when a truth is as stated.

            ## Mean at 56 d
            """);
        Table(page, results, 56, marks: true);
        page.AppendLine("\n## Mean at 49 d");
        Table(page, results, 49, marks: false);
        page.AppendLine("\n## Mean at 63 d");
        Table(page, results, 63, marks: false);
        Ages(page, results);
        Chances(page, results);
        Disagreements(page, results, batches);
        page.AppendLine("\n## What was asked and what came\n");
        page.AppendLine("| row | asked of | met |\n|---|---|---|");
        foreach (StudyResult result in results)
        {
            (int asked, int met) = Verdict(result);
            if (asked > 0)
            {
                page.AppendLine(CultureInfo.InvariantCulture, $"| {result.Row.Name} | {asked} figures | {(met == asked ? "all" : $"{met}")} |");
            }
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    public static string Line(StudyResult result, double days) =>
        "| " + result.Row.Name + " | " + string.Join(" | ", result.Row.Stops.Select((_, stop) => Cell(result, stop, days, marks: days == 56))) + " |";

    private static void Table(StringBuilder page, IReadOnlyList<StudyResult> results, double days, bool marks)
    {
        page.AppendLine("\n| truth | 21 d | 28 d | 35 d | 42 d |\n|---|---|---|---|---|");
        foreach (StudyResult result in results.Where(result => result.Row.Stops.Count == 4))
        {
            page.AppendLine("| " + result.Row.Name + " | "
                + string.Join(" | ", Enumerable.Range(0, 4).Select(stop => Cell(result, stop, days, marks))) + " |");
        }

        page.AppendLine("\n| truth | no weigh-in | one (21 d) | two (21, 35 d) |\n|---|---|---|---|");
        foreach (StudyResult result in results.Where(result => result.Row.Stops.Count == 3))
        {
            // What is asked outdoors is asked at all three ages.
            page.AppendLine("| " + result.Row.Name + " | "
                + string.Join(" | ", Enumerable.Range(0, 3).Select(stop => Cell(result, stop, days, marks: true))) + " |");
        }
    }

    private static string Cell(StudyResult result, int stop, double days, bool marks)
    {
        StudyCell cell = result.At(stop, days);
        var asked = marks ? result.Row.Asked : default;
        return Figure(cell.Median, asked.Median, stop, "0.0") + "/" + Figure(cell.Ninetieth, asked.Ninetieth, stop, "0.0") + " "
            + Figure(cell.Coverage, asked.Coverage, stop, ".00", least: true) + " " + Figure(cell.Width, asked.Width, stop, "0");
    }

    private static string Figure(double value, double[]? asked, int stop, string format, bool least = false)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return Meets(value, asked, stop, least) ? text : "**" + text + "**";
    }

    private static bool Meets(double value, double[]? asked, int stop, bool least) =>
        asked is null || (least ? value >= asked[stop] : value <= asked[stop]);

    private static (int Asked, int Met) Verdict(StudyResult result)
    {
        (int asked, int met) = (0, 0);
        for (int stop = 0; stop < result.Row.Stops.Count; stop++)
        {
            foreach (double days in result.Row.Stops.Count == 3 ? StudyResult.Targets : [56])
            {
                StudyCell cell = result.At(stop, days);
                foreach ((double value, double[]? limit, bool least) in ((double, double[]?, bool)[])
                    [(cell.Median, result.Row.Asked.Median, false), (cell.Ninetieth, result.Row.Asked.Ninetieth, false), (cell.Coverage, result.Row.Asked.Coverage, true), (cell.Width, result.Row.Asked.Width, false)])
                {
                    asked += limit is null ? 0 : 1;
                    met += limit is not null && Meets(value, limit, stop, least) ? 1 : 0;
                }
            }
        }

        return (asked, met);
    }

    private static void Ages(StringBuilder page, IReadOnlyList<StudyResult> results)
    {
        page.AppendLine("\n## Age at which the mean reaches 2.5 kg\n\nMedian error % of the age, coverage of the 90 % interval, median width %.\n");
        page.AppendLine("| truth | first stop | second | third | fourth |\n|---|---|---|---|---|");
        foreach (StudyResult result in results)
        {
            IEnumerable<string> cells = result.Ages.Select(cell => string.Create(
                CultureInfo.InvariantCulture, $"{cell.Median:0.0} {cell.Coverage:.00} {(double.IsFinite(cell.Width) ? cell.Width.ToString("0", CultureInfo.InvariantCulture) : "open")}"));
            page.AppendLine("| " + result.Row.Name + " | " + string.Join(" | ", cells.Concat(Enumerable.Repeat("", 4 - result.Ages.Count))) + " |");
        }
    }

    private static void Chances(StringBuilder page, IReadOnlyList<StudyResult> results)
    {
        page.AppendLine("\n## The chance that the mean reaches a weight\n\nA weight within 15 % of the median at 56 d, all stops: mean chance given -> share of batches that did.\n");
        page.AppendLine("| truth | 0-15 % | 15-30 % | 30-50 % | 50-70 % | 70-85 % | 85-100 % |\n|---|---|---|---|---|---|---|");
        foreach (StudyResult result in results)
        {
            (double Chance, bool Reached)[] promises = [.. Enumerable.Range(0, result.Row.Stops.Count).SelectMany(stop => result.At(stop, 56).Promises)];
            IEnumerable<string> cells = ChanceEdges.Zip(ChanceEdges.Skip(1)).Select(bin =>
            {
                (double Chance, bool Reached)[] inside = [.. promises.Where(promise => promise.Chance >= bin.First && promise.Chance < bin.Second)];
                return inside.Length < 20 ? "" : string.Create(
                    CultureInfo.InvariantCulture, $"{inside.Average(promise => promise.Chance):.00} -> {inside.Count(promise => promise.Reached) / (double)inside.Length:.00}");
            });
            page.AppendLine("| " + result.Row.Name + " | " + string.Join(" | ", cells) + " |");
        }
    }

    private static void Disagreements(StringBuilder page, IReadOnlyList<StudyResult> results, int batches)
    {
        page.AppendLine("\n## How often prior and data are said to disagree\n\nPercent of batches, by stop.\n");
        page.AppendLine("| truth | first stop | second | third | fourth |\n|---|---|---|---|---|");
        foreach (StudyResult result in results)
        {
            IEnumerable<string> cells = result.Disagreements.Select(count => string.Create(CultureInfo.InvariantCulture, $"{100.0 * count / batches:0.0}"));
            page.AppendLine("| " + result.Row.Name + " | " + string.Join(" | ", cells.Concat(Enumerable.Repeat("", 4 - result.Ages.Count))) + " |");
        }
    }
}
