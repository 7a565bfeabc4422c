using System.Text.RegularExpressions;

namespace Poultry.Growth.Tests.Docs;

/// <summary>As much of Markdown as the pages of this repository use.</summary>
internal static partial class Markdown
{
    /// <summary>The pages: README.md, DEVELOPERS.md and everything under docs.</summary>
    public static IReadOnlyList<string> Pages { get; } = ["README.md", "DEVELOPERS.md", .. Repository.Files("docs", "*.md")];

    public static IReadOnlyList<FencedBlock> BlocksOf(string page) => Blocks(page, File.ReadAllLines(Repository.PathOf(page)));

    /// <summary>The fenced blocks among lines, in order.</summary>
    public static IReadOnlyList<FencedBlock> Blocks(string page, IReadOnlyList<string> lines)
    {
        List<FencedBlock> blocks = [];
        List<string> prose = [];
        for (int i = 0; i < lines.Count; i++)
        {
            if (!IsFence(lines[i]))
            {
                prose.Add(lines[i]);
                continue;
            }

            int end = i + 1;
            while (end < lines.Count && !IsFence(lines[end]))
            {
                end++;
            }

            string text = string.Concat(lines.Skip(i + 1).Take(end - i - 1).Select(line => line + "\n"));
            blocks.Add(new FencedBlock(page, i + 1, lines[i].Trim().TrimStart('`').Trim(), text, LeadsOn(prose)));
            prose.Clear();
            i = end;
        }

        return blocks;
    }

    /// <summary>The anchors that headings make, as code hosts number and spell them.</summary>
    public static IReadOnlySet<string> Anchors(IEnumerable<string> lines)
    {
        HashSet<string> anchors = [];
        foreach (Match heading in OutsideFences(lines).Select(line => Heading().Match(line)).Where(match => match.Success))
        {
            string slug = Slug(heading.Groups[1].Value);
            string anchor = slug;
            for (int again = 1; !anchors.Add(anchor); again++)
            {
                anchor = $"{slug}-{again}";
            }
        }

        return anchors;
    }

    /// <summary>Targets of links and images, each with its line from 1.</summary>
    public static IEnumerable<(int Line, string Target)> Links(IEnumerable<string> lines) =>
        OutsideFences(lines).SelectMany((line, index) =>
            Link().Matches(CodeSpan().Replace(line, "")).Select(match => (index + 1, match.Groups[1].Value)));

    /// <summary>The lines, with those inside fences blanked, so that line numbers stay.</summary>
    private static IEnumerable<string> OutsideFences(IEnumerable<string> lines)
    {
        bool inside = false;
        foreach (string line in lines)
        {
            bool fence = IsFence(line);
            yield return inside || fence ? "" : line;
            inside ^= fence;
        }
    }

    private static bool IsFence(string line) => line.TrimStart().StartsWith("```", StringComparison.Ordinal);

    private static bool LeadsOn(IEnumerable<string> prose) =>
        prose.Where(line => !string.IsNullOrWhiteSpace(line)).ToList() is [] or [[.., ':']];

    private static string Slug(string heading)
    {
        string text = LinkText().Replace(heading, "$1").Trim();
#pragma warning disable CA1308 // Anchors are lower case.
        return string.Concat(text.ToLowerInvariant().Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_').Select(c => c == ' ' ? '-' : c));
#pragma warning restore CA1308
    }

    [GeneratedRegex(@"^#{1,6}\s+(.*?)\s*#*$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"(?:\]\(\s*|^\s*\[[^\]]+\]:\s+)<?([^\s)>]+)")]
    private static partial Regex Link();

    [GeneratedRegex(@"\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex LinkText();

    [GeneratedRegex("`[^`]*`")]
    private static partial Regex CodeSpan();
}
