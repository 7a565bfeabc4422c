using System.Text.Json;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.ConsoleRuns.FitJson;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>history</c> prints, and what <c>project</c> makes of past batches and standards, is what the library says.</summary>
public sealed class HistoryCommandTests : IDisposable
{
    private const string Head = "age_d,mean_weight_g,birds,sd_g\n";
    private static readonly string Folder = Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-history");
    private static readonly BatchHistory History = BatchHistoryFolder.Read(Folder).History!;
    private static readonly LearnedPrior Learned = History.Learn(History.Kinds.Single(), GrowthPrior.FastGrowingOutdoor(Sex.Mixed));

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void The_document_holds_the_library_s_numbers()
    {
        JsonElement json = Json("history", Folder, "--level", "0.8");

        Text(json, "status").Should().Be("learned");
        json.GetProperty("kind").GetProperty("strain").GetString().Should().Be("Strain A");
        Number(json.GetProperty("prior"), "matureWeightKg").Should().Be(ConsoleRun.Known(Math.Exp(Learned.Prior.Means[0])));
        Number(json.GetProperty("prior"), "weighInErrorPercent").Should().Be(ConsoleRun.Known(100 * Learned.WeighInError));
        Number(json.GetProperty("prior"), "cvPercent").Should().Be(ConsoleRun.Known(100 * Learned.CoefficientOfVariation));
        Text(json.GetProperty("prior"), "wider").Should().Be("Fast-growing birds outdoors");
        json.GetProperty("batches").EnumerateArray().Select(batch => (Text(batch, "name"), Number(batch, "meanKgAt56Days"))).Should().Equal(
            Learned.Batches.Select(batch => ((string?)batch.Batch.Name, ConsoleRun.Known(batch.Curve.WeightAt(Age.FromDays(56)).Kilograms))));
        Number(json.GetProperty("betweenBatches"), "inflectionAgeDays").Should().Be(ConsoleRun.Known(Learned.BetweenBatches[2]));
        Number(json.GetProperty("betweenBatches").GetProperty("byAge")[2], "percent").Should().Be(ConsoleRun.Known(100 * Learned.BetweenBatchesAt(Age.FromDays(56))));
        Number(json.GetProperty("nextBatch")[2], "lowKg").Should().Be(ConsoleRun.Known(Projection.Of(Learned.Prior).MeanAt(Age.FromDays(56), 0.8).Interval.Low!.Value.Kilograms));
        Number(json.GetProperty("nextBatchShipped")[2], "meanKg").Should().Be(ConsoleRun.Known(Projection.Of(Learned.Shipped).MeanAt(Age.FromDays(56)).Value.Kilograms));
        json.GetProperty("sources").EnumerateArray().Select(source => Text(source, "key")).Should().StartWith("OwnBatches").And.OnlyHaveUniqueItems();
    }

    [Fact]
    public void A_paragraph_tells_what_the_past_says_and_how_it_differs()
    {
        ConsoleRun run = ConsoleRun.Of("history", Folder, "--units", "us", "--chart", scratch.PathOf("h.svg"));

        run.Exit.Should().Be(0);
        run.Output.Should().Contain("| 2024-autumn |         4 |    85 |     21 |   56 |        6.29 |    +2 |").And.Contain("\n5 batches stand behind this. By them the next batch weighs 6.20 lb at 56 d, ")
            .And.Contain("the farm's own past says 5 % less, in an interval ");
        File.ReadAllText(scratch.PathOf("h.svg")).Should().Contain("next batch by the own past, 90 % interval").And.Contain("Next batch at 56 d: 6.2");
    }

    [Fact]
    public void Several_kinds_are_learned_apart_and_listed_until_one_is_named()
    {
        scratch.Write("a.csv", "# strain: A\n" + Head + "21,650,20,60\n42,2000,20,180\n");
        scratch.Write("b.csv", "# strain: B\n# system: house\n" + Head + "21,600,20,60\n42,1800,20,180\n");
        scratch.Write("c.csv", "# sex: male\n" + Head + "21,700,20,60\n42,2200,20,180\n");
        string folder = scratch.PathOf("");

        ConsoleRun several = ConsoleRun.Of("history", folder);

        several.Exit.Should().Be(2);
        several.ErrorLines.Should().HaveCount(4);
        several.ErrorLines[0].Should().EndWith("holds batches of several kinds, which are learned apart; expected --strain, --system or --sex to name one of");
        several.ErrorLines[1..].Should().Equal(
            "  --strain \"A\" --system \"unstated\" --sex mixed (batches: 1)",
            "  --strain \"B\" --system \"house\" --sex mixed (batches: 1)",
            "  --strain \"unstated\" --system \"unstated\" --sex male (batches: 1)");
        Json("history", folder, "--strain", " b ").GetProperty("kind").GetProperty("system").GetString().Should().Be("house");
        Json("history", folder, "--sex", "male").GetProperty("kinds").GetArrayLength().Should().Be(3);
        Json("history", folder, "--strain", "unstated").GetProperty("kind").GetProperty("strain").ValueKind.Should().Be(JsonValueKind.Null);
        ConsoleRun.Of("history", folder, "--strain", "C").ErrorLines.Should().HaveCount(4).And.Contain(line => line.Contains("holds no batches of this kind"));
        Text(Json("project", "--prior", folder, "--sex", "male").GetProperty("prior"), "sex").Should().Be("male", "the batch is as its past ones");
        ConsoleRun.Of("project", "--prior", folder).Exit.Should().Be(2);
    }

    [Fact]
    public void Past_batches_that_teach_nothing_are_no_answer()
    {
        scratch.Write("a.csv", Head + "1,44,20,4\n");

        ConsoleRun run = ConsoleRun.Of("history", scratch.PathOf(""), "--chart", scratch.PathOf("h.svg"));

        run.Exit.Should().Be(1);
        run.Output.Should().Contain("No answer: ").And.Contain("there is no past batch of this kind to learn from").And.Contain("! 1 weigh-in before 7 d left out");
        scratch.Names().Should().Equal("a.csv");
    }

    [Fact]
    public void Problems_of_all_files_are_told_at_once()
    {
        scratch.Write("a.csv", Head + "21,x,20,60\n");
        scratch.Write("b.csv", "age_d\n");

        foreach (string[] command in new string[][] { ["history", scratch.PathOf("")], ["project", ConsoleRun.Demo, "--prior", scratch.PathOf("")] })
        {
            ConsoleRun run = ConsoleRun.Of(command);
            run.Exit.Should().Be(2);
            run.ErrorLines.Should().HaveCountGreaterThan(1).And.Contain(line => line.StartsWith("a.csv:2:4: ", StringComparison.Ordinal)).And.Contain(line => line.StartsWith("b.csv:1:", StringComparison.Ordinal));
        }

        ConsoleRun.Of("history", scratch.PathOf("none")).ErrorLines.Should().ContainSingle().Which.Should().Contain("does not exist");
    }

    [Fact]
    public void A_projection_takes_past_batches_as_its_prior()
    {
        Projection expected = Projection.Of(WeighInFile.Read(ConsoleRun.Demo).Series!, Learned.Prior);

        JsonElement json = Json("project", ConsoleRun.Demo, "--prior", Folder, "--at", "56d");

        Number(json.GetProperty("projections")[0], "lowKg").Should().Be(ConsoleRun.Known(expected.MeanAt(Age.FromDays(56)).Interval.Low!.Value.Kilograms));
        Text(json.GetProperty("prior"), "id").Should().Be("prior-learned");
        json.GetProperty("families").EnumerateArray().Take(2).Select(family => Text(family, "prior")).Should().Equal(Learned.Prior.Name, Learned.Shipped.Name);
        Text(Json("project", "--prior", Folder, "--wider", "slow").GetProperty("prior"), "wider").Should().Be("Slower-growing birds");
    }

    [Fact]
    public void A_projection_takes_a_standard_as_its_prior()
    {
        GrowthPrior expected = GrowthPrior.FromTable(StandardFile.Read(ConsoleRun.Standard).Standard!, GrowthPrior.FastGrowingObjective(Sex.Female));

        JsonElement json = Json("project", "--prior", ConsoleRun.Standard, "--wider", "fast-objective", "--sex", "female", "--at", "56d");

        Number(json.GetProperty("projections")[0], "highKg").Should().Be(ConsoleRun.Known(Projection.Of(expected).MeanAt(Age.FromDays(56)).Interval.High!.Value.Kilograms));
        Codes(json).Should().Contain("standard-is-target");
    }

    [Fact]
    public void A_prior_that_is_none_is_refused_with_what_could_be_one()
    {
        string straight = scratch.Write("s.csv", "# name: Straight\n# year: 2020\n# source: nobody\nage_d,weight_g\n7,20\n14,40\n21,80\n28,160\n35,320\n42,640\n");

        ConsoleRun.Of("project", "--prior", "nix", "--strain", "A").ErrorLines.Should().BeEquivalentTo(
            "--strain: chooses among past batches; expected --prior FOLDER too",
            "--prior: \"nix\" is no prior and there is no such file or folder; expected fast-outdoor, fast-objective, slow, a standard (CSV) or a folder of past batches");
        ConsoleRun.Of("project", "--wider", "slow").ErrorLines.Should().ContainSingle().Which.Should().StartWith("--wider: stands behind past batches or a standard");
        ConsoleRun.Of("project", "--prior", straight).ErrorLines.Should().ContainSingle().Which.Should().StartWith("--prior: s.csv: No Gompertz curve follows the rows of Straight");
    }

    private static JsonElement Json(params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of([.. words, "--json"]);
        run.Exit.Should().Be(0, run.Errors);
        return run.Json;
    }
}
