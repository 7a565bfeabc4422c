using System.Text.Json;
using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.ConsoleRuns.FitJson;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>project</c> prints is what the library says, with weigh-ins or without.</summary>
public sealed class ProjectCommandTests : IDisposable
{
    private static readonly Projection Demo = Projection.Of(WeighInFile.Read(ConsoleRun.Demo).Series!, GrowthPrior.FastGrowingOutdoor(Sex.Mixed));

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Weights_and_target_are_the_library_s()
    {
        JsonElement json = Project(ConsoleRun.Demo, "--target", "2.6kg", "--level", "0.8");

        json.GetProperty("projections").EnumerateArray().Select(at => Number(at, "ageDays")).Should().Equal(42, 49, 56, 63);
        foreach (JsonElement at in json.GetProperty("projections").EnumerateArray())
        {
            Age age = Age.FromDays(Number(at, "ageDays")!.Value);
            (Estimate<Mass> mean, Estimate<Mass> bird) = (Demo.MeanAt(age, 0.8), Demo.BirdAt(age, 0.8));
            Number(at, "meanKg").Should().Be(ConsoleRun.Known(mean.Value.Kilograms));
            Number(at, "lowKg").Should().Be(ConsoleRun.Known(mean.Interval.Low!.Value.Kilograms));
            Number(at, "highKg").Should().Be(ConsoleRun.Known(mean.Interval.High!.Value.Kilograms));
            Number(at, "birdLowKg").Should().Be(ConsoleRun.Known(bird.Interval.Low!.Value.Kilograms));
            Number(at, "birdHighKg").Should().Be(ConsoleRun.Known(bird.Interval.High!.Value.Kilograms));
            Codes(at).Should().BeEmpty();
        }

        Estimate<Age> reached = Demo.AgeAt(Mass.FromKilograms(2.6), 0.8)!;
        JsonElement target = json.GetProperty("target");
        Number(target, "ageDays").Should().Be(ConsoleRun.Known(reached.Value.Days));
        Number(target, "lowDays").Should().Be(ConsoleRun.Known(reached.Interval.Low!.Value.Days));
        Number(target, "highDays").Should().Be(ConsoleRun.Known(reached.Interval.High?.Days));
    }

    [Fact]
    public void Chance_shares_and_bands_are_the_library_s()
    {
        (Age booked, Mass target) = (Age.FromDays(56), Mass.FromKilograms(2.6));

        JsonElement json = Project(ConsoleRun.Demo, "--at", "49d,56d", "--target", "2.6kg", "--bands", "2.6kg,1.8kg", "--bands", "2.6kg");

        Number(json, "bookedAgeDays").Should().Be(56);
        Number(json, "chanceAtTarget").Should().Be(ConsoleRun.Known(Demo.ChanceMeanReaches(target, booked).Fraction));
        Number(json, "shareAtTarget").Should().Be(ConsoleRun.Known(Demo.ShareAbove(target, booked).Fraction));
        Number(json.GetProperty("flock")[1], "uniformityPercent").Should().Be(ConsoleRun.Known(Demo.UniformityAt(booked).Percent));
        Number(json.GetProperty("flock")[0], "chanceAtTarget").Should().Be(ConsoleRun.Known(Demo.ChanceMeanReaches(target, Age.FromDays(49)).Fraction));
        JsonElement[] bands = [.. json.GetProperty("bands").EnumerateArray()];
        bands.Select(band => (Number(band, "ageDays"), Number(band, "fromKg"), Number(band, "toKg"))).Should().Equal(
            (49, null, 1.8), (49, 1.8, 2.6), (49, 2.6, null), (56, null, 1.8), (56, 1.8, 2.6), (56, 2.6, null));
        bands.TakeLast(3).Select(band => Number(band, "sharePercent")).Should().Equal(
            Demo.ShareInBands(booked, Mass.FromKilograms(1.8), target).Select(band => ConsoleRun.Known(band.Share.Percent)));
        Project(ConsoleRun.Demo).GetProperty("chanceAtTarget").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public void A_weigh_in_to_come_is_told_by_its_worth()
    {
        WeighInWorth worth = Demo.WeighInValue(Age.FromDays(49), 20, Age.FromDays(56));

        JsonElement next = Project(ConsoleRun.Demo, "--at", "56d", "--next-weigh-in", "20@49d,1@7wk").GetProperty("nextWeighIn");

        next.EnumerateArray().Select(row => (Number(row, "ageDays"), Number(row, "birds"))).Should().Equal((49, 20), (49, 1));
        Number(next[0], "widthPercent").Should().Be(ConsoleRun.Known(100 * worth.WidthThenFraction));
        Number(next[0], "widthNowPercent").Should().Be(ConsoleRun.Known(100 * worth.WidthNowFraction));
        Number(next[0], "meanKg").Should().Be(ConsoleRun.Known(Demo.NextWeighInAt(Age.FromDays(49), 20).Value.Kilograms));
    }

    [Fact]
    public void Without_a_file_the_prior_answers_and_says_so()
    {
        Projection expected = Projection.Of(GrowthPrior.FastGrowingOutdoor(Sex.Mixed));

        JsonElement json = Project("--placed", "2027-04-12", "--age-at-placement", "1d", "--on", "2027-06-07");
        ConsoleRun text = ConsoleRun.Of("project");

        json.GetProperty("file").ValueKind.Should().Be(JsonValueKind.Null);
        Number(json.GetProperty("projections")[0], "ageDays").Should().Be(57);
        Text(json.GetProperty("projections")[0], "date").Should().Be("2027-06-07");
        Number(json.GetProperty("projections")[0], "meanKg").Should().Be(ConsoleRun.Known(expected.MeanAt(Age.FromDays(57)).Value.Kilograms));
        Codes(json).Should().Contain("no-weigh-ins");
        text.Exit.Should().Be(0);
        text.Output.Should().StartWith("Projection by the prior alone: no bird of the batch is weighed yet\nPrior: Fast-growing birds outdoors, mixed: about 3.0 kg at 56 d\n")
            .And.Contain("! This prior rests on two end weights").And.Contain("|    42 |    - |");
    }

    [Theory]
    [InlineData("fast-outdoor", "male", "prior-fast-outdoor")]
    [InlineData("fast-objective", "female", "prior-fast-objective")]
    [InlineData("slow", "mixed", "prior-slow")]
    public void Prior_and_sex_can_be_asked_for(string name, string sex, string id)
    {
        JsonElement json = Project(ConsoleRun.Demo, "--prior", name, "--sex", sex);

        (Text(json.GetProperty("prior"), "id"), Text(json.GetProperty("prior"), "sex")).Should().Be((id, sex));
        json.GetProperty("sources").EnumerateArray().Select(source => Text(source, "key")).Should().HaveCountGreaterThan(2).And.OnlyHaveUniqueItems();
        json.GetProperty("families").EnumerateArray().Sum(family => Number(family, "afterPercent")).Should().BeApproximately(100, 1e-6);
    }

    [Fact]
    public void Weigh_ins_unlike_the_prior_are_told()
    {
        string file = scratch.Write("f.csv", "age_d,mean_weight_g,birds,sd_g\n14,80,50,8\n21,140,50,14\n28,215,50,20\n35,300,50,30\n");

        JsonElement json = Project(file, "--prior", "fast-objective");

        Text(json.GetProperty("disagreement"), "code").Should().Be("prior-and-data-disagree");
        Project(ConsoleRun.Demo).GetProperty("disagreement").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public void Ages_beyond_the_tested_ones_carry_a_star_and_their_caution()
    {
        Codes(Project(ConsoleRun.Demo, "--at", "70d").GetProperty("projections")[0]).Should().Equal("outside-tested-ages");
        ConsoleRun.Of("project", ConsoleRun.Demo, "--at", "70d,77d").Output.Should().Contain("|  * 70 |").And.Contain("\n* The method was measured").And.Contain("at 77 d its interval");
    }

    [Fact]
    public void Birds_of_the_other_sex_are_refused()
    {
        string file = scratch.Write("f.csv", "age_d,mean_weight_g,birds,sex\n28,1200,20,female\n");

        ConsoleRun.Of("project", file, "--sex", "male").Should().Be(
            new ConsoleRun(2, "", "--sex: the file holds weigh-ins of the other sex; expected mixed, or a file without them\n"));
    }

    [Theory]
    [InlineData("--prior", "fast", "--prior: \"fast\" is no prior and there is no such file or folder; expected fast-outdoor, fast-objective, slow, a standard (CSV) or a folder of past batches")]
    [InlineData("--sex", "hen", "--sex: \"hen\" is unknown; expected mixed, male, female")]
    [InlineData("--target", "2.6", "--target: \"2.6\" has no unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("--at", "1001d", "--at or --on: an age is out of range; expected ages up to 1000 d")]
    [InlineData("--bands", "1.8kg,2.2", "--bands: \"2.2\" has no unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("--bands", "0kg", "--bands: \"0kg\" is out of range; expected a weight above 0")]
    [InlineData("--next-weigh-in", "49d", "--next-weigh-in: \"49d\" is no weigh-in; expected a number of birds, @ and their age, as in 30@35d")]
    [InlineData("--next-weigh-in", "0@49d", "--next-weigh-in: \"0@49d\" is no weigh-in; expected a number of birds, @ and their age, as in 30@35d")]
    [InlineData("--next-weigh-in", "20@49", "--next-weigh-in: \"49\" has no unit; expected an age with d or wk, as in 42d")]
    [InlineData("--next-weigh-in", "20@5d", "--next-weigh-in: an age is out of range; expected 7 d to 1000 d")]
    [InlineData("--on", "2027-06-07", "--on: needs the day the chicks were placed and their age that day; expected --placed and --age-at-placement too")]
    [InlineData("--where", "pen=2", "--where: says how to read a file; expected a FILE too")]
    public void An_option_that_cannot_be_read_is_told(string option, string word, string message) =>
        ConsoleRun.Of("project", option, word).Should().Be(new ConsoleRun(2, "", message + "\n"));

    private static JsonElement Project(params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of(["project", "--json", .. words]);
        run.Errors.Should().BeEmpty();
        run.Exit.Should().Be(0);
        return run.Json;
    }
}
