using System.Globalization;
using System.Xml.Linq;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>The page of a plan: one file that stands by itself, says what it shows, reads on a phone and on paper, and comes out the same again.</summary>
public sealed class PlanReportTests(PlanReportDemo demo) : IClassFixture<PlanReportDemo>, IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("#FFFFFF", "#000000", 21)]
    [InlineData("#767676", "rgb(255,255,255)", 4.54)]
    public void Contrast_is_that_of_the_definition(string one, string other, double expected) => Contrast.Of(one, other).Should().BeApproximately(expected, 0.005);

    [Fact]
    public void It_stands_by_itself() => demo.Page.StandsByItself();

    [Fact]
    public void Its_ids_are_unique() => demo.Page.HasUniqueIdsThatAreThere();

    [Fact]
    public void It_reads_in_order() => demo.Page.ReadsInOrder();

    [Fact]
    public void Every_chart_says_what_it_shows()
    {
        demo.Page.SaysWhatItsChartsShow();
        demo.Page.Charts.Select(svg => svg.Element("title")!.Value).Should().Equal(
            "Margin of Meadow 3 by day of killing",
            "Live weight by age",
            "Weights of the birds at 58 d",
            "Stocking density in the shelters",
            "Feed of the batch by day",
            "Dead tenders on 2027-06-08: share of birds with a lesion",
            "The batch by date");
        string Said(int chart) => demo.Page.Charts.ElementAt(chart).Element("desc")!.Value;
        Said(0).Should().MatchRegex("2027-06-01: -?[0-9]+ on average, 90 % between -?[0-9]+ and -?[0-9]+, worst tenth -?[0-9]+\\.");
        Said(1).Should().Contain("Weighed: 0.148 kg at 7 d").And.MatchRegex("At 58 d, 2027-06-08: mean 3\\.[0-9]+ kg, 90 % interval 2\\.[0-9]+ kg to 3\\.[0-9]+ kg\\.");
        Said(2).Should().MatchRegex("2\\.8 to 3\\.0 kg [0-9]+ %").And.Contain("Wanted, 2.3 to 3.2 kg: ");
        Said(3).Should().Contain("Limit 20.0 kg/m2.").And.MatchRegex("On 2027-06-15: [0-9.]+ kg/m2, the limit is kept with a chance of ");
        Said(4).Should().MatchRegex("By 58 d in all [0-9]+ kg, 90 % interval [0-9]+ kg to [0-9]+ kg");
        Said(5).Should().Contain("No outdoor data");
        Said(6).Should().Contain("brooder: 2027-04-12 to 2027-05-02.").And.Contain("Decide by 2027-05-25, kill on 2027-06-08.").And.Contain("Book the plant: 2027-01-09.");
    }

    [Fact]
    public void It_can_be_read_by_every_eye() => demo.Page.CanBeRead();

    [Fact]
    public void It_fits_a_phone_and_paper() => demo.Page.FitsAPhoneAndPaper();

    [Fact]
    public void The_decision_comes_first()
    {
        demo.Page.Html.Descendants("h2").Select(heading => heading.Value).Should().Equal(
            "The decision", "The days offered", "Growth", "Floor and feed", "Dead tenders", "What to do when", "Cautions", "Sources", "To make this page again");
        XElement decision = demo.Page.Section("The decision");
        decision.Elements("p").First().Value.Should().Be("Kill on Tuesday, 2027-06-08, at 58 d");
        decision.Value.Should().Contain("Chosen for the highest mean margin of the batch. The next best, 2027-06-15, ").And.Contain("What would change it");
        decision.Descendants("dt").Select(what => what.Value).Should().Equal("Mean margin", "Bad case", "Chance of a loss", "Chance of missing orders", "Sure of the day", "Decide by");
        decision.Descendants("li").Should().HaveCountGreaterThanOrEqualTo(3);
    }

    [Fact]
    public void Its_figures_are_those_of_the_console()
    {
        XElement[] rows = [.. demo.Page.Section("The days offered").Descendants("tr")];
        string[] Cells(string what) => [.. rows.Single(row => row.Element("th")!.Value == what).Elements("td").Select(cell => cell.Value)];
        Cells("margin").Should().Equal(demo.Json.GetProperty("options").EnumerateArray().Select(option => Range(option.GetProperty("margin"), 1)));
        Cells("birds").Should().Equal(demo.Json.GetProperty("options").EnumerateArray().Select(option => Range(option.GetProperty("head"), 1)));
        demo.Page.Section("Cautions").Descendants("li").Select(caution => caution.Value).Should().Equal(demo.Json.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("text").GetString()));
        demo.Page.Section("What to do when").Descendants("tbody").Single().Elements().Should().HaveCount(demo.Json.GetProperty("timeline").GetArrayLength());

        static string Range(System.Text.Json.JsonElement outcome, double unit)
        {
            string Whole(string name) => (outcome.GetProperty(name).GetDouble() / unit).ToString("F0", CultureInfo.InvariantCulture);
            return Whole("mean") + Whole("low") + " to " + Whole("high");
        }
    }

    [Fact]
    public void What_it_says_makes_it_again_bit_for_bit_in_every_culture()
    {
        string[] words = [.. demo.Page.Section("To make this page again").Descendants("code").Single().Value.Split(' ').Skip(1)];
        words[^1] = scratch.PathOf("again.html");
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            ConsoleRun.Of(words).Exit.Should().Be(0);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        File.ReadAllBytes(scratch.PathOf("again.html")).Should().Equal(demo.Bytes);
    }

    [Fact]
    public void Names_are_text_and_never_markup()
    {
        demo.Other.Html.Descendants("h1").Single().Value.Should().Be("<b>&\"'</b><script>: which day to kill");
        demo.Other.Html.Descendants().Select(element => element.Name.LocalName).Should().NotContain(["b", "i", "script"]);
        demo.Other.Section("Floor and feed").Descendants("th").Select(cell => cell.FirstNode!.ToString(SaveOptions.DisableFormatting)).Should().Contain("&lt;i&gt;a &amp; long name of a feed&lt;/i&gt;");
        demo.Other.StandsByItself();
        demo.Other.HasUniqueIdsThatAreThere();
        demo.Other.ReadsInOrder();
        demo.Other.CanBeRead();
    }

    [Fact]
    public void A_name_that_cannot_be_printed_is_refused()
    {
        ConsoleRun run = ConsoleRun.Of("plan", scratch.Batch(text => text.Replace("\"Meadow 3\"", "\"Mea\\u0001dow\"", StringComparison.Ordinal)), "--report", scratch.PathOf("new.html"));

        run.Exit.Should().Be(2);
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain("name \"Mea?dow\" holds a sign that cannot be printed; expected ");
        File.Exists(scratch.PathOf("new.html")).Should().BeFalse();
    }

    [Fact]
    public void Pounds_are_pounds_on_the_whole_page()
    {
        demo.Other.Section("Growth").Value.Should().Contain("live weight, lb").And.NotContain(" kg");
        demo.Other.Section("The days offered").Value.Should().Contain("mean live weight, lb").And.Contain("margin a lb sold");
        demo.Other.Section("Floor and feed").Value.Should().Contain("lb/ft2").And.Contain("limit, 4.10 lb/ft2").And.NotContain("kg");
        demo.Other.SaysWhatItsChartsShow();
    }

    [Fact]
    public void What_a_batch_does_not_say_is_left_out()
    {
        ReportPages page = Report(scratch.Batch(text =>
        {
            string[] lines = [.. text.Split('\n').Where(line => !line.Contains("\"shelters\"", StringComparison.Ordinal) && !line.Contains("2027-06-01\"", StringComparison.Ordinal) && !line.Contains("2027-06-15\"", StringComparison.Ordinal))];
            return string.Join('\n', lines).Replace(", \"wantedFrom\": \"2.3kg\", \"wantedTo\": \"3.2kg\"", "", StringComparison.Ordinal).Replace("\"weighIns\": \"meadow-batch.csv\", ", "", StringComparison.Ordinal);
        }));

        page.Html.Descendants("h2").Select(heading => heading.Value).Should().Contain("Feed").And.NotContain("Floor and feed");
        page.Section("The decision").Value.Should().Contain("No other day is offered.").And.NotContain("Sure of the day");
        page.Section("The days offered").Value.Should().NotContain("floor's limit").And.NotContain("weight wanted");
        page.Charts.Should().HaveCount(6);
        page.StandsByItself();
        page.ReadsInOrder();
    }

    [Fact]
    public void What_else_was_asked_for_is_on_the_page_and_in_what_makes_it_again()
    {
        demo.Page.Html.Descendants("h2").Select(heading => heading.Value).Should().NotContain("The batch on two days");
        XElement split = demo.Other.Section("The batch on two days");
        split.Descendants("tbody").Single().Elements().Should().HaveCount(10, "every pair of five days");
        split.Value.Should().Contain("frightens");
        demo.Other.Section("The decision").Value.Should().Contain("If the plant killed on every day between");
        demo.Other.Section("To make this page again").Value.Should().Contain("--units us --every-day --split 25%,50%,75% --split-birds largest --report FILE.html");
    }

    [Fact]
    public void More_days_than_fit_a_phone_go_into_more_tables() => demo.Other.Section("The days offered").Descendants("table")
        .Select(table => table.Descendants("th").Count(cell => cell.Attribute("scope")!.Value == "col") - 1).Should().Equal(3, 2, 3, 2, 2);

    [Fact]
    public void Only_an_earlier_report_is_replaced()
    {
        string batch = scratch.Batch(text => text);
        string own = scratch.Write("own.html", "<!DOCTYPE html>\n<html></html>");
        string input = scratch.PathOf("batch.html");
        File.Copy(batch, input);
        string before = File.ReadAllText(input);

        ConsoleRun refused = ConsoleRun.Of("plan", batch, "--report", own, "--draws", "5");
        refused.Exit.Should().Be(2);
        refused.ErrorLines.Should().HaveCount(2).And.Contain("--report: \"" + own + "\" exists and is no report of this program; expected a new name or an earlier report of this program");
        File.ReadAllText(own).Should().Be("<!DOCTYPE html>\n<html></html>");
        ConsoleRun.Of("plan", input, "--report", input).Exit.Should().Be(2);
        File.ReadAllText(input).Should().Be(before);
        ConsoleRun.Of("plan", batch, "--report", scratch.PathOf("page.txt")).Errors.Should().Contain("is no report of this program; expected a name that ends in .html");

        string first = Report(batch).Text;
        string[] names = scratch.Names();
        Report(batch, "--seed", "3").Text.Should().NotBe(first);
        scratch.Names().Should().Equal(names, "nothing unfinished is left");
    }

    private ReportPages Report(string batch, params string[] words) => PlanReportDemo.Report(scratch, batch, words);
}
