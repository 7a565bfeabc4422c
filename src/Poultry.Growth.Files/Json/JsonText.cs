using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Poultry.Growth.Files;

/// <summary>JSON as values that know where they stand. Comments (// and /* */) and commas before a closing bracket are allowed; names may stand twice, which the reader of a section tells.</summary>
internal ref struct JsonText
{
    private const int Deepest = 32;

    private readonly ReadOnlySpan<byte> bytes;
    private Utf8JsonReader reader;

    /// <summary>Up to where lines are counted, and where the current one starts.</summary>
    private int counted, line, lineStart;

    private JsonText(ReadOnlySpan<byte> bytes)
    {
        this.bytes = bytes;
        line = 1;
        reader = new Utf8JsonReader(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = Deepest });
    }

    /// <summary>The whole text as one section; null, and a problem, where it is no JSON or no section.</summary>
    public static JsonValue? Read(string text, ProblemList problems)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        JsonText json = new(bytes);
        bool isEmpty = true;
        try
        {
            json.reader.Read();
            isEmpty = false;
            JsonValue root = json.Value("");
            if (root.Kind == JsonKind.Section)
            {
                // Whatever follows the last bracket is an error that only reading on finds.
                while (json.reader.Read())
                {
                }

                return root;
            }

            problems.Add(root.Line, root.Column, "file", null, root.Words, "one section in { }");
        }
        catch (JsonException exception)
        {
            int at = Offset(bytes, (int)(exception.LineNumber ?? 0), (int)(exception.BytePositionInLine ?? 0));
            (int line, int column) = Place(bytes, at);
            (string fault, string expected) = json.Reason(at, isEmpty);
            problems.Add(line, column, "file", null, fault, expected);
        }
        catch (InvalidOperationException)
        {
            // A text with half of a surrogate pair: nobody types one.
            problems.Add("file", null, "holds a broken escape", "text as typed");
        }

        return null;
    }

    private JsonValue Value(string path)
    {
        (int row, int column) = Here();
        return reader.TokenType switch
        {
            JsonTokenType.StartObject => new(JsonKind.Section, path, row, column, "", Members(path), []),
            JsonTokenType.StartArray => new(JsonKind.List, path, row, column, "", [], Items(path)),
            JsonTokenType.String => new(JsonKind.Text, path, row, column, reader.GetString()!, [], []),
            JsonTokenType.Number => new(JsonKind.Number, path, row, column, Encoding.UTF8.GetString(reader.ValueSpan), [], []),
            JsonTokenType.True or JsonTokenType.False => new(JsonKind.TrueOrFalse, path, row, column, Encoding.UTF8.GetString(reader.ValueSpan), [], []),
            _ => new(JsonKind.Nothing, path, row, column, "", [], []),
        };
    }

    private List<JsonMember> Members(string path)
    {
        List<JsonMember> members = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            (int row, int column) = Here();
            string name = reader.GetString()!;
            reader.Read();
            members.Add(new(name, row, column, Value(path.Length == 0 ? name : path + "." + name)));
        }

        return members;
    }

    private List<JsonValue> Items(string path)
    {
        List<JsonValue> items = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            items.Add(Value(path + string.Create(CultureInfo.InvariantCulture, $"[{items.Count}]")));
        }

        return items;
    }

    /// <summary>Where the token starts. Tokens come in order, so that lines are counted once.</summary>
    private (int Line, int Column) Here()
    {
        int at = (int)reader.TokenStartIndex;
        for (; counted < at; counted++)
        {
            if (bytes[counted] == (byte)'\n')
            {
                line++;
                lineStart = counted + 1;
            }
        }

        return (line, Encoding.UTF8.GetCharCount(bytes[lineStart..at]) + 1);
    }

    private static (int Line, int Column) Place(ReadOnlySpan<byte> bytes, int at)
    {
        ReadOnlySpan<byte> before = bytes[..at];
        return (before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1);
    }

    private static int Offset(ReadOnlySpan<byte> bytes, int line, int position)
    {
        int at = 0;
        for (; line > 0 && bytes[at..].IndexOf((byte)'\n') is >= 0 and int next; line--)
        {
            at += next + 1;
        }

        return Math.Min(bytes.Length, at + position);
    }

    /// <summary>Why it cannot be read there, in our own words: the reader's speak of tokens and blocks.</summary>
    private readonly (string Fault, string Expected) Reason(int at, bool isEmpty)
    {
        const string Closed = "every bracket, quote and comment closed", Form = "names in quotes, a colon, a value, commas between; " + Closed;
        ReadOnlySpan<byte> rest = bytes[Math.Min(at, bytes.Length)..];
        return isEmpty && rest.IsEmpty ? ("is empty", "one section in { }")
            : rest.StartsWith("/*"u8) ? ("is no JSON here: this comment never ends", Closed)
            : rest.IsEmpty ? ("is no JSON here: it ends too early", Closed)
            : reader.CurrentDepth >= Deepest - 1 && rest[0] is (byte)'[' or (byte)'{' ? (string.Create(CultureInfo.InvariantCulture, $"is no JSON of ours here: it goes deeper than {Deepest} brackets"), "sections and lists as in docs/file-formats.md")
            : ("is no JSON here: " + FileProblem.Quoted(Letter(rest)) + " cannot follow what stands before it", Form);
    }

    private static string Letter(ReadOnlySpan<byte> rest) => Rune.DecodeFromUtf8(rest, out Rune letter, out _) == System.Buffers.OperationStatus.Done ? letter.ToString() : "?";
}
