using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>Reads a set of cuts of one's own from a table of text (CSV): which pieces a bird gives, and their shares. The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes this throw: every problem is found in one pass and told with its line and column.</remarks>
public static class CutSetFile
{
    private const string BackExpected = "separate or in-pieces";

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    public static FileReading<CutSet> Read(string path) => NamedTable.ReadFile(path, ["piece", "per_bird", "share_percent"], [], Make);

    private static CutSet? Make(IReadOnlyList<NamedComment> statements, IReadOnlyList<NamedRow> rows, ProblemList problems)
    {
        BackCut? back = Back(statements, problems);
        List<CutPiece> pieces = [];
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (NamedRow row in rows)
        {
            string name = row.Text("piece", "what the piece is called, as in thigh");
            double? perBird = row.Number("per_bird", 1, 20, whole: true), share = row.Number("share_percent", 0.01, 100);
            if (name.Length > 0 && !names.Add(name))
            {
                row.Refuse(row.Cell("piece"), "piece", "stands there twice", "every piece once");
            }

            if (perBird is null && row.Cell("per_bird") is null)
            {
                row.Text("per_bird", "how many of them a bird gives");
            }

            if (share is null && row.Cell("share_percent") is null)
            {
                row.Text("share_percent", "all of them together, in percent of the carcass");
            }

            if (name.Length > 0 && perBird is { } count && share is { } percent)
            {
                pieces.Add(CutPiece.Of(name, (int)count, Probability.FromPercent(percent)));
            }
        }

        if (problems.Count > 0 || back is null)
        {
            return null;
        }

        double sum = pieces.Sum(piece => piece.Share.Percent);
        if (pieces.Count < 2 || sum is < 98 or > 102)
        {
            problems.Add("share_percent", null, "is " + sum.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) + " in all", "at least two pieces that are 98 to 102 % of the carcass together, frame or rest too");
            return null;
        }

        string called = statements.Where(statement => statement.Is("name")).Select(statement => statement.Value.Text).FirstOrDefault(text => text.Length > 0)
            ?? Path.GetFileNameWithoutExtension(problems.File);
        return CutSet.Of(called, back.Value, pieces);
    }

    private static BackCut? Back(IReadOnlyList<NamedComment> statements, ProblemList problems)
    {
        NamedComment[] stated = [.. statements.Where(statement => statement.Is("back"))];
        if (stated.Length == 0)
        {
            problems.Add("back", null, "is not stated", "a line \"# back: separate\" (the back is a frame of its own) or \"# back: in-pieces\"");
            return null;
        }

        stated[^1].Once(stated.Length > 1, problems);
        switch (stated[0].Value.Text.ToUpperInvariant())
        {
            case "SEPARATE":
                return BackCut.SeparateFrame;
            case "IN-PIECES":
                return BackCut.InThePieces;
            default:
                problems.Add(stated[0].Value, "back", "is unknown", BackExpected);
                return null;
        }
    }
}
