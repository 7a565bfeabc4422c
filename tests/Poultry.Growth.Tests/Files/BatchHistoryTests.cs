using Poultry.Growth.Files;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Files;

/// <summary>What a batch file learns from the farm's past: by the field history, by a folder or a file as prior, or not at all where it states something itself.</summary>
public sealed class BatchHistoryTests : IDisposable
{
    private const string Bird = "\"name\": \"next\", \"placed\": \"2027-07-01\", \"ageAtPlacement\": \"1d\", \"birds\": 100, \"temperatures\": { \"house\": \"standard\" }, \"strain\": \"A\"";

    private const string Past = """
        # strain: A
        # age_at_placement_d: 1
        # placed_birds: 300
        # lost_birds: 75
        # age_at_killing: 56d
        # live_weight: 560kg
        # off_feed: 10h
        # carcass_weight: 381kg
        age_d,mean_weight_g,birds
        28,900,20
        49,2000,20

        """;

    private readonly Scratch scratch = new();

    public BatchHistoryTests()
    {
        Directory.CreateDirectory(scratch.PathOf("past"));
        scratch.Write(Path.Combine("past", "spring.csv"), Past);
        scratch.Write("prices.csv", "piece,price,sells_likely\nwhole,9/kg,90\n");
    }

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Growth_losses_and_dressing_are_learned()
    {
        BatchFileReading reading = Read("\"history\": \"past\", \"plant\": { \"dates\": [{ \"date\": \"2027-08-26\" }] }, \"selling\": { \"packs\": \"prices.csv\" }");

        reading.Problems.Should().BeEmpty();
        reading.Farm!.Survival.LevelRatio.Should().BeGreaterThan(1.3, "a quarter was lost");
        reading.Flock!.HeadCount.Thereafter.Should().BeSameAs(reading.Farm.Survival.Survival);
        reading.Weights!.Prior!.Fallback.Should().NotBeNull("what is shipped stays behind what was learned");
        reading.StatedPrior!.Fallback.Should().BeNull();
        reading.Harvest!.Plant.Dressing.Ratio.Likely.Percent.Should().BeInRange(68.03, 71, "between the farm's 68 % and the book's 72.5 %");
        reading.Harvest.StatedDressing.Name.Should().Be("planning-fast");
        reading.Plan!.Origins.Select(origin => origin.Part).Should().Equal("growth", "losses", "feed", "dressing", "dead tenders");
        reading.Plan.Origins[1].ToString().Should().StartWith("losses: 1 own batch: ");
    }

    [Fact]
    public void Own_dressing_from_which_nothing_follows_is_told()
    {
        scratch.Write(Path.Combine("past", "spring.csv"), Past.Replace("381kg", "230kg", StringComparison.Ordinal));
        scratch.Write(Path.Combine("past", "autumn.csv"), Past.Replace("381kg", "526kg", StringComparison.Ordinal));

        Read("\"history\": \"past\", \"plant\": { \"dates\": [{ \"date\": \"2027-08-26\" }] }, \"selling\": { \"packs\": \"prices.csv\" }").Problems.Should().ContainSingle()
            .Which.ToString().Should().Contain("plant makes no sense: The own batches lie 19 points apart, so that the next could dress to anything; expected live and carcass weight of the same birds in each");
    }

    [Fact]
    public void What_the_file_states_stays_as_stated()
    {
        BatchFileReading reading = Read("\"history\": \"past\", \"lossByWeek\": [\"1%\"], \"plant\": { \"dressing\": \"70%\", \"dates\": [{ \"date\": \"2027-08-26\" }] }, \"selling\": { \"packs\": \"prices.csv\" }");

        reading.Problems.Should().BeEmpty();
        reading.Flock!.HeadCount.Thereafter.Should().NotBeSameAs(reading.Farm!.Survival.Survival);
        reading.Harvest!.Plant.Dressing.Ratio.Likely.Percent.Should().BeApproximately(70, 1e-9);
        reading.Plan!.Origins[1].Source.Should().Be("Survival by the farm's own weekly losses");
    }

    [Fact]
    public void A_history_given_goes_before_the_one_named()
    {
        string file = scratch.Write("batch.json", "{ " + Bird + ", \"history\": \"none\" }");

        BatchFile.Read(file).Problems.Should().ContainSingle().Which.Fault.Should().Be("does not exist");
        BatchFile.Read(file, scratch.PathOf("past")).Farm!.Batches.Should().ContainSingle();
    }

    [Fact]
    public void A_folder_or_a_standard_may_be_the_prior()
    {
        scratch.Write("standard.csv", "# name: T\n# year: 2020\n# source: S\nage_d,weight_g\n0,42\n7,180\n21,900\n35,2000\n49,3100\n63,4000\n");

        Read("\"weights\": { \"prior\": \"past\" }").Weights!.Prior!.Fallback.Should().NotBeNull();
        Read("\"weights\": { \"prior\": \"standard.csv\" }").Weights!.Prior!.Name.Should().Contain("T");
        Read("\"weights\": { \"prior\": \"past\" }").Farm.Should().BeNull("a prior teaches growth alone");
    }

    [Theory]
    [InlineData("\"weights\": { \"prior\": \"nothing\" }", "batch.json:1:* weights.prior \"nothing\" is no prior, and there is no such file or folder; expected fast-outdoor, fast-objective, slow, or the name of *")]
    [InlineData("\"weights\": { \"prior\": \"short.csv\" }", "batch.json:1:* weights.prior \"short.csv\" makes no prior: Fewer than four rows from 7 d on; expected four or more, for a curve has three parameters")]
    [InlineData("\"history\": \"past\", \"weights\": { \"prior\": \"past\" }", "batch.json:1:1: file names past batches twice: history, and a folder as prior; expected one of them: history teaches growth too")]
    [InlineData("\"history\": 5", "batch.json:1:* history \"5\" is a bare number; expected the name of a folder with the farm's finished batches beside this file")]
    [InlineData("\"history\": \"prices.csv\"", "*prices.csv: folder is a file; expected a folder with one weigh-in file (.csv) a batch")]
    public void What_cannot_be_is_refused(string more, string message)
    {
        scratch.Write("short.csv", "# name: T\n# year: 2020\n# source: S\nage_d,weight_g\n0,42\n7,180\n21,900\n35,2000\n");

        Read(more).Problems.Should().Contain(problem => Matches(problem.ToString(), message));
    }

    [Fact]
    public void Weigh_ins_of_another_strain_are_refused()
    {
        string file = scratch.Write("batch.json", "{ " + Bird.Replace("\"A\"", "\"B\"", StringComparison.Ordinal) + ", \"weights\": { \"weighIns\": \"past/spring.csv\" } }");

        BatchFile.Read(file).Problems.Should().ContainSingle().Which.ToString().Should().Be("batch.json:1:1: file is of another strain or system than its weigh-ins say; expected A, both sexes");
    }

    [Fact]
    public void Culled_birds_are_counted_apart()
    {
        scratch.Write("deaths.csv", "age_d,dead_birds,culled_birds\n3,2,\n9,1,2\n");
        IReadOnlyList<Deaths> deaths = Read("\"deaths\": \"deaths.csv\"").Flock!.HeadCount.Deaths;

        deaths.Select(day => (day.Birds, day.Culled)).Should().Equal((2, 0), (3, 2));
        FluentActions.Invoking(() => Deaths.Of(Age.FromDays(3), 2, culled: 3)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static bool Matches(string text, string pattern) => System.Text.RegularExpressions.Regex.IsMatch(
        text, "^" + System.Text.RegularExpressions.Regex.Escape(pattern).Replace("\\*", ".*", StringComparison.Ordinal) + "$", System.Text.RegularExpressions.RegexOptions.Singleline);

    private BatchFileReading Read(string more) => BatchFile.Read(scratch.Write("batch.json", "{ " + Bird + ", " + more + " }"));
}
