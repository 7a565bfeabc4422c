namespace Poultry.Growth.Files;

/// <summary>The tables of a folder. Folders within it, and files with other endings, are not looked at; nothing in it makes reading throw.</summary>
internal static class CsvFolder
{
    private const string Ending = ".csv";

    /// <summary>Paths in the order of the files' names; none, and a problem, where the folder is missing, unreadable or without a table.</summary>
    public static string[] Paths(string folder, string expected, ProblemList problems)
    {
        try
        {
            string[] paths =
            [
                .. Directory.EnumerateFiles(folder)
                    .Where(path => Path.GetExtension(path).Equals(Ending, StringComparison.OrdinalIgnoreCase) && Path.GetFileNameWithoutExtension(path).Trim().Length > 0)
                    .Order(StringComparer.Ordinal),
            ];
            return paths.Length > 0 ? paths : Refuse("holds no .csv file");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // What a file in place of a folder throws differs from system to system.
            return Refuse(File.Exists(folder) ? "is a file"
                : exception is DirectoryNotFoundException ? "does not exist"
                : "cannot be read (" + exception.Message.TrimEnd('.') + ")");
        }

        string[] Refuse(string fault)
        {
            problems.Add("folder", null, fault, expected);
            return [];
        }
    }
}
