using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Files;

/// <summary>A plant's sheet is read whole, or refused with every problem in one pass.</summary>
public sealed class PlantSheetFileTests : IDisposable
{
    private const string Killed = "# killed: 2027-06-08\n";
    private const string Short = Killed + "line,what,count,weight\ndelivered,,100,\n";

    private readonly Scratch scratch = new();

    public static TheoryData<string, string> Broken => new()
    {
        { "line,count\ndelivered,100\n", "f.csv: killed is not stated; expected a line \"# killed: 2027-06-08\"" },
        { "# killed: June\nline,count\ndelivered,100\n", "f.csv:1:11: killed \"June\" is not a date; expected a date as year, month and day, as in 2027-06-08" },
        { Killed + Killed + "line,count\ndelivered,100\n", "f.csv:2:11: killed \"2027-06-08\" is stated a second time; expected one line killed" },
        { Killed + "# neck: half\nline,count\ndelivered,100\n", "f.csv:2:9: neck \"half\" is unknown; expected with or without: *" },
        { Killed + "line,count\npassed,90\n", "f.csv: delivered is not stated; expected a line delivered *" },
        { Killed + "line,count\ndelivered,100\ndelivered,90\n", "f.csv:4:1: line \"delivered\" stands there a second time; expected one such line" },
        { Killed + "line,count\ndelivered,100\nlost,1\n", "f.csv:4:1: line \"lost\" is no line of a plant's sheet; expected delivered, dead-on-arrival, *" },
        { Killed + "line,count\ndelivered,0\n", "f.csv:3:11: count \"0\" is out of range; expected a whole number from 1 to 1000000" },
        { Killed + "line,count\ndelivered,99.5\n", "f.csv:3:11: count \"99.5\" is not whole; expected a whole number from 1 to 1000000" },
        { Killed + "line,count\ndelivered,\n", "f.csv:3:1: count \"delivered\" is missing; expected a whole number" },
        { Killed + "line,count,weight\ndelivered,100,5kg\n", "f.csv:3:15: weight \"5kg\" does not fit the number of birds; expected *" },
        { Killed + "line,count,weight\ndelivered,100,250\n", "f.csv:3:15: weight \"250\" has no unit; expected *" },
        { Short + "passed,,90,200kg\n", "f.csv:4:12: weight \"200kg\" does not belong to a line passed; expected an empty cell" },
        { Short + "condemned,,2,\n", "f.csv:4:1: what \"condemned\" is missing; expected the reason, in the inspector's words" },
        { Short + "condemned,bruises,2,4kg\n", "f.csv:4:21: weight \"4kg\" does not belong to a line condemned; expected an empty cell" },
        { Short + "condemned,bruises,99,\ndead-on-arrival,,2,\n", "f.csv:5:18: count \"2\" is, with the birds condemned, more than were delivered; expected birds of those delivered" },
        { Short + "kept,,101,\n", "f.csv:4:7: count \"101\" is more than passed; expected birds of those that passed" },
        { Short + "packed,,3,4kg\n", "f.csv:4:1: what \"packed\" is missing; expected a piece of the set of cuts, or whole" },
        { Short + "packed,whole,3,\n", "f.csv:4:1: weight \"packed\" is missing; expected all packs of the line together, as in 212.4kg" },
        { Short + "packed,whole,3,9kg\npacked,WHOLE,1,3kg\n", "f.csv:5:8: what \"WHOLE\" stands there a second time; expected one line a kind of pack" },
        { Killed + "line,what,count,weight,from,to\ndelivered,,100,,,\npacked,whole,3,9kg,3kg,2kg\n", "f.csv:4:1: row \"packed\" makes no sense: 2 kg (4.41 lb) is not allowed; expected above 3 kg (6.61 lb)" },
        { Short + "giblets,,,\n", "f.csv:4:1: weight \"giblets\" is missing; expected all giblets *" },
        { Short + "lesion,blue,1,\n", "f.csv:4:8: what \"blue\" is no look of a lesion; expected red, pink, green or grey: *" },
        { Short + "lesion,green,1,\n", "f.csv: lesion is counted, and not how many birds were opened; expected a line opened *" },
        { Short + "opened,,3,\nlesion,green,2,\nlesion,grey,2,\n", "f.csv: lesion is counted on more birds than were opened; expected a line opened *" },
    };

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void The_sample_sheet_is_read()
    {
        PlantSheet sheet = PlantSheetFile.Read(Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-plant.csv")).Value!;

        sheet.Killed.Should().Be(new DateOnly(2027, 6, 8));
        (sheet.Delivered, sheet.DeadOnArrival, sheet.CondemnedBirds, sheet.Passed, sheet.Kept, sheet.Missing, sheet.OnHand).Should().Be((259, 1, 3, 255, 4, 1, 0));
        sheet.LiveWeight!.Value.Pounds.Should().BeApproximately(1745, 1e-9);
        sheet.Condemned.Select(line => line.ToString()).Should().Equal("2 whole: cellulitis", "1 whole: septicemia", "4 in part: bruised wing");
        sheet.Packs.Should().HaveCount(8);
        sheet.Packed.Pounds.Should().BeApproximately(98 + 489 + 69 + 206 + 97 + 81 + 60 + 123, 1e-9);
        sheet.Packs[1].To!.Value.Kilograms.Should().BeApproximately(2.3, 1e-12);
        sheet.Giblets!.Value.Pounds.Should().BeApproximately(31, 1e-9);
        sheet.FeedEaten!.Value.Pounds.Should().BeApproximately(4790, 1e-9);
        (sheet.Opened, sheet.Lesions!.Total, sheet.Lesions[LesionStage.Green]).Should().Be((102, 1, 1));
        sheet.Basis.Should().Be(CarcassBasis.Of(CarcassCondition.Packed, Inclusion.With, Inclusion.Without));
    }

    [Fact]
    public void What_is_not_stated_is_nothing_and_not_a_guess()
    {
        PlantSheet sheet = PlantSheetFile.Read(scratch.Write("f.csv", Killed + "line;what;count;weight;money\nDelivered;;100;;\npacked;whole;90;180kg;1620.50\nopened;;40;;\n")).Value!;

        (sheet.LiveWeight, sheet.Passed, sheet.Giblets, sheet.Lesions).Should().Be(((Mass?)null, (int?)null, (Mass?)null, (LesionCounts?)null));
        (sheet.Opened, sheet.CondemnedBirds, sheet.Packs[0].PiecesPerPack).Should().Be((40, 0, 1));
        sheet.Packs[0].Money!.Value.Amount.Should().Be(1620.50);
        sheet.ToString().Should().Be("100 birds delivered on 2027-06-08, 180 kg (396.83 lb) packed");
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_sheet_is_refused_with_one_exact_message(string text, string message)
    {
        FileReading<PlantSheet> reading = PlantSheetFile.Read(scratch.Write("f.csv", text));

        reading.Value.Should().BeNull();
        reading.Problems.Should().ContainSingle().Which.ToString().Should().Match(message);
    }

    [Fact]
    public void All_problems_are_told_in_one_pass() => PlantSheetFile.Read(scratch.Write("f.csv", "# feet: some\nline,what,count,weight,from\ndelivered,all,x,,\npacked,whole,2,3,1kg\nlesion,red,,,\n"))
        .Problems.Select(problem => (problem.Line, problem.Field)).Should().Equal((0, "killed"), (0, "lesion"), (1, "feet"), (3, "what"), (3, "count"), (4, "weight"), (5, "count"));
}
