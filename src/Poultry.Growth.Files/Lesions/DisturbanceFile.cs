using System.Collections.Immutable;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>Reads a log of disturbances from a table of text (CSV). The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes these methods throw: every problem is found in one pass and told with its line and column.</remarks>
public static class DisturbanceFile
{
    private const double MostDays = 1000, MostCycles = 1000;
    private const string Hatch = "hatched", Percent = "a percentage of birds, 0 to 100", Cycles = "cycles of wing flapping, 0 to 1000";

    private static readonly ImmutableArray<string> Shares = ["share_low_percent", "share_percent", "share_high_percent"];
    private static readonly ImmutableArray<string> Doses = ["cycles_low", "cycles", "cycles_high"];

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    /// <param name="hatched">The day of hatch, which wins over the file's own line <c># hatched:</c>; a log by dates needs one of them.</param>
    public static DisturbanceReading Read(string path, DateOnly? hatched = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        return Read(TextFile.Read(path, problems), hatched, problems);
    }

    /// <summary>Reads a text to its end.</summary>
    /// <param name="reader">The text; it is not closed.</param>
    /// <param name="name">How problems call it.</param>
    /// <param name="hatched">The day of hatch, as in <see cref="Read(string, DateOnly?)"/>.</param>
    public static DisturbanceReading ReadText(TextReader reader, string name, DateOnly? hatched = null)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ProblemList problems = new(name);
        return Read(TextFile.Check(reader.ReadToEnd(), problems), hatched, problems);
    }

    private static DisturbanceReading Read(string? text, DateOnly? hatched, ProblemList problems)
    {
        if (text is null)
        {
            return new(problems.File) { Problems = problems.InOrder };
        }

        Csv csv = Csv.Of(text, problems);
        DateOnly? hatch = hatched ?? Stated(csv.Statements, problems);
        List<Disturbance> read = [];
        foreach (NamedRow row in NamedTable.Rows(csv.Rows, ["what"], ["date", "age_d", .. Shares, .. Doses, "note"], problems))
        {
            string what = row.Text("what", "what happened");
            Age? at = AgeOf(row, hatch);
            FlappingDose? dose = Dose(row, problems);
            if (at is { } age && problems.Count == 0)
            {
                read.Add(Disturbance.At(age, what, dose));
            }
        }

        return new(problems.File) { Log = problems.Count == 0 ? DisturbanceLog.Of(read) : null, Hatched = hatch, Problems = problems.InOrder };
    }

    private static DateOnly? Stated(IEnumerable<NamedComment> statements, ProblemList problems)
    {
        DateOnly? hatched = null;
        foreach (NamedComment statement in statements.Where(statement => statement.Is(Hatch)))
        {
            statement.Once(hatched is not null, problems);
            if (QuantityText.TryDate(statement.Value.Text, out DateOnly date, out _))
            {
                hatched = date;
            }
            else
            {
                problems.Add(statement.Value, Hatch, "is not a date", "a date as year, month and day, as in 2027-04-12");
            }
        }

        return hatched;
    }

    private static Age? AgeOf(NamedRow row, DateOnly? hatched)
    {
        CsvCell? date = row.Cell("date");
        bool isWithoutAge = row.Cell("age_d") is null;
        if (date is null && isWithoutAge && !row.IsHeaderKnown)
        {
            return null;
        }

        if (date is null == isWithoutAge)
        {
            row.Refuse(row.At("date"), "date", date is null ? "is empty, and so is age_d" : "stands beside age_d", "a date or an age in days, one of them");
            return null;
        }

        if (date is null)
        {
            return row.Number("age_d", 0, MostDays, expected: "an age in days, 0 to 1000") is { } days ? Age.FromDays(days) : null;
        }

        if (row.Quantity<DateOnly>("date", QuantityText.TryDate) is not { } day)
        {
            return null;
        }

        if (hatched is not { } hatch)
        {
            row.Refuse(date, "date", "needs the day of hatch", "a line \"# hatched: 2027-04-11\" in the file, or the option hatched");
            return null;
        }

        if (day < hatch)
        {
            row.Refuse(date, "date", "lies before hatch", "a later date");
            return null;
        }

        return Age.FromDays(day.DayNumber - hatch.DayNumber);
    }

    /// <summary>A share and cycles, or neither; low and high ends only beside them.</summary>
    private static FlappingDose? Dose(NamedRow row, ProblemList problems)
    {
        int before = problems.Count;
        double?[] shares = [.. Shares.Select(name => row.Number(name, 0, 100, expected: Percent))], cycles = [.. Doses.Select(name => row.Number(name, 0, MostCycles, expected: Cycles))];
        if (problems.Count > before || (shares.All(share => share is null) && cycles.All(cycle => cycle is null)))
        {
            return null;
        }

        if (shares[1] is not { } share || cycles[1] is not { } cycle)
        {
            if (!row.IsHeaderKnown)
            {
                return null;
            }

            row.Refuse(row.At("what"), "what", "has half a dose", "both share_percent and cycles, or neither: then the log gives dates and no rate");
            return null;
        }

        bool inOrder = (shares[0] ?? share) <= share && share <= (shares[2] ?? share) && (cycles[0] ?? cycle) <= cycle && cycle <= (cycles[2] ?? cycle);
        if (!inOrder)
        {
            row.Refuse(row.At("what"), "what", "has guesses out of order", "low, likely, high");
            return null;
        }

        return FlappingDose.Between(
            Probability.FromPercent(shares[0] ?? share), Probability.FromPercent(share), Probability.FromPercent(shares[2] ?? share), cycles[0] ?? cycle, cycle, cycles[2] ?? cycle);
    }
}
