using Poultry.Growth.Feeding;
using Poultry.Growth.Files;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

/// <summary>Batch files: what they say, and every way in which they can be wrong, with its place.</summary>
public sealed class BatchFileTests : IDisposable
{
    private const string Least = "\"ageAtPlacement\": \"1d\", \"birds\": 100, \"temperatures\": { \"house\": \"standard\" }";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("poultry-growth-batch-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void The_least_that_a_batch_must_say()
    {
        BatchFileReading reading = Read("{ " + Least + " }");

        reading.Problems.Should().BeEmpty();
        reading.Flock!.HeadCount.Placed.Should().Be(100);
        reading.Flock.Type.Should().Be(BirdType.Fast);
        reading.Weights!.Prior!.Name.Should().Contain("outdoors");
        reading.Feeding!.Plan.Should().BeSameAs(FeedingPlan.UsualDiets);
        reading.Feeding.Conditions.Model.Should().BeSameAs(EnergyModel.HeatProduction);
        reading.Feeding.Conditions.Temperatures.Should().BeSameAs(Temperatures.StandardHouse);
    }

    [Fact]
    public void A_choice_may_be_written_in_capitals()
    {
        BatchFileReading reading = Read("{ " + Least + ", \"type\": \"Slow\", \"weights\": { \"prior\": \"Fast-Outdoor\" } }");

        reading.Flock!.Type.Should().Be(BirdType.Slow);
        reading.Weights!.Prior!.Name.Should().Contain("outdoors");
    }

    [Fact]
    public void What_looks_wrong_is_told_of_past_batches_too()
    {
        const string Fellows = "age_d,weight_g\n14,350\n14,360\n14,340\n14,355\n14,345\n14,350\n14,360\n14,340\n14,355\n14,345\n";
        Directory.CreateDirectory(Path.Combine(folder.FullName, "past"));
        Write("past/old.csv", Fellows + "14,3500\n");
        Write("now.csv", Fellows + "14,3600\n");

        BatchWeights weights = Read("{ " + Least + ", \"weights\": { \"weighIns\": \"now.csv\", \"prior\": \"past\" } }").Weights!;

        weights.Suspicions.Select(suspicion => suspicion.File).Should().Contain("now.csv").And.Contain("old.csv");
    }

    [Fact]
    public void Everything_that_it_can_say()
    {
        Write("weather.csv", "date,mean_f\n2027-05-01,50\n2027-05-02,59\n");
        Write("feed.csv", "age_wk,delivered_kg,left_lb\n1,100,\n3,200,110.2311311\n4,50,\n");
        Write("table.csv", "# name: T\n# year: 2020\n# source: S\nage_d,weight_g\n0,42\n70,3500\n");
        BatchFileReading reading = Read("""
            {
              // both kinds of comment, /* and
              /* this */ "name": "A", "placed": "2027-04-12", "ageAtPlacement": "2d", "birds": 250, "sex": "female", "type": "fast", "hatchWeight": "1.5oz", "until": "8wk",
              "lossByWeek": ["2%", "1%"],
              "weights": { "table": "table.csv" },
              "temperatures": { "house": "standard", "moveOut": "3wk", "outside": "weather.csv" },
              "feed": {
                "phases": [
                  { "name": "one", "from": "0d", "to": "21d", "energy": "12.6MJ/kg", "protein": "21%", "price": "0.35/lb", "bag": "25kg", "deliveryDays": 3 },
                  { "name": "two", "from": "21d", "energy": "1400kcal/lb" },
                ],
                "waste": "4%", "ranging": "5%", "model": "sakomura-2005", "pasture": { "dryMatter": "11g/d", "energyShare": "3%" }, "record": "feed.csv",
              },
            }
            """);

        reading.Problems.Should().BeEmpty();
        (BatchFlock flock, BatchFeeding feeding) = (reading.Flock!, reading.Feeding!);
        flock.Should().Match<BatchFlock>(f => f.Name == "A" && f.Sex == Sex.Female && f.Until == Age.FromDays(56) && f.Placed == new DateOnly(2027, 4, 12));
        flock.HatchWeight.Ounces.Should().BeApproximately(1.5, 1e-9);
        flock.HeadCount.BirdsAt(Age.FromDays(9)).Should().BeInRange(244, 246);
        feeding.Plan.Phases.Select(phase => phase.Energy.MegajoulesPerKilogram).Should().Equal([12.6, 1400 / 0.45359237 * 0.004184], (ours, said) => Math.Abs(ours - said) < 1e-9);
        feeding.Plan.Phases[0].Price!.Value.AmountPerPound.Should().BeApproximately(0.35, 1e-12);
        feeding.Plan.Phases[0].DeliveryTime.Days.Should().Be(3);
        feeding.Conditions.Temperatures.At(Age.FromDays(21.5)).DegreesCelsius.Should().BeApproximately(10, 1e-9);
        feeding.Conditions.Temperatures.At(Age.FromDays(30)).DegreesCelsius.Should().BeApproximately(15, 1e-9);
        feeding.Conditions.Temperatures.MoveOut!.Value.Days.Should().Be(21);
        feeding.Conditions.Model.Should().BeSameAs(EnergyModel.Sakomura2005);
        feeding.Conditions.Pasture.DryMatter.GramsPerDay.Should().BeApproximately(11, 1e-9);
        feeding.Conditions.HatchWeight.Should().BeNull("the table begins at hatch");
        feeding.Record!.Eaten.Kilograms.Should().BeApproximately(300 - 50, 1e-6, "what came after the last weighing of what was left does not count");
        feeding.Record.Age.Weeks.Should().Be(3);
        reading.Weights!.Table!.Model.Name.Should().Be("T, 2020");
    }

    [Theory]
    [InlineData("{ \"birds\": 100, }}", "1:18", "no JSON")]
    [InlineData("{ \"birds\" 100 }", "1:11", "no JSON")]
    [InlineData("[ 1 ]", "1:1", "is a list in [ ]")]
    [InlineData("{ " + Least + ",\n \"birds\": 3 }", "2:2", "stands a second time")]
    [InlineData("{ " + Least + ",\n \"sex\": \"hen\" }", "2:9", "\"hen\" is unknown; expected mixed, male, female")]
    [InlineData("{ " + Least + ",\n \"hatchWeight\": \"42kg\" }", "2:17", "is out of range; expected 20g to 80g")]
    [InlineData("{ " + Least + ",\n \"hatchWeight\": [] }", "2:17", "is a list")]
    [InlineData("{ " + Least + ",\n \"lossByWeek\": [\"90%\"] }", "2:17", "out of range")]
    [InlineData("{ " + Least + ",\n \"weights\": { \"weighIns\": \"no.csv\" } }", "2:27", "weights.weighIns \"no.csv\" does not exist")]
    [InlineData("{ " + Least + ",\n \"weights\": { \"table\": \"t.csv\", \"prior\": \"slow\" } }", "2:13", "holds a table and weigh-ins or a prior")]
    [InlineData("{ " + Least + ",\n \"feed\": { \"waste\": \"3\" } }", "2:21", "\"3\" has no unit")]
    [InlineData("{ " + Least + ",\n \"feed\": { \"waste\": \"3,5%\" } }", "2:21", "has a decimal comma")]
    [InlineData("{ " + Least + ",\n \"feed\": { \"pasture\": { \"dryMatter\": \"9g/d\", \"energyShare\": \"3%\" } } }", "2:10", "never go out")]
    [InlineData("{ " + Least + ",\n \"feed\": { \"phases\": [ { \"name\": \"a\", \"from\": \"0d\", \"to\": \"9d\", \"energy\": \"3000kcal/kg\" },\n{ \"name\": \"b\", \"from\": \"10d\", \"energy\": \"3000kcal/kg\" } ] } }", "3:1", "does not begin where a ends")]
    [InlineData("{ \"ageAtPlacement\": \"1d\", \"birds\": 100 }", "1:1", "temperatures is missing")]
    [InlineData("{ \"ageAtPlacement\": \"1d\", \"birds\": 100.5, \"temperatures\": {} }", "1:36", "no whole number")]
    [InlineData("{ \"ageAtPlacement\": \"1d\", \"birds\": 100, \"temperatures\": { \"moveOut\": \"21d\", \"outside\": [ { \"from\": \"21d\", \"temperature\": \"14C\" }, { \"from\": \"21d\", \"temperature\": \"90C\" } ] } }", "1:131", "does not come after")]
    [InlineData("{ " + Least + ",\n \"placed\": \"9999-12-31\" }", "2:12", "is not a date of our time; expected a year from 1900 to 2100")]
    [InlineData("{ \"ageAtPlacement\": \"1d\", \"birds\": 100, \"temperatures\": { \"moveOut\": \"5000d\", \"outside\": \"14C\" } }", "1:70", "is out of range; expected an age above 0, up to 120d")]
    [InlineData("{ " + Least + ",\n \"plant\": { \"road\": \"11h\", \"dates\": [ { \"date\": \"2027-06-08\" } ] } }", "2:11", "plant has the birds longer on the road than off feed")]
    [InlineData("{ " + Least + ",\n \"selling\": { \"packs\": \"none.csv\", \"wantedFrom\": \"2kg\" } }", "2:13", "selling says one end of the weights that customers want")]
    public void Each_fault_has_its_place(string text, string place, string problem)
    {
        BatchFileReading reading = Read(text);

        reading.Flock.Should().BeNull();
        reading.Problems.Select(found => found.ToString()).Should().Contain(line => line.StartsWith(place.Length == 0 ? problem : "batch.json:" + place + ": ", StringComparison.Ordinal) && line.Contains(problem));
    }

    [Theory]
    [InlineData("age_d,delivered_kg,left_kg\n21,300,400\n", "nothing was eaten")]
    [InlineData("age_d,delivered_kg,left_kg\n90,300,20\n", "outside the batch")]
    [InlineData("age_d,delivered_kg,left_kg\n21,300,20\n14,5,3\n", "feed.csv:3:1: age \"14\" does not come after the row before it")]
    [InlineData("date,delivered_kg,left_kg\n2027-05-01,300,20\n", "feed.csv:1:1: header \"date\" needs the day the chicks were placed")]
    [InlineData("age_d,delivered_g,left_kg\n21,300,20\n", "feed.csv:1:7: header \"delivered_g\" is no known column")]
    [InlineData("age_d,delivered_kg,left_kg\n21,30O,20\n", "feed.csv:2:4: delivered_kg \"30O\" is not a number")]
    public void A_record_that_cannot_be_is_told(string record, string problem)
    {
        Write("feed.csv", record);

        Read("{ " + Least + ", \"until\": \"56d\", \"feed\": { \"record\": \"feed.csv\" } }").Problems.Select(found => found.ToString()).Should().Contain(line => line.Contains(problem));
    }

    [Theory]
    [InlineData("9,1.5\n", "deaths.csv:2:3: dead_birds \"1.5\" is not whole")]
    [InlineData("9,101\n", "deaths \"deaths.csv\" names deaths of more birds than were placed")]
    [InlineData(null, "deaths \"deaths.csv\" names deaths of more birds than were placed")]
    public void Deaths_that_cannot_be_are_told(string? rows, string problem)
    {
        // Without rows of its own, a million birds a day until no whole number of four bytes holds them.
        Write("deaths.csv", "age_d,dead_birds\n" + (rows ?? string.Concat(Enumerable.Range(1, 2200).Select(day => $"{day},1000000\n"))));

        Read("{ " + Least + ", \"deaths\": \"deaths.csv\" }").Problems.Should().ContainSingle().Which.ToString().Should().Contain(problem);
    }

    [Fact]
    public void Places_count_characters_and_not_bytes()
    {
        BatchFileReading reading = Read("{ \"name\": \"Wiesenhühner äöü\", \"brids\": 3, " + Least + " }");

        reading.Problems.Should().ContainSingle().Which.Should().Match<FileProblem>(problem => problem.Line == 1 && problem.Column == 31 && problem.Field == "brids");
    }

    [Fact]
    public void Nothing_in_a_file_makes_it_throw()
    {
        string[] pieces = ["{", "}", "[", "]", "\"birds\"", ":", ",", "1e999", "null", "\"\\ud800\"", "// x\n", "/*", "\u0000", "true", "\"temperatures\": { \"house\": 5 }", "\"feed\": { \"phases\": [ {} ] }"];
        Random random = new(7);
        for (int i = 0; i < 400; i++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(1, 14)).Select(_ => pieces[random.Next(pieces.Length)]));
            BatchFileReading reading = Read(text);
            (reading.Problems.Count > 0 || reading.Flock is not null).Should().BeTrue(text);
        }

        BatchFile.Read(Path.Combine(folder.FullName, "none.json")).Problems.Should().ContainSingle(problem => problem.Fault == "does not exist");
    }

    private BatchFileReading Read(string text) => BatchFile.Read(Write("batch.json", text));

    private string Write(string name, string text)
    {
        string path = Path.Combine(folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
