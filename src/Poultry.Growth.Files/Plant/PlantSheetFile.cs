using Poultry.Growth.Carcass;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Files;

/// <summary>Reads a plant's sheet from a table of text (CSV): one line a cut or a count. The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes this throw: every problem is found in one pass and told with its line and column.</remarks>
public static class PlantSheetFile
{
    private static string[] Others => ["what", "pieces_per_pack", "from", "to", "count", "weight", "money", "note"];

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    public static FileReading<PlantSheet> Read(string path) => NamedTable.ReadFile(path, ["line"], Others, Make);

    private static PlantSheet? Make(IReadOnlyList<NamedComment> statements, IReadOnlyList<NamedRow> rows, ProblemList problems)
    {
        DateOnly? killed = Killed(statements, problems);
        CarcassBasis basis = CarcassBasis.Of(
            CarcassCondition.Packed, Part(statements, "neck", problems), Part(statements, "giblets", problems), Part(statements, "feet", problems));
        PlantSheetLines lines = new(problems);
        foreach (NamedRow row in rows)
        {
            lines.Add(row);
        }

        lines.Close();
        return problems.Count > 0 ? null : lines.Sheet(killed!.Value, basis);
    }

    private static DateOnly? Killed(IReadOnlyList<NamedComment> statements, ProblemList problems)
    {
        const string Expected = "a line \"# killed: 2027-06-08\"";
        if (One(statements, "killed", problems) is not { } stated)
        {
            problems.Add("killed", null, "is not stated", Expected);
            return null;
        }

        if (QuantityText.TryDate(stated.Value.Text, out DateOnly date, out _))
        {
            return date;
        }

        problems.Add(stated.Value, "killed", "is not a date", "a date as year, month and day, as in 2027-06-08");
        return null;
    }

    private static Inclusion Part(IReadOnlyList<NamedComment> statements, string part, ProblemList problems)
    {
        if (One(statements, part, problems) is not { } stated)
        {
            return Inclusion.NotStated;
        }

        switch (stated.Value.Text.ToUpperInvariant())
        {
            case "WITH":
                return Inclusion.With;
            case "WITHOUT":
                return Inclusion.Without;
            default:
                problems.Add(stated.Value, part, "is unknown", "with or without: whether it was weighed with the packed carcasses");
                return Inclusion.NotStated;
        }
    }

    private static NamedComment? One(IReadOnlyList<NamedComment> statements, string name, ProblemList problems)
    {
        NamedComment[] stated = [.. statements.Where(statement => statement.Is(name))];
        if (stated.Length == 0)
        {
            return null;
        }

        stated[^1].Once(stated.Length > 1, problems);
        return stated[0];
    }
}
