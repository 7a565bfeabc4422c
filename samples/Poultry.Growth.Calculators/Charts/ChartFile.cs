namespace Poultry.Growth.Calculators.Charts;

/// <summary>A file that may hold a chart and nothing else: what is no chart is never replaced.</summary>
internal sealed class ChartFile
{
    private readonly string path;

    private ChartFile(string path) => this.path = path;

    /// <summary>The file at a path; null, and a problem, where no chart may go.</summary>
    public static ChartFile? At(string path, Action<string> refuse)
    {
        string full = path.Length == 0 ? path : Path.GetFullPath(path);
        string? fault = !Path.GetExtension(full).Equals(".svg", StringComparison.OrdinalIgnoreCase) ? "is no chart; expected a name that ends in .svg"
            : Directory.Exists(full) ? "is a folder; expected a file"
            : !Directory.Exists(Path.GetDirectoryName(full)) ? "lies in a folder that does not exist; expected one that does"
            : File.Exists(full) && !IsChart(full) ? "exists and is no chart; expected a new name or an earlier chart"
            : null;
        if (fault is null)
        {
            return new(full);
        }

        refuse("\"" + path + "\" " + fault);
        return null;
    }

    /// <summary>Writes the chart, whole or not at all: it is moved into its place when complete.</summary>
    /// <returns>What stood in the way; null when written.</returns>
    public string? Write(string svg)
    {
        string unfinished = Path.Combine(Path.GetDirectoryName(path)!, "." + Path.GetFileName(path) + "." + Path.GetRandomFileName());
        try
        {
            File.WriteAllText(unfinished, svg);
            File.Move(unfinished, path, overwrite: true);
            return null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            File.Delete(unfinished);
            return "--chart: \"" + path + "\" cannot be written (" + exception.Message.TrimEnd('.') + ")";
        }
    }

    private static bool IsChart(string path)
    {
        using StreamReader reader = new(path);
        char[] start = new char[4];
        return reader.ReadBlock(start) == 0 || start is ['<', 's', 'v', 'g'];
    }
}
