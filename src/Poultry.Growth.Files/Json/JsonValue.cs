namespace Poultry.Growth.Files;

/// <summary>Kinds of JSON values, in a grower's words where they show.</summary>
internal enum JsonKind
{
    Section,
    List,
    Text,
    Number,
    TrueOrFalse,
    Nothing,
}

/// <summary>A value of a JSON file, and where it stands: path, line and character, counted from 1.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Path">As in <c>feed.phases[1].energy</c>; empty for the whole file.</param>
/// <param name="Line">The line.</param>
/// <param name="Column">The character in it where the value starts.</param>
/// <param name="Text">The text of a text, the letters of a number or of true and false; else empty.</param>
/// <param name="Members">Named values of a section, in the order of the file, names twice included.</param>
/// <param name="Items">Values of a list.</param>
internal sealed record JsonValue(
    JsonKind Kind, string Path, int Line, int Column, string Text, IReadOnlyList<JsonMember> Members, IReadOnlyList<JsonValue> Items)
{
    /// <summary>What it is, as the end of a message.</summary>
    public string Words => Kind switch
    {
        JsonKind.Section => "is a section in { }",
        JsonKind.List => "is a list in [ ]",
        JsonKind.Text => "is text",
        JsonKind.Number => "is a bare number",
        JsonKind.TrueOrFalse => "is true or false",
        _ => "is null",
    };
}

/// <summary>A named value, and where its name stands.</summary>
internal sealed record JsonMember(string Name, int Line, int Column, JsonValue Value);
