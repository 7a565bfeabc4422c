using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>Something in a file that cannot be read: where, what, and what was expected instead.</summary>
public sealed class FileProblem
{
    private const int LongestValue = 40;
    private const int LongestField = 120;

    internal FileProblem(string file, int line, int column, string field, string? value, string fault, string expected) =>
        (File, Line, Column, Field, Value, Fault, Expected) = (file, line, column, field, value, fault, expected);

    /// <summary>The file, as the caller named it.</summary>
    public string File { get; }

    /// <summary>The line, counted from 1; 0 where the file as a whole, or an option, is meant.</summary>
    public int Line { get; }

    /// <summary>The character in that line where the value starts, counted from 1; 0 where <see cref="Line"/> is.</summary>
    public int Column { get; }

    /// <summary>The column of the table, the option, or the thing meant, as in <c>weight_g</c>.</summary>
    public string Field { get; }

    /// <summary>What stands there; null where the field is missing or its text is not to blame.</summary>
    public string? Value { get; }

    /// <summary>What is wrong, as the end of a sentence: <c>is not a number</c>.</summary>
    public string Fault { get; }

    /// <summary>What was expected: <c>a weight above 0 in g</c>.</summary>
    public string Expected { get; }

    /// <summary>One line, as in <c>weigh-ins.csv:7:3: weight_g "41O" is not a number; expected a weight above 0 in g</c>, in every culture.</summary>
    public override string ToString()
    {
        string place = Line == 0 ? ": " : string.Create(CultureInfo.InvariantCulture, $":{Line}:{Column}: ");
        return OneLine(File + place + Shortened(Field, LongestField) + (Value is null ? "" : " " + Quoted(Value)) + " " + Fault + "; expected " + Expected);
    }

    /// <summary>Problems line by line, as far as anyone wants to read them, and how many more there are.</summary>
    /// <param name="problems">Any number.</param>
    /// <param name="most">How many to print, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than 1.</exception>
    public static IReadOnlyList<string> Lines(IReadOnlyList<FileProblem> problems, int most = 50)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        List<string> lines = [.. problems.Take(most).Select(problem => problem.ToString())];
        if (problems.Count > most)
        {
            lines.Add("... and " + NumberText.Counted(problems.Count - most, "more problem"));
        }

        return lines;
    }

    /// <summary>In quotes, on one line, and not longer than a line bears.</summary>
    internal static string Quoted(string text) => "\"" + OneLine(Shortened(text, LongestValue)) + "\"";

    private static string Shortened(string text, int longest) => text.Length > longest ? text[..longest] + "..." : text;

    private static string OneLine(string text) => string.Concat(text.Select(letter => char.IsControl(letter) || char.IsSurrogate(letter) ? '?' : letter));
}
