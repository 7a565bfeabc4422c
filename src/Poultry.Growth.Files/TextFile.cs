using System.Text;

namespace Poultry.Growth.Files;

/// <summary>A file as text in UTF-8, with or without byte order mark; what stands in the way is a problem and not an exception.</summary>
internal static class TextFile
{
    private const string Expected = "a text file in UTF-8 of at most 50 MB";
    private const int MostBytes = 50_000_000;

    public static string? Read(string path, ProblemList problems)
    {
        try
        {
            if (Directory.Exists(path))
            {
                problems.Add("file", null, "is a folder", Expected);
                return null;
            }

            using FileStream stream = File.OpenRead(path);
            using MemoryStream bytes = new();
            byte[] buffer = new byte[81920];
            for (int read = stream.Read(buffer); read > 0 && bytes.Length <= MostBytes; read = stream.Read(buffer))
            {
                bytes.Write(buffer, 0, read);
            }

            return bytes.Length <= MostBytes ? Decode(bytes.ToArray(), problems) : Refuse("is too large");
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse("does not exist");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refuse("cannot be read (" + exception.Message.TrimEnd('.') + ")");
        }

        string? Refuse(string fault)
        {
            problems.Add("file", null, fault, Expected);
            return null;
        }
    }

    /// <summary>A text that came from elsewhere: its byte order mark goes, and zeros are refused.</summary>
    public static string? Check(string text, ProblemList problems)
    {
        int zero = text.IndexOf('\0', StringComparison.Ordinal);
        if (zero >= 0)
        {
            (int line, int column) = Place(text.AsSpan(0, zero));
            problems.Add(line, column, "text", null, "holds a zero byte", "text, not a program's own format");
            return null;
        }

        return text.TrimStart('\uFEFF');
    }

    private static string? Decode(byte[] bytes, ProblemList problems)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            problems.Add(1, 1, "text", null, "is in UTF-16", Utf8(problems));
            return null;
        }

        try
        {
            return Check(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes), problems);
        }
        catch (DecoderFallbackException exception)
        {
            (int line, int column) = Place(Encoding.UTF8.GetString(bytes, 0, Math.Max(0, exception.Index)));
            problems.Add(line, column, "text", null, "is not UTF-8", Utf8(problems));
            return null;
        }
    }

    private static string Utf8(ProblemList problems) =>
        "UTF-8: save it as " + (problems.File.EndsWith(".json", StringComparison.OrdinalIgnoreCase) ? "plain text in UTF-8" : "\"CSV UTF-8\"");

    private static (int Line, int Column) Place(ReadOnlySpan<char> before) => (before.Count('\n') + 1, before.Length - before.LastIndexOf('\n'));
}
