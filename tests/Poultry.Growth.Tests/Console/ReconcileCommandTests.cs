using System.Text.Json;
using System.Xml.Linq;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary><c>reconcile</c> holds a plant's sheet against the plan, and the next <c>plan</c> reads what it learned.</summary>
public sealed class ReconcileCommandTests : IDisposable
{
    private const string Sheet = "samples/Poultry.Growth.Calculators/data/meadow-plant.csv", Batch = "samples/Poultry.Growth.Calculators/data/meadow-batch.json";

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void The_tables_tell_heads_differences_and_indices()
    {
        ConsoleRun run = Reconcile();

        run.Exit.Should().Be(0, run.Errors);
        run.Output.Should().Contain("| not accounted for |     1 |").And.Contain("2 whole: cellulitis").And.Contain("production efficiency factor")
            .And.Contain("Nothing: name a folder with --history").And.Contain("Cautions").And.Contain("inspector's word");
        Reconcile("--units", "us").Output.Should().Contain("mean live weight, full-fed, lb").And.Contain("packed weight, lb");
    }

    [Fact]
    public void The_document_adds_up()
    {
        JsonElement answer = Reconcile("--json").Json;
        JsonElement head = answer.GetProperty("headCount");
        int Count(string name) => head.GetProperty(name).GetInt32();

        (Count("dead") + Count("culled") + Count("missing") + Count("deadOnArrival") + Count("condemned") + Count("kept") + Count("sold") + Count("onHand") + Count("remainder")).Should().Be(Count("placed"));
        JsonElement packed = Figure(answer, "packed");
        double parts = packed.GetProperty("parts").EnumerateArray().Sum(part => part.GetProperty("difference").GetDouble());
        (parts + packed.GetProperty("leftOpen").GetDouble()).Should().BeApproximately(packed.GetProperty("actual").GetDouble() - packed.GetProperty("forecast").GetDouble(), 1e-5);
        packed.GetProperty("unit").GetString().Should().Be("kg");
        answer.GetProperty("differences").EnumerateArray().Should().OnlyContain(figure => figure.GetProperty("low").GetDouble() <= figure.GetProperty("high").GetDouble());
        answer.GetProperty("forecastFrom").GetString().Should().StartWith("6 weigh-ins of 104 birds");
        answer.GetProperty("learned").ValueKind.Should().Be(JsonValueKind.Null);
        answer.GetProperty("indices").GetProperty("livabilityPercent").GetDouble().Should().BeApproximately(85, 1e-6);
        answer.GetProperty("condemned").GetArrayLength().Should().Be(3);
    }

    [Fact]
    public void The_next_plan_reads_what_was_learned()
    {
        string history = scratch.PathOf("history"), next = Copy("Meadow 4");
        ConsoleRun before = Plan(next);
        JsonElement learned = Reconcile("--json", "--history", history).Json.GetProperty("learned");
        ConsoleRun after = Plan(next, "--history", history);

        learned.GetProperty("batches").GetInt32().Should().Be(1);
        foreach (string part in (string[])["growth", "losses", "feed", "dressing"])
        {
            JsonElement change = learned.GetProperty("parts").EnumerateArray().Single(one => one.GetProperty("part").GetString() == part);
            Width(change.GetProperty("after")).Should().BeLessThan(Width(change.GetProperty("before")), "a batch more is known of " + part);
        }

        (after.Exit, before.Exit).Should().Be((0, 0), after.Errors + before.Errors);
        Source(after, "losses").Should().StartWith("1 own batch: 1.");
        Source(after, "growth").Should().StartWith("1 own batch of both sexes");
        Source(after, "dressing").Should().Be("planning-fast and own batches: 1 own batch");
        Source(after, "feed").Should().StartWith("1 own batch: 1.0");
        Source(after, "dead tenders").Should().StartWith("1 batch, 1 of 102 birds");
        (Source(before, "losses"), Source(before, "dressing")).Should().Be(("Survival of fast-growing birds outdoors", "planning-fast"));
        JsonElement Option(ConsoleRun run) => run.Json.GetProperty("options")[0];
        Width(Option(after).GetProperty("head")).Should().BeLessThan(Width(Option(before).GetProperty("head")));
        Width(Option(after).GetProperty("meanKg")).Should().BeLessThan(Width(Option(before).GetProperty("meanKg")));
        Option(after).GetProperty("head").GetProperty("mean").GetDouble().Should().BeLessThan(Option(before).GetProperty("head").GetProperty("mean").GetDouble(), "this farm lost more than is shipped");
    }

    [Fact]
    public void The_batch_file_may_name_the_history_and_a_folder_may_be_the_prior()
    {
        Reconcile("--history", scratch.PathOf("history")).Exit.Should().Be(0);
        string named = Copy("Meadow 4", "\"history\": \"history\","), prior = Copy("Meadow 5", prior: "history"), twice = Copy("Meadow 6", "\"history\": \"history\",", prior: "history");

        Source(Plan(named), "losses").Should().StartWith("1 own batch");
        (Source(Plan(prior), "growth"), Source(Plan(prior), "losses")).Should().Be(("1 own batch of both sexes", "Survival of fast-growing birds outdoors"));
        Plan(twice).Errors.Should().Contain("names past batches twice: history, and a folder as prior; expected one of them");
        Plan(Copy("Meadow 3", "\"history\": \"history\",")).Output.Should().Contain("Survival of fast-growing birds outdoors", "nothing is learned from a batch for itself");
    }

    [Fact]
    public void Another_strain_learns_nothing()
    {
        Reconcile("--history", scratch.PathOf("history")).Exit.Should().Be(0);
        ConsoleRun other = Plan(Copy("Meadow 4", "\"strain\": \"Strain B\", \"history\": \"history\","));

        Source(other, "losses").Should().Be("Survival of fast-growing birds outdoors");
        other.Json.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()).Should().Contain("no-batch-of-this-kind");
    }

    [Fact]
    public void A_batch_is_learned_once()
    {
        string history = scratch.PathOf("history");
        Reconcile("--history", history).Exit.Should().Be(0);
        string before = File.ReadAllText(Path.Combine(history, "Meadow 3.csv"));
        ConsoleRun again = Reconcile("--history", history);

        (again.Exit, again.Output).Should().Be((2, ""));
        again.Errors.Should().Be("--history: \"Meadow 3\" is in the history already; expected another batch, or to be told to replace it\n");
        Reconcile("--history", history, "--replace").Exit.Should().Be(0);
        File.ReadAllText(Path.Combine(history, "Meadow 3.csv")).Should().Be(before);
        Reconcile("--replace").Errors.Should().Be("--replace: says what to do in a history; expected --history too\n");
    }

    [Fact]
    public void A_chart_shows_what_lay_where()
    {
        string chart = scratch.PathOf("differences.svg");
        Reconcile("--chart", chart).Exit.Should().Be(0);

        XElement root = XDocument.Load(chart).Root!;
        root.Name.LocalName.Should().Be("svg");
        root.ToString().Should().Contain("mean live weight, full-fed");
    }

    [Fact]
    public void Everything_wrong_is_told_in_one_pass_and_nothing_is_written()
    {
        string batch = scratch.Write("batch.json", "{ \"birds\": \"many\" }"), sheet = scratch.Write("plant.csv", "line,count\npassed,x\n"), history = scratch.PathOf("history");
        ConsoleRun run = ConsoleRun.Of("reconcile", batch, sheet, "--history", history, "--draws", "3");

        (run.Exit, run.Output).Should().Be((2, ""));
        run.ErrorLines.Should().Contain(line => line.StartsWith("batch.json:1:")).And.Contain(line => line.StartsWith("plant.csv: killed is not stated"))
            .And.Contain(line => line.StartsWith("plant.csv:2:8: count")).And.Contain(line => line.StartsWith("--draws:"));
        Directory.Exists(history).Should().BeFalse();
    }

    [Fact]
    public void A_sheet_of_another_batch_is_refused()
    {
        string sheet = scratch.Write("plant.csv", "# killed: 2027-06-08\nline,count\ndelivered,400\n");
        ConsoleRun run = ConsoleRun.Of("reconcile", Repository.PathOf(Batch), sheet, "--history", scratch.PathOf("history"));

        (run.Exit, run.Errors).Should().Be((2, "plant.csv: does not fit the batch file: 400 birds were delivered; expected at most the 300 placed.\n"));
        scratch.Names().Should().Equal("plant.csv");
    }

    private static ConsoleRun Reconcile(params string[] more) => ConsoleRun.Of(["reconcile", Repository.PathOf(Batch), Repository.PathOf(Sheet), "--draws", "300", .. more]);

    private static ConsoleRun Plan(string file, params string[] more) => ConsoleRun.Of(["plan", file, "--draws", "300", "--json", .. more]);

    private static string Source(ConsoleRun plan, string part) =>
        plan.Json.GetProperty("origins").EnumerateArray().Single(origin => origin.GetProperty("part").GetString() == part).GetProperty("source").GetString()!;

    private static JsonElement Figure(JsonElement answer, string code) => answer.GetProperty("differences").EnumerateArray().Single(figure => figure.GetProperty("figure").GetString() == code);

    private static double Width(JsonElement range) => range.GetProperty("high").GetDouble() - range.GetProperty("low").GetDouble();

    /// <summary>The demo batch in the test's folder, a season later, with nothing weighed or fed yet.</summary>
    private string Copy(string name, string more = "", string? prior = null)
    {
        foreach (string file in (string[])["meadow-weather.csv", "meadow-prices.csv", "meadow-order.csv"])
        {
            File.Copy(Repository.PathOf("samples/Poultry.Growth.Calculators/data/" + file), scratch.PathOf(file), overwrite: true);
        }

        string text = File.ReadAllText(Repository.PathOf(Batch));
        text = text.Replace("\"name\": \"Meadow 3\",", "\"name\": \"" + name + "\", " + more, StringComparison.Ordinal)
            .Replace("\"weighIns\": \"meadow-batch.csv\", \"prior\": \"fast-outdoor\"", "\"prior\": \"" + (prior ?? "fast-outdoor") + "\"", StringComparison.Ordinal)
            .Replace("    \"record\": \"meadow-feed.csv\",\n", "", StringComparison.Ordinal);
        return scratch.Write(name + ".json", text);
    }
}
