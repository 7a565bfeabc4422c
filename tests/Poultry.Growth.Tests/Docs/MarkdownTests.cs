namespace Poultry.Growth.Tests.Docs;

/// <summary>Links lead somewhere.</summary>
public class MarkdownTests
{
    public static TheoryData<string> Pages() => [.. Markdown.Pages];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_of_a_page_leads_somewhere(string page) =>
        Markdown.Links(File.ReadLines(Repository.PathOf(page)))
            .Where(link => !Leads(page, link.Target))
            .Select(link => $"{page}({link.Line}): {link.Target}")
            .ShouldBeNone();

    [Theory]
    [InlineData("README.md", true)]
    [InlineData("src", true)]
    [InlineData("README.md#no-such-heading", false)]
    [InlineData("#no-such-heading", false)]
    [InlineData("docs/no-such-page.md", false)]
    [InlineData("../outside.md", false)]
    public void A_dead_link_is_told_from_a_live_one(string target, bool leads) => Leads("README.md", target).Should().Be(leads);

    [Fact]
    public void Links_are_found_outside_code() =>
        Markdown.Links(["a [b](c.md) ![d](e.svg)", "`[no](x.md)`", "```", "[no](y.md)", "```", "[f]: g.md#h"])
            .Should().Equal((1, "c.md"), (1, "e.svg"), (6, "g.md#h"));

    [Fact]
    public void Anchors_are_spelled_as_code_hosts_spell_them() =>
        Markdown.Anchors(["# How to add a curve", "## `fit`: the call", "## Twice", "## Twice", "```", "# no", "```"])
            .Should().BeEquivalentTo("how-to-add-a-curve", "fit-the-call", "twice", "twice-1");

    private static bool Leads(string page, string target)
    {
        if (Uri.TryCreate(target, UriKind.Absolute, out Uri? address) && address.Scheme is "https" or "http" or "mailto")
        {
            return true;
        }

        string[] parts = target.Split('#', 2);
        string path = parts[0].Length == 0 ? Repository.PathOf(page) : Path.GetFullPath(parts[0], Path.GetDirectoryName(Repository.PathOf(page))!);
        return path.StartsWith(Repository.Root, StringComparison.Ordinal)
            && (parts.Length == 1
                ? Path.Exists(path)
                : File.Exists(path) && Markdown.Anchors(File.ReadLines(path)).Contains(parts[1]));
    }
}
