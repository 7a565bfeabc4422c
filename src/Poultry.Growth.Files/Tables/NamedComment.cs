namespace Poultry.Growth.Files;

/// <summary>A comment that says something: <c># name: value</c>.</summary>
internal readonly record struct NamedComment(string Name, CsvCell Value)
{
    /// <summary>The comments with a colon, in the order of the file.</summary>
    public static IEnumerable<NamedComment> Among(IEnumerable<CsvCell> comments)
    {
        foreach (CsvCell comment in comments)
        {
            int colon = comment.Text.IndexOf(':', StringComparison.Ordinal);
            if (colon >= 0)
            {
                string text = comment.Text[(colon + 1)..].Trim();
                int column = comment.Column + 1 + comment.Text.IndexOf(text, colon + 1, StringComparison.Ordinal);
                yield return new(comment.Text[..colon].Trim(), new(text, comment.Line, column));
            }
        }
    }

    public bool Is(string name) => Name.Equals(name, StringComparison.OrdinalIgnoreCase);

    /// <summary>Tells of a name that stands there again.</summary>
    public void Once(bool again, ProblemList problems)
    {
        if (again)
        {
            problems.Add(Value, Name, "is stated a second time", "one line " + Name);
        }
    }
}
