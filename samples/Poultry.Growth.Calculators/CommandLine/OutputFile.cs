namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>A file that may hold one kind of answer and nothing else: what is something else is never replaced.</summary>
internal sealed class OutputFile
{
    private readonly string path;
    private readonly string option;

    private OutputFile(string path, string option) => (this.path, this.option) = (path, option);

    /// <summary>The file for a chart; null, and a problem, where none may go.</summary>
    public static OutputFile? OfChart(string path, string option, Action<string> refuse) => At(path, option, ".svg", "chart", "<svg", refuse);

    /// <summary>The file for a calendar; null, and a problem, where none may go.</summary>
    public static OutputFile? OfCalendar(string path, string option, Action<string> refuse) => At(path, option, ".ics", "calendar", "BEGIN:VCALENDAR", refuse);

    /// <summary>The file for a report; null, and a problem, where none may go.</summary>
    public static OutputFile? OfReport(string path, string option, Action<string> refuse) => At(path, option, ".html", "report of this program", HtmlText.Start, refuse);

    /// <summary>Writes the answer, whole or not at all: it is moved into its place when complete.</summary>
    /// <returns>What stood in the way; null when written.</returns>
    public string? Write(string text)
    {
        string unfinished = Path.Combine(Path.GetDirectoryName(path)!, "." + Path.GetFileName(path) + "." + Path.GetRandomFileName());
        try
        {
            File.WriteAllText(unfinished, text);
            File.Move(unfinished, path, overwrite: true);
            return null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            Discard(unfinished);
            return option + ": \"" + path + "\" cannot be written (" + exception.Message.TrimEnd('.') + ")";
        }
    }

    /// <summary>Removes what was begun; where that fails too, the reason that is told stays the first.</summary>
    private static void Discard(string unfinished)
    {
        try
        {
            File.Delete(unfinished);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // Its name begins with a point and is nobody's answer.
        }
    }

    private static OutputFile? At(string path, string option, string extension, string what, string start, Action<string> refuse)
    {
        string full = path.Length == 0 ? path : Path.GetFullPath(path);
        string? fault = !Path.GetExtension(full).Equals(extension, StringComparison.OrdinalIgnoreCase) ? "is no " + what + "; expected a name that ends in " + extension
            : Directory.Exists(full) ? "is a folder; expected a file"
            : !Directory.Exists(Path.GetDirectoryName(full)) ? "lies in a folder that does not exist; expected one that does"
            : File.Exists(full) && !StartsWith(full, start) ? "exists and is no " + what + "; expected a new name or an earlier " + what
            : null;
        if (fault is null)
        {
            return new(full, option);
        }

        refuse(option + ": \"" + path + "\" " + fault);
        return null;
    }

    /// <summary>An empty file may be anything.</summary>
    private static bool StartsWith(string path, string start)
    {
        using StreamReader reader = new(path);
        char[] read = new char[start.Length];
        int length = reader.ReadBlock(read);
        return length == 0 || read.AsSpan(0, length).SequenceEqual(start);
    }
}
