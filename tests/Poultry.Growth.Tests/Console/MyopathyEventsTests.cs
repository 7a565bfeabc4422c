using System.Text.Json;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.ConsoleRuns.MyopathyJson;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>myopathy events</c> and <c>date</c> print is what the library says, and what they refuse.</summary>
public sealed class MyopathyEventsTests : IDisposable
{
    private const string Log = "samples/Poultry.Growth.Calculators/data/disturbances.csv";

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Events_have_muscles_birds_and_what_shows()
    {
        EventPrevalence expected = EventRisk.MeatType.For(
            DisturbanceLog.Of(Disturbance.At(Age.FromDays(45), "dog", FlappingDose.Of(Probability.FromPercent(10), 20)), Disturbance.At(Age.FromDays(50), "storm")), Age.FromDays(56), Sex.Male);

        JsonElement json = Json("events", "--sex", "male", "--kill-age", "56d", "--event", "age=45d,cycles=20,share=10%,what=dog", "--event", "age=50d,what=storm");

        JsonElement[] rows = [.. json.GetProperty("events").EnumerateArray()];
        Number(rows[0], "muscleProbability").Should().Be(Known(expected.Events[0].Muscles!.Value.Share.Fraction));
        Number(rows[0], "birdProbability").Should().Be(Known(expected.Events[0].Birds!.Value.Share.Fraction));
        Number(rows[0], "visible").Should().Be(1);
        rows[1].GetProperty("muscleProbability").ValueKind.Should().Be(JsonValueKind.Null);
        Number(json, "affectedPercent").Should().Be(Known(expected.Affected!.Value.Percent));
        Number(json, "affectedLowPercent").Should().Be(Known(expected.Affected.Interval.Low!.Value.Percent));
    }

    [Fact]
    public void A_log_without_doses_gives_dates_and_no_rate()
    {
        string file = scratch.Write("log.csv", "age_d,what\n45,storm\n50,dog\n");
        ConsoleRun run = ConsoleRun.Of("myopathy", "events", "--kill-age", "56d", "--log", file);

        run.Exit.Should().Be(0);
        run.Output.Should().Contain("No rate: nobody guessed").And.Contain("No disturbance has a dose: the log gives dates, no rate.");
    }

    [Fact]
    public void What_if_a_disturbance_had_not_happened_or_earlier()
    {
        string[] words = ["events", "--kill-age", "56d", "--log", Repository.PathOf(Log)];
        double? asItWas = Number(Json(words), "affectedPercent");

        Number(Json([.. words, "--without", "3"]), "affectedPercent").Should().BeLessThan(asItWas!.Value);
        Number(Json([.. words, "--move", "3=22d"]), "affectedPercent").Should().BeLessThan(asItWas.Value);
        Number(Json(words).GetProperty("events")[2], "withoutPercent").Should().Be(Number(Json([.. words, "--without", "3"]), "affectedPercent"));
    }

    [Fact]
    public void Dating_gives_windows_an_open_class_and_ranked_disturbances()
    {
        DateOnly hatched = new(2027, 4, 11), killed = new(2027, 6, 6);
        LesionDating flat = LesionDating.Of(LesionCounts.Of(red: 2, green: 5), killed, hatched, Sex.Mixed);
        string[] words = ["date", "--found", "I=2,green=5", "--killed", "2027-06-06", "--hatched", "2027-04-11", "--sex", "mixed"];

        JsonElement json = Json(words), logged = Json([.. words, "--log", Repository.PathOf(Log)]);

        json.GetProperty("byDay").EnumerateArray().Select(row => Number(row, "probability")).Should().Equal(flat.ByDay.Select(day => Known(day.Share.Fraction)));
        Number(json, "olderThan14Days").Should().Be(Known(flat.OlderThan14Days.Fraction));
        json.GetProperty("highDays").ValueKind.Should().Be(JsonValueKind.Null);
        json.GetProperty("events").GetArrayLength().Should().Be(0);
        logged.GetProperty("events").EnumerateArray().Select(row => Text(row, "what")).Should().StartWith(["dog at the fence", "shelter moved"]);
        Text(logged, "prior").Should().Be("log");
    }

    [Fact]
    public void What_no_day_can_have_made_is_no_answer()
    {
        ConsoleRun run = ConsoleRun.Of("myopathy", "date", "--found", "IV=2", "--killed", "2027-05-18", "--hatched", "2027-04-11", "--sex", "female", "--chart", scratch.PathOf("c.svg"));

        run.Exit.Should().Be(1);
        run.Output.Should().Contain("No answer: no day since the birds became susceptible can have made lesions of this look.");
        scratch.Names().Should().BeEmpty();
    }

    [Theory]
    [InlineData("cycles=3,share=5%", "has no age")]
    [InlineData("age=45d,cycles=3", "cycles and share stand together or not at all")]
    [InlineData("age=45d,cycles=3/2/1,share=5%", "is not in order")]
    [InlineData("age=45d,cycles=3,share=120%", "is out of range")]
    [InlineData("age=45d,seconds=30", "is not known")]
    [InlineData("age=45d,age=46d", "stands there twice")]
    [InlineData("age=60d", "lies after killing at 56 d")]
    public void A_disturbance_that_makes_no_sense_is_refused(string words, string fault)
    {
        ConsoleRun run = ConsoleRun.Of("myopathy", "events", "--kill-age", "56d", "--event", words);

        run.Exit.Should().Be(2);
        run.Errors.Should().Contain(fault);
    }

    [Fact]
    public void What_is_said_twice_is_refused_and_not_added_up()
    {
        string[] killed = ["--killed", "2027-06-06", "--hatched", "2027-04-11", "--sex", "mixed"];

        ConsoleRun.Of("myopathy", "events", "--kill-age", "56d", "--event", "age=45d", "--move", "1=40d", "--move", "1=41d").Should().Be(
            new ConsoleRun(2, "", "--move: \"1=41d\" moves a disturbance a second time; expected each once\n"));
        ConsoleRun.Of(["myopathy", "date", "--found", "I=2,red=5", .. killed]).Should().Be(
            new ConsoleRun(2, "", "--found: \"red=5\" counts a look a second time; expected each look once\n"));
    }

    [Fact]
    public void A_question_is_expected()
    {
        ConsoleRun.Of("myopathy").ErrorLines[0].Should().Be("myopathy: which question? Expected risk, events, date, inspect or learn.");
        ConsoleRun.Of("myopathy", "inspect").Errors.Should().Contain("nothing is asked");
        ConsoleRun.Of("myopathy", "events", "--kill-age", "56d").Errors.Should().Contain("nothing is given");
        ConsoleRun.Of("myopathy", "date", "--found", "V=1", "--killed", "2027-04-01", "--hatched", "2027-04-11", "--sex", "male").ErrorLines.Should().HaveCount(2);
    }
}
