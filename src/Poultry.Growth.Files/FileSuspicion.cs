using System.Globalization;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Files;

/// <summary>Something in a file that can be read but looks wrong, with the lines to look at.</summary>
public sealed class FileSuspicion
{
    /// <summary>Code of a group on one scale that repeats an earlier row: the same row typed twice, or two crates alike.</summary>
    public const string RepeatedGroup = "repeated-group";

    /// <summary>Code of pounds whose decimals are only .0 to .15: ounces typed as decimals.</summary>
    public const string OuncesAsDecimals = "ounces-as-decimals";

    internal FileSuspicion(string file, IReadOnlyList<int> lines, string code, string text, Suspicion? origin, bool excluded) =>
        (File, Lines, Code, Text, Origin, IsExcluded) = (file, lines, code, text, origin, excluded);

    /// <summary>The file, as the caller named it.</summary>
    public string File { get; }

    /// <summary>The lines it is about, counted from 1, in order.</summary>
    public IReadOnlyList<int> Lines { get; }

    /// <summary>Stable, for programs: a constant of this class or of <see cref="Suspicion"/>.</summary>
    public string Code { get; }

    /// <summary>A plain sentence: what is there, and what was expected.</summary>
    public string Text { get; }

    /// <summary>The suspicion of the series, with its weigh-in and bird; null where only the file shows it.</summary>
    public Suspicion? Origin { get; }

    /// <summary>Whether what it is about was left out of the series; otherwise it is in it like everything else.</summary>
    public bool IsExcluded { get; }

    /// <summary>One line, as in <c>weigh-ins.csv:7: A bird of 1710 g ... (kept)</c>, in every culture.</summary>
    public override string ToString() =>
        File + string.Create(CultureInfo.InvariantCulture, $":{Lines[0]}: ") + Text + (IsExcluded ? " (left out)" : " (kept)");
}
