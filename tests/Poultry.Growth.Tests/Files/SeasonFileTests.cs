using Poultry.Growth.Files;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Files;

/// <summary>Season files: what they say, and every way in which they can be wrong, with its place.</summary>
public sealed class SeasonFileTests : IDisposable
{
    private readonly Scratch scratch = new();

    public SeasonFileTests()
    {
        BatchTemplates.Write(scratch.PathOf("farm"), TemplateUnits.Metric);
        scratch.Write("farm/weigh-ins.csv", "date,mean_weight_g,birds\n2027-05-03,780,20\n2027-05-17,1900,20\n");
        scratch.Write("farm/deaths.csv", "date,dead_birds\n2027-04-20,30\n");
    }

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_batch_stands_as_its_file_says_with_its_diaries_and_on_other_days_without_them()
    {
        SeasonPlan plan = Read("""{ "batches": [ { "batch": "batch.json" }, { "batch": "batch.json", "name": "next", "outside": "20C", "placed": ["2027-04-19", "2027-04-12"] } ] }""").Value!;

        BatchPlan own = plan.Candidates[0].Starts.Single(), other = plan.Candidates[1].Starts[0];
        own.Growth.WeighIns!.Count.Should().Be(2);
        own.Birds.Deaths.Should().ContainSingle();
        own.Dates.Should().HaveCount(3).And.Contain(date => date.IsBooked);
        other.Placed.Should().Be(new DateOnly(2027, 4, 12), "days are put in order");
        other.Growth.WeighIns.Should().BeNull();
        other.Birds.Deaths.Should().BeEmpty();
        other.Birds.Placed.Should().Be(300);
        other.FeedRecord.Should().BeNull();
        other.Feeding.Temperatures.At(Age.FromDays(30)).DegreesCelsius.Should().Be(20);
        own.Feeding.Temperatures.At(Age.FromDays(30)).DegreesCelsius.Should().Be(14);
        plan.Candidates[1].Name.Should().Be("next");
        plan.Limits.HeadByDay.Should().Contain(new DateOnly(2027, 6, 15), 280, "where the plant has no section, the batch files say what it takes");
    }

    [Fact]
    public void The_plants_days_are_held_against_the_ages_of_the_birds()
    {
        SeasonPlan plan = Read("""
            {
              "name": "A", "limits": { "brooderPlaces": 400, "shelters": 6, "restDays": 7, "ground": "2ac", "labourADay": "3h" },
              "plant": { "dates": [ { "date": "2027-06-08", "mostBirds": 200 }, { "date": "2027-06-15" }, { "date": "2027-07-20" } ], "youngest": "50d", "oldest": "66d" },
              "batches": [ { "batch": "batch.json", "placed": { "from": "2027-04-12", "to": "2027-05-24", "everyDays": 14 }, "shelters": 3, "ground": "0.5ac", "promised": "yes" } ],
            }
            """).Value!;

        SeasonCandidate batch = plan.Candidates.Single();
        batch.Starts.Select(start => (start.Placed.DayOfYear, start.Dates.Count)).Should().Equal((102, 2), (116, 1), (144, 1));
        batch.Starts[0].Dates[0].IsBooked.Should().BeFalse("what is booked in the file is booked for its own batch");
        batch.Starts[0].Dates[0].Terms.MostBirds.Should().Be(200);
        batch.Starts[0].Dates[0].Terms.PerBird.Amount.Should().Be(5.25);
        batch.Starts[0].Dates[1].Terms.MostBirds.Should().Be(280, "the batch file says so");
        batch.IsPromised.Should().BeTrue();
        batch.Ground.Acres.Should().BeApproximately(0.5, 1e-9);
        plan.Limits.HeadByDay.Should().Equal(new Dictionary<DateOnly, int> { [new(2027, 6, 8)] = 200 });
        (plan.Limits.BrooderPlaces, plan.Limits.Shelters, plan.Limits.ShelterRest.Days, plan.Limits.LabourADay!.Value.Hours).Should().Be((400, 6, 7, 3));
    }

    [Fact]
    public void Feed_must_last_to_the_plants_days_and_not_only_to_those_of_the_batch_file()
    {
        scratch.Write("farm/short.json", BatchTemplates.Text("batch.json", TemplateUnits.Metric).Replace("\"from\": \"21d\", \"energy\"", "\"from\": \"21d\", \"to\": \"67d\", \"energy\"", StringComparison.Ordinal));

        Read("{ \"batches\": [ { \"batch\": \"short.json\" } ] }").Problems.ShouldBeNone();
        Read("{ \"plant\": { \"dates\": [ { \"date\": \"2027-06-20\" } ] }, \"batches\": [ { \"batch\": \"short.json\" } ] }").Problems.Should().ContainSingle().Which.ToString().Should().Match(
            "season.json:1:*: batches[0].batch \"short.json\" says too little for the plant's days; expected feed phases from 1 d to 71 d, a day beyond the last one offered: they go from 0 d to 67 d");
    }

    [Theory]
    [InlineData("", "season.json:1:1: file is empty; expected one section in { }")]
    [InlineData("{}", "season.json:1:1: batches is missing; expected a list of batches, each with the name of its batch file, as in [{ \"batch\": \"batch.json\" }]")]
    [InlineData("{ \"birds\": 300 }", "season.json:1:3: birds belongs to a batch file; expected a season file that names it under batches; a batch file is for plan")]
    [InlineData("{ \"batches\": [] }", "season.json:1:14: batches is empty; expected a list of batches, each with the name of its batch file, as in [{ \"batch\": \"batch.json\" }]")]
    [InlineData("{ \"batches\": [ 3 ] }", "season.json:1:16: batches[0] \"3\" is a bare number; expected a section in { }")]
    [InlineData("{ \"batches\": [ {} ] }", "season.json:1:16: batches[0].batch is missing; expected the name of a batch file (.json) beside this one")]
    [InlineData("{ \"batches\": [ { \"batch\": \"none.json\" } ] }", "season.json:1:27: batches[0].batch \"none.json\" does not exist; expected the name of a batch file (.json) beside this one")]
    [InlineData("{ \"batches\": [ { \"batch\": \"batch.json\", \"shelter\": 3 } ] }", "season.json:1:41: batches[0].shelter is unknown (did you mean shelters?); expected batch, name, placed, outside, shelters, ground, promised")]
    [InlineData("{ \"batches\": [ { \"batch\": \"batch.json\", \"placed\": \"2027-04-12\" } ] }", "season.json:1:51: batches[0].placed \"2027-04-12\" is text; expected the days*")]
    [InlineData("{ \"batches\": [ { \"batch\": \"batch.json\", \"placed\": [\"12 April\"] } ] }", "season.json:1:52: batches[0].placed[0] \"12 April\" is not a date; expected year, month and day, as in 2027-04-12")]
    [InlineData("{ \"batches\": [ { \"batch\": \"batch.json\", \"placed\": { \"from\": \"2027-05-01\", \"to\": \"2027-04-01\" } } ] }", "season.json:1:51: batches[0].placed ends before it begins; expected to on or after from*")]
    [InlineData("{ \"batches\": [ { \"batch\": \"batch.json\", \"placed\": { \"from\": \"2027-01-01\", \"to\": \"2027-12-31\" } } ] }", "season.json:1:51: batches[0].placed holds 53 days; expected 20 at most: the batch is drawn anew for each")]
    [InlineData("{ \"batches\": [ { \"batch\": \"batch.json\", \"placed\": [\"2028-04-12\"] } ] }", "season.json:1:27: batches[0].batch \"batch.json\" has no day of the plant while its birds are of an age to be killed; expected days*")]
    [InlineData("{ \"limits\": { \"ground\": \"3\", \"labourADay\": \"300h\" }, \"batches\": [ { \"batch\": \"batch.json\" } ] }", "season.json:1:25: limits.ground \"3\" has no unit*\nseason.json:1:44: limits.labourADay \"300h\" is out of range; expected up to 240h: all hands together")]
    [InlineData("{ \"plant\": { \"dates\": [ { \"date\": \"2027-06-08\" }, { \"date\": \"2027-06-08\" } ], \"youngest\": \"70d\", \"oldest\": \"50d\" }, \"batches\": [ { \"batch\": \"batch.json\" } ] }", "season.json:1:12: plant takes no bird: youngest is older than oldest; expected youngest up to oldest\nseason.json:1:51: plant.dates[1] names a day a second time; expected each day once*")]
    public void Each_fault_has_its_place(string text, string problems) =>
        string.Join('\n', Read(text).Problems).Should().Match(problems.Contains('*', StringComparison.Ordinal) ? problems.TrimEnd('*') + "*" : problems);

    [Fact]
    public void The_problems_of_a_batch_file_are_told_once_however_often_it_is_named()
    {
        scratch.Write("farm/batch.json", BatchTemplates.Text("batch.json", TemplateUnits.Metric).Replace("\"birds\": 300", "\"birds\": 0", StringComparison.Ordinal));
        scratch.Write("farm/poor.json", "{ \"ageAtPlacement\": \"1d\", \"birds\": 100, \"temperatures\": { \"house\": \"standard\" } }");

        Read("""{ "batches": [ { "batch": "batch.json" }, { "batch": "batch.json" }, { "batch": "poor.json" } ] }""").Problems.Select(problem => problem.ToString()).Should().Equal(
            "season.json:1:81: batches[2].batch \"poor.json\" says too little for a plan; expected sections plant and selling: days offered, dressing, packs and prices",
            "batch.json:7:12: birds \"0\" is no whole number in range; expected a whole number without quotes, 1 to 1000000");
    }

    [Fact]
    public void Nothing_in_a_file_makes_it_throw()
    {
        string[] pieces = ["{", "}", "[", "]", "\"batches\":", "{ \"batch\": \"batch.json\" }", "{ \"batch\": 3, \"placed\": {} }", "\"plant\": { \"dates\": [ {} ] }", ",", "1e999", "null", "\"limits\": { \"shelters\": -1 }", "// x\n", "/*"];
        Random random = new(11);
        for (int i = 0; i < 200; i++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(1, 12)).Select(_ => pieces[random.Next(pieces.Length)]));
            FileReading<SeasonPlan> reading = Read(i % 2 == 0 ? text : "{ \"batches\": [ " + text + " ] }");
            (reading.Problems.Count > 0).Should().Be(reading.Value is null, text);
        }

        SeasonFile.Read(scratch.PathOf("none.json")).Problems.Should().ContainSingle(problem => problem.Fault == "does not exist");
    }

    private FileReading<SeasonPlan> Read(string text) => SeasonFile.Read(scratch.Write("farm/season.json", text));
}
