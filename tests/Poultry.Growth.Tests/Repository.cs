namespace Poultry.Growth.Tests;

/// <summary>The working copy that these tests were built from.</summary>
internal static class Repository
{
    private static readonly HashSet<string> NotOurs = [".git", .. IgnoredFolders()];

    public static string Root { get; } = FindRoot();

    /// <summary>The full name of a file or folder given from the root.</summary>
    public static string PathOf(string relative) => Path.Combine(Root, relative);

    /// <summary>Files under a folder, from the root, with forward slashes, in order; what builds leave behind is skipped.</summary>
    public static IEnumerable<string> Files(string folder, string pattern = "*") =>
        Directory.Exists(PathOf(folder)) ? Walk(new DirectoryInfo(PathOf(folder)), pattern) : [];

    /// <summary>Whether .gitignore names this folder, or it is git's own.</summary>
    public static bool Ignores(string folderName) => NotOurs.Contains(folderName);

    private static IEnumerable<string> Walk(DirectoryInfo folder, string pattern) =>
        folder.EnumerateFiles(pattern)
            .Select(file => Path.GetRelativePath(Root, file.FullName).Replace('\\', '/'))
            .Where(name => name != ".git")
            .Order(StringComparer.Ordinal)
            .Concat(folder.EnumerateDirectories()
                .Where(child => !Ignores(child.Name))
                .OrderBy(child => child.Name, StringComparer.Ordinal)
                .SelectMany(child => Walk(child, pattern)));

    private static IEnumerable<string> IgnoredFolders() =>
        File.ReadLines(Path.Combine(FindRoot(), ".gitignore")).Where(line => line.EndsWith('/')).Select(line => line.TrimEnd('/'));

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Poultry.Growth.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("No folder above the tests holds Poultry.Growth.sln.");
    }
}
