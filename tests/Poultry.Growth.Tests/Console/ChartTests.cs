using System.Xml.Linq;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>A chart is a sound SVG that says in words what it shows, and never takes the place of anything but a chart.</summary>
public sealed class ChartTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("fit", "metric", "live weight, kg", "2.043 kg at 42 d")]
    [InlineData("fit", "us", "live weight, lb", "4.504 lb at 42 d")]
    [InlineData("weigh", "metric", "live weight, kg", "2.043 kg at 42 d")]
    [InlineData("weigh", "us", "live weight, lb", "4.504 lb at 42 d")]
    [InlineData("project", "metric", "live weight, kg", "2.043 kg at 42 d")]
    [InlineData("project", "us", "live weight, lb", "4.504 lb at 42 d")]
    [InlineData("compare", "us", "live weight, lb", "At 42 d: -0.236 lb, -1.4 d ahead.", "--standard", ConsoleRun.StandardFromRoot)]
    public void A_chart_fits_any_width_and_speaks(string command, string units, string axis, string said, params string[] options)
    {
        XElement svg = Chart(command, [ConsoleRun.Demo, "--units", units, .. ConsoleRun.FromRoot(options)]);

        svg.Name.LocalName.Should().Be("svg");
        svg.Attribute("viewBox")!.Value.Should().Be("0 0 960 600");
        svg.Attribute("width")!.Value.Should().Be("100%");
        svg.Attribute("height").Should().BeNull();
        svg.Elements().Take(2).Select(element => element.Name.LocalName).Should().Equal("title", "desc");
        svg.Attribute("aria-labelledby")!.Value.Should().Be(string.Join(' ', svg.Elements().Take(2).Select(element => element.Attribute("id")!.Value)));
        svg.Elements().ElementAt(1).Value.Should().Contain(said);
        svg.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value).Should().Contain(axis).And.Contain("age, d");
    }

    [Fact]
    public void A_fit_is_drawn_with_its_bands_and_marked_beyond_the_last_weigh_in()
    {
        XElement svg = Chart("fit", ConsoleRun.Demo);

        svg.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value).Should().Contain(
            "90 % interval of the mean", "90 % interval of one bird", "fitted curve", "beyond the last weigh-in, if it is right", "last weigh-in");
        svg.Elements().ElementAt(1).Value.Should().Contain("Beyond the last weigh-in, at 56 d: mean").And.Contain("the interval is too narrow");
        svg.Descendants().Attributes("style").Concat(svg.Descendants().Attributes("stroke-dasharray")).Should().Contain(style => style.ToString().Contains("dasharray"));
        Chart("fit", ConsoleRun.Demo, "--at", "28d").Descendants().Select(element => element.Value).Should().NotContain("last weigh-in");
    }

    [Fact]
    public void A_projection_is_drawn_as_a_fan_with_its_target()
    {
        XElement svg = Chart("project", ConsoleRun.Demo, "--target", "2.6kg");

        svg.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value).Should().Contain(
            "50 % interval of the mean", "80 % interval of the mean", "90 % interval of the mean", "90 % interval of one bird", "target 2.60 kg", "last weigh-in");
        svg.Elements().ElementAt(1).Value.Should().Contain("Projected at 56 d: mean ").And.Contain("Target 2.600 kg: As likely before as after ");
        Chart("project").Elements().ElementAt(1).Value.Should().Contain("No bird is weighed yet. Projected at 42 d: ");
    }

    [Fact]
    public void Ids_are_unique_also_beside_another_chart()
    {
        string[] ids = [.. Ids(Chart("fit", ConsoleRun.Demo)), .. Ids(Chart("weigh", ConsoleRun.Demo)), .. Ids(Chart("fit", ConsoleRun.Demo, "--units", "us"))];

        ids.Should().HaveCountGreaterThan(6).And.OnlyHaveUniqueItems();

        static IEnumerable<string> Ids(XElement svg) => svg.DescendantsAndSelf().Attributes("id").Select(id => id.Value);
    }

    [Fact]
    public void Nothing_outside_the_file_is_referred_to()
    {
        XElement svg = Chart("fit", ConsoleRun.Demo);
        string[] ids = [.. svg.Descendants().Attributes("id").Select(id => id.Value)];

        foreach (XAttribute attribute in svg.DescendantsAndSelf().Attributes().Where(attribute => !attribute.IsNamespaceDeclaration))
        {
            attribute.Value.Should().NotContain("http");
            if (attribute.Value.StartsWith("url(", StringComparison.Ordinal))
            {
                ids.Should().Contain(attribute.Value[5..^1]);
            }
        }

        svg.Descendants().Select(element => element.Name.LocalName).Should().NotContain(["image", "script", "use", "a", "style"]);
    }

    [Fact]
    public void An_earlier_chart_is_replaced_and_nothing_else()
    {
        Chart("fit", ConsoleRun.Demo);
        string first = File.ReadAllText(scratch.PathOf("chart.svg"));
        string mine = scratch.Write("mine.svg", "not a chart");

        Chart("weigh", ConsoleRun.Demo);
        ConsoleRun refused = ConsoleRun.Of("weigh", ConsoleRun.Demo, "--chart", mine);

        File.ReadAllText(scratch.PathOf("chart.svg")).Should().NotBe(first);
        refused.Exit.Should().Be(2);
        refused.Errors.Should().Be("--chart: \"" + mine + "\" exists and is no chart; expected a new name or an earlier chart\n");
        File.ReadAllText(mine).Should().Be("not a chart");
        scratch.Names().Should().Equal("chart.svg", "mine.svg");
    }

    [Fact]
    public void An_input_is_never_overwritten()
    {
        string input = scratch.Write("in.svg", "age_d,weight_g\n7,171\n14,440\n21,900\n28,1500\n35,2100\n42,2600\n");
        string before = File.ReadAllText(input);

        ConsoleRun.Of("fit", input, "--chart", input).Exit.Should().Be(2);
        ConsoleRun.Of("fit", input, "--chart", scratch.PathOf("./in.svg")).Exit.Should().Be(2);

        File.ReadAllText(input).Should().Be(before);
    }

    [Theory]
    [InlineData("none/chart.svg", "lies in a folder that does not exist; expected one that does")]
    [InlineData("chart.txt", "is no chart; expected a name that ends in .svg")]
    public void A_place_where_no_chart_can_go_is_refused(string name, string fault)
    {
        ConsoleRun run = ConsoleRun.Of("fit", ConsoleRun.Demo, "--chart", scratch.PathOf(name));

        run.Should().Be(new ConsoleRun(2, "", "--chart: \"" + scratch.PathOf(name) + "\" " + fault + "\n"));
        scratch.Names().Should().BeEmpty();
    }

    [Fact]
    public void A_folder_is_no_place_for_a_chart()
    {
        Directory.CreateDirectory(scratch.PathOf("folder.svg"));

        ConsoleRun.Of("fit", ConsoleRun.Demo, "--chart", scratch.PathOf("folder.svg")).Errors.Should().Contain("is a folder; expected a file");
    }

    private XElement Chart(string command, params string[] words)
    {
        string path = scratch.PathOf("chart.svg");
        ConsoleRun run = ConsoleRun.Of([command, .. words, "--chart", path]);
        run.Exit.Should().Be(0, run.Errors);
        return XDocument.Parse(File.ReadAllText(path)).Root!;
    }
}
