using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>Reads one section of a JSON file by name and keeps every problem: missing, twice, unknown, of the wrong kind, out of range.</summary>
/// <remarks>A name that is never asked for is unknown: <see cref="Close"/> tells it. A value of null counts as left out.</remarks>
internal sealed partial class JsonSection
{
    /// <summary>The name under which editors look for a schema: for them, and nothing of the batch.</summary>
    public const string Schema = "$schema";

    private readonly JsonValue section;
    private readonly ProblemList problems;
    private readonly List<string> known = [];

    private JsonSection(JsonValue section, ProblemList problems) => (this.section, this.problems) = (section, problems);

    public ProblemList Problems => problems;

    /// <summary>The section; null, and a problem, where the value is none.</summary>
    public static JsonSection? Of(JsonValue value, ProblemList problems)
    {
        if (value.Kind == JsonKind.Section)
        {
            return new(value, problems);
        }

        problems.Add(value.Line, value.Column, Field(value.Path), Shown(value), value.Words, "a section in { }");
        return null;
    }

    /// <summary>A value of any kind; null where it is left out.</summary>
    public JsonValue? Optional(string name)
    {
        JsonMember[] named = [.. section.Members.Where(member => member.Name == name)];
        bool isNew = !known.Contains(name);
        if (isNew)
        {
            known.Add(name);
        }

        foreach (JsonMember again in named.Skip(1).Where(_ => isNew))
        {
            problems.Add(again.Line, again.Column, PathOf(name), null, "stands a second time", "each name once");
        }

        return named.Length > 0 && named[0].Value.Kind != JsonKind.Nothing ? named[0].Value : null;
    }

    /// <summary>A value of any kind; a problem where it is left out.</summary>
    public JsonValue? Required(string name, string expected)
    {
        JsonValue? value = Optional(name);
        if (value is null)
        {
            problems.Add(section.Line, section.Column, PathOf(name), null, "is missing", expected);
        }

        return value;
    }

    /// <summary>A section within; null where it is left out or none.</summary>
    public JsonSection? Section(string name) => Optional(name) is { } value ? Of(value, problems) : null;

    /// <summary>Text that is not empty and can be printed in one line; null where it is left out or wrong.</summary>
    public string? Text(string name, bool required = false, string expected = "text in quotes")
    {
        JsonValue? value = required ? Required(name, expected) : Optional(name);
        bool cannotBePrinted = value is { Kind: JsonKind.Text } && value.Text.Any(letter => char.IsControl(letter) || letter is '\uFFFE' or '\uFFFF');
        if (value is { Kind: JsonKind.Text } && !string.IsNullOrWhiteSpace(value.Text) && !cannotBePrinted)
        {
            return value.Text;
        }

        if (value is not null)
        {
            Refuse(value, cannotBePrinted ? "holds a sign that cannot be printed" : value.Kind == JsonKind.Text ? "is empty" : value.Words, expected);
        }

        return null;
    }

    /// <summary>A whole number, bare; null where it is left out or wrong.</summary>
    public int? Whole(string name, int low, int high, bool required = false)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"a whole number without quotes, {low} to {high}");
        JsonValue? value = required ? Required(name, expected) : Optional(name);
        if (value is { Kind: JsonKind.Number } && int.TryParse(value.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number) && number >= low && number <= high)
        {
            return number;
        }

        if (value is not null)
        {
            Refuse(value, value.Kind == JsonKind.Number ? "is no whole number in range" : value.Words, expected);
        }

        return null;
    }

    /// <summary>One of some names; the first where it is left out or wrong.</summary>
    public T Choice<T>(string name, params IReadOnlyList<(string Name, T Value)> choices)
    {
        JsonValue? value = Optional(name);
        foreach ((string word, T choice) in choices)
        {
            if (value is { Kind: JsonKind.Text } && value.Text.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return choice;
            }
        }

        if (value is not null)
        {
            string[] names = [.. choices.Select(choice => choice.Name)];
            Refuse(value, value.Kind == JsonKind.Text ? "is unknown" + NearestWord.Hint(value.Text, names) : value.Words, string.Join(", ", names));
        }

        return choices[0].Value;
    }

    /// <summary>The items of a list that holds something; none where it is left out or no list.</summary>
    public IReadOnlyList<JsonValue> List(string name, bool required = false, string expected = "a list in [ ]")
    {
        JsonValue? value = required ? Required(name, expected) : Optional(name);
        if (value is { Kind: JsonKind.List, Items.Count: > 0 })
        {
            return value.Items;
        }

        if (value is not null)
        {
            Refuse(value, value.Kind == JsonKind.List ? "is empty" : value.Words, expected);
        }

        return [];
    }

    /// <summary>Says that a value cannot be.</summary>
    public void Refuse(JsonValue value, string fault, string expected) => problems.Add(value.Line, value.Column, Field(value.Path), Shown(value), fault, expected);

    /// <summary>Says that the section as a whole cannot be.</summary>
    public void Refuse(string fault, string expected) => problems.Add(section.Line, section.Column, Field(section.Path), null, fault, expected);

    /// <summary>Whether the section is one of another kind, which holds a name of its own and lacks ours. One problem says so, and not one for every name in it.</summary>
    public bool IsOfAnotherKind(string theirs, string ours, string kind, string expected)
    {
        if (section.Members.FirstOrDefault(member => member.Name == theirs) is not { } stranger || section.Members.Any(member => member.Name == ours))
        {
            return false;
        }

        problems.Add(stranger.Line, stranger.Column, PathOf(theirs), null, "belongs to " + kind, expected);
        return true;
    }

    /// <summary>Tells of names that nobody asked for.</summary>
    public void Close()
    {
        string[] names = [.. known.Where(name => name != Schema)];
        foreach (JsonMember member in section.Members.Where(member => !known.Contains(member.Name)))
        {
            problems.Add(member.Line, member.Column, PathOf(member.Name), null, "is unknown" + NearestWord.Hint(member.Name, names), string.Join(", ", names));
        }
    }

    private static string Field(string path) => path.Length == 0 ? "file" : path;

    private static string? Shown(JsonValue value) => value.Kind is JsonKind.Text or JsonKind.Number or JsonKind.TrueOrFalse ? value.Text : null;

    private string PathOf(string name) => section.Path.Length == 0 ? name : section.Path + "." + name;
}
