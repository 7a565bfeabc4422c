namespace Poultry.Growth.Tests.Docs;

/// <summary>Pages that tests write: a page is fresh when it says what the library says today.</summary>
internal static class GeneratedPage
{
    private const string Write = "POULTRY_GROWTH_WRITE_DOCS";

    private static bool IsWriting => Environment.GetEnvironmentVariable(Write) == "1";

    /// <summary>Fails when the page differs from the text; with POULTRY_GROWTH_WRITE_DOCS=1 writes the page instead.</summary>
    /// <param name="relativePath">From the root of the repository.</param>
    /// <param name="text">What the page must say.</param>
    public static void ShouldBeFresh(string relativePath, string text)
    {
        if (IsWriting)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Repository.PathOf(relativePath))!);
            File.WriteAllText(Repository.PathOf(relativePath), Normalised(text));
        }

        TextOf(relativePath).Should().Be(Normalised(text), "{0} is generated: run the tests with {1}=1 and read the diff", relativePath, Write);
    }

    /// <summary>Fails on a file of the folder that nothing generates any more; with POULTRY_GROWTH_WRITE_DOCS=1 deletes it instead.</summary>
    /// <param name="folder">From the root of the repository.</param>
    /// <param name="relativePaths">Every page that is generated there.</param>
    public static void ShouldHaveNoOthers(string folder, IEnumerable<string> relativePaths)
    {
        IReadOnlyList<string> others = [.. Others(folder, relativePaths)];
        foreach (string other in IsWriting ? others : [])
        {
            File.Delete(Repository.PathOf(other));
        }

        Others(folder, relativePaths).ShouldBeNone($"nothing generates them any more: run the tests with {Write}=1");
    }

    internal static bool IsFresh(string relativePath, string text) => TextOf(relativePath) == Normalised(text);

    internal static IEnumerable<string> Others(string folder, IEnumerable<string> relativePaths) => Repository.Files(folder).Except(relativePaths);

    private static string TextOf(string relativePath) =>
        File.Exists(Repository.PathOf(relativePath)) ? Normalised(File.ReadAllText(Repository.PathOf(relativePath))) : "";

    private static string Normalised(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
}
