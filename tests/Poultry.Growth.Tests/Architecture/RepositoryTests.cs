using System.Text.RegularExpressions;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>What lies in the repository, and what is written in it.</summary>
public partial class RepositoryTests
{
    private static readonly string[] Visible =
        ["README.md", "DEVELOPERS.md", "LICENSE", "Poultry.Growth.sln", "src", "tests", "samples", "benchmarks", "docs", "Directory.Build.props"];

    private static readonly string[] Hidden = [".ci", ".config", ".editorconfig", ".git", ".gitattributes", ".gitignore"];

    [Fact]
    public void The_top_level_is_what_the_guide_says()
    {
        string[] names = [.. Directory.EnumerateFileSystemEntries(Repository.Root).Select(path => Path.GetFileName(path)).Where(name => !Repository.Ignores(name))];

        names.Where(name => name[0] != '.').Should().BeEquivalentTo(Visible);
        names.Where(name => name[0] == '.').Except(Hidden).ShouldBeNone();
    }

    [Fact]
    public void No_text_names_a_place_on_somebodys_machine() => LinesMatching(MachinePath()).ShouldBeNone();

    [Fact]
    public void No_text_names_a_package_registry() => LinesMatching(Registry()).ShouldBeNone("the machine's own configuration says where packages come from");

    [Fact]
    public void Sources_are_indented_with_spaces_and_end_lines_with_a_line_feed() =>
        Texts().Where(file => file.EndsWith(".cs", StringComparison.Ordinal))
            .Where(file => File.ReadAllText(Repository.PathOf(file)).AsSpan().IndexOfAny('\t', '\r') >= 0)
            .ShouldBeNone();

    [Theory]
    [InlineData("/roo" + "t/x", true)]
    [InlineData("see /tm" + "p/report.txt", true)]
    [InlineData(@"C:\Us" + @"ers\me", true)]
    [InlineData("docs/ho" + "me/index.md", false)]
    [InlineData("kg/wo" + "rk/day", false)]
    public void A_place_on_a_machine_is_told_from_a_relative_one(string text, bool isMachinePath) =>
        MachinePath().IsMatch(text).Should().Be(isMachinePath);

    private static IEnumerable<string> LinesMatching(Regex pattern) =>
        from file in Texts()
        from line in File.ReadLines(Repository.PathOf(file)).Select((text, index) => (Text: text, Number: index + 1))
        where pattern.IsMatch(line.Text)
        select $"{file}({line.Number}): {line.Text.Trim()}";

    private static IEnumerable<string> Texts() => Repository.Files("").Where(IsText);

    /// <summary>A file without a zero byte in its first part.</summary>
    private static bool IsText(string file)
    {
        using FileStream stream = File.OpenRead(Repository.PathOf(file));
        Span<byte> start = stackalloc byte[4096];
        int length = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        return !start[..length].Contains((byte)0);
    }

    [GeneratedRegex(@"(?<![\w.~:/-])/(work|tmp|root|home|Users|var/folders)/|\b[A-Z]:\\Users\\")]
    private static partial Regex MachinePath();

    [GeneratedRegex(@"(nuget|npmjs|pypi)\.(org|com)\b")]
    private static partial Regex Registry();
}
