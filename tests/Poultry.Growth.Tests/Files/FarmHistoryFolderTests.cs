using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.ConsoleRuns;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Files;

/// <summary>A finished batch goes into the history whole or not at all, comes back as it was, and is read by the readers that were there before.</summary>
public sealed class FarmHistoryFolderTests : IDisposable
{
    private const string Weighed = "age_d,mean_weight_g,birds\n28,1100,20\n";

    private readonly Scratch scratch = new();

    private string History => scratch.PathOf("history");

    public static TheoryData<string, string> Broken => new()
    {
        { "# age_at_placement_d: 1\n# placed_birds: 300\n# age_at_killing: 56d\n", "a.csv: lost_birds is not stated; expected a line \"# lost_birds:\" beside placed_birds and age_at_killing" },
        { "# placed_birds: 300\n# lost_birds: 12\n# age_at_killing: 56d\n", "a.csv: age_at_placement_d is not stated; expected a line \"# age_at_placement_d:\" beside placed_birds" },
        { "# age_at_placement_d: 1\n# placed_birds: 300\n# lost_birds: many\n# age_at_killing: 56d\n", "a.csv:3:15: lost_birds \"many\" is no number of birds; expected a whole number, 0 or more" },
        { "# age_at_placement_d: 1\n# placed_birds: 30\n# lost_birds: 31\n# age_at_killing: 56d\n", "a.csv:2:17: placed_birds \"30\" makes no sense with the lines beside it: 31 birds is not allowed; expected 0 to 30 birds" },
        { "# age_at_placement_d: 1\n# placed_birds: 300\n# lost_birds: 3\n# age_at_killing: 56\n", "a.csv:4:19: age_at_killing \"56\" cannot be read; expected *" },
        { "# feed_eaten: 500kg\n# feed_expected: 2000kg\n# feed_model: m\n", "a.csv:1:15: feed_eaten \"500kg\" makes no sense with the lines beside it: 500 kg is not allowed; expected 666.* to 6000 kg" },
        { "# live_weight: 700kg\n# off_feed: 10h\n# carcass_weight: 100kg\n", "a.csv:1:16: live_weight \"700kg\" makes no sense with the lines beside it: * % is not allowed; expected 40 to 95 %" },
        { "# live_weight: 700kg\n# off_feed: 10h\n# carcass_weight: 500kg\n# neck: half\n", "a.csv:4:9: neck \"half\" is unknown; expected with or without" },
        { "# killed: yesterday\n", "a.csv:1:11: killed \"yesterday\" cannot be read; expected *" },
        { "# killed: 2027-06-08\n# killed: 2027-06-09\n", "a.csv:2:11: killed \"2027-06-09\" is stated a second time; expected one line killed" },
    };

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_batch_comes_back_as_it_was()
    {
        FarmBatch batch = Batch("Meadow 3");
        FarmHistoryFolder.Add(History, batch).Should().BeNull();
        FarmBatch read = FarmHistoryFolder.Read(History).Value!.Single();

        (read.Name, read.Kind, read.Killed).Should().Be(("Meadow 3", batch.Kind, batch.Killed));
        read.Losses!.ToString().Should().Be(batch.Losses!.ToString());
        read.Feed!.ToString().Should().Be(batch.Feed!.ToString());
        (read.Feed.Model, read.Feed.Ratio).Should().Be((batch.Feed.Model, batch.Feed.Ratio));
        read.Dressed!.Value.Live.Weight.Kilograms.Should().BeApproximately(675.123456789, 1e-9);
        read.Dressed.Value.Live.State.Should().Be(batch.Dressed!.Value.Live.State);
        read.Dressed.Value.Carcass.Basis.Should().Be(batch.Dressed.Value.Carcass.Basis);
        read.Inspection!.ToString().Should().Be("Meadow 3: 2 of 70 birds");
        read.Weights.WeighIns.Select(weighIn => (weighIn.Age, weighIn.BirdsWeighed, weighIn.Sex)).Should().Equal(
            (Age.FromDays(14), 20, Sex.Mixed), (Age.FromDays(21), 3, Sex.Male), (Age.FromDays(28), 40, Sex.Mixed), (Age.FromDays(56), 270, Sex.Mixed));
        read.Weights.WeighIns[1].StandardDeviation!.Value.Kilograms.Should().BeApproximately(batch.Weights.WeighIns[1].StandardDeviation!.Value.Kilograms, 1e-9);
    }

    [Fact]
    public void An_inspection_of_a_batch_that_is_not_there_is_told()
    {
        Directory.CreateDirectory(Path.Combine(Folder(("Meadow 3.csv", Weighed)), "inspections"));
        File.WriteAllText(Path.Combine(History, "inspections", "all.csv"), "batch,birds_opened,birds_found\nMEADOW 3,70,2\nMeadow3,20,1\n");

        FarmHistoryFolder.Read(History).Problems.Should().ContainSingle().Which.ToString().Should().EndWith(
            "inspections \"Meadow3\" is inspected but has no weigh-in file; expected the name of a weigh-in file of the folder, without .csv");
    }

    [Fact]
    public void The_readers_that_were_there_before_read_it_too()
    {
        FarmHistoryFolder.Add(History, Batch("Meadow 3")).Should().BeNull();

        BatchHistoryFolder.Read(History).History!.Single().Kind.ToString().Should().Be("strain A, movable shelter, both sexes");
        InspectionFile.ReadFolder(Path.Combine(History, "inspections")).Inspections!.Single().Found.Should().Be(2);
    }

    [Fact]
    public void Past_batches_of_weigh_ins_alone_are_a_history_too()
    {
        FarmHistory history = FarmHistoryFolder.Read(Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-history")).Value!;

        history.Should().HaveCount(5).And.OnlyContain(batch => batch.Losses == null && batch.Feed == null && batch.Dressed == null && batch.Inspection == null);
        history.ToString().Should().Be("5 batches");
    }

    [Fact]
    public void A_batch_that_is_there_stays_unless_told()
    {
        FarmHistoryFolder.Add(History, Batch("Meadow 3")).Should().BeNull();
        string before = File.ReadAllText(Path.Combine(History, "Meadow 3.csv"));

        FarmHistoryFolder.Add(History, Batch("MEADOW 3", lost: 99)).Should().Be("\"MEADOW 3\" is in the history already; expected another batch, or to be told to replace it");
        File.ReadAllText(Path.Combine(History, "Meadow 3.csv")).Should().Be(before);
        FarmHistoryFolder.Add(History, Batch("Meadow 3", lost: 99, opened: 0), replace: true).Should().BeNull();
        FarmBatch replaced = FarmHistoryFolder.Read(History).Value!.Single();
        (replaced.Losses!.Lost, replaced.Inspection).Should().Be((99, null), "an inspection that is no longer there goes with the batch it belonged to");
        Directory.EnumerateFiles(History, "*", SearchOption.AllDirectories).Should().ContainSingle();
    }

    [Fact]
    public void A_batch_replaced_in_other_letters_is_still_one_batch()
    {
        FarmHistoryFolder.Add(History, Batch("Meadow 3")).Should().BeNull();
        FarmHistoryFolder.Add(History, Batch("MEADOW 3", lost: 99), replace: true).Should().BeNull();

        FarmHistoryFolder.Read(History).Value!.Single().Losses!.Lost.Should().Be(99);
        Directory.EnumerateFiles(History, "*", SearchOption.AllDirectories).Should().HaveCount(2, "its inspection stays one too");
    }

    [Fact]
    public void The_first_batch_may_be_one_that_nobody_inspected()
    {
        FarmHistoryFolder.Add(History, Batch("Meadow 3", opened: 0)).Should().BeNull();

        FarmHistoryFolder.Read(History).Value!.Single().Inspection.Should().BeNull();
        Directory.EnumerateFileSystemEntries(History).Should().ContainSingle();
    }

    [Fact]
    public void All_of_it_or_nothing()
    {
        scratch.Write("inspections", "a file where the folder should be");
        string here = Path.GetDirectoryName(History)!;

        FarmHistoryFolder.Add(here, Batch("Meadow 3")).Should().Match("\"*\" cannot be written (*); nothing was changed");
        scratch.Names().Should().Equal("inspections");
        FarmHistoryFolder.Add(Path.Combine(here, "none", "history"), Batch("Meadow 3")).Should().EndWith("lies in a folder that does not exist; expected one that does");
        scratch.Names().Should().Equal("inspections");
    }

    [Theory]
    [InlineData("a/b")]
    [InlineData("..")]
    [InlineData(".hidden")]
    [InlineData("nul")]
    [InlineData("what?")]
    [InlineData("a,b")]
    public void Names_that_are_no_file_names_are_refused(string name) =>
        FarmHistoryFolder.Add(History, Batch(name)).Should().EndWith("cannot be the name of a file; expected letters, digits, spaces, hyphens and dots, as in Meadow 3");

    [Fact]
    public void An_inspection_kept_by_hand_does_not_count_twice()
    {
        Directory.CreateDirectory(Path.Combine(History, "inspections"));
        File.WriteAllText(Path.Combine(History, "inspections", "all.csv"), "batch,birds_opened,birds_found\nMeadow 3,70,2\n");

        FarmHistoryFolder.Add(History, Batch("Meadow 3")).Should().Be("the inspections in the history hold \"Meadow 3\" in another file; expected it once");
        FarmHistoryFolder.Add(History, Batch("Meadow 3", opened: 0)).Should().BeNull();
        FarmHistoryFolder.Read(History).Value!.Single().Inspection!.Opened.Should().Be(70);
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_batch_is_refused_with_one_exact_message(string lines, string message)
    {
        FileReading<FarmHistory> reading = FarmHistoryFolder.Read(Folder(("a.csv", lines + Weighed)));

        reading.Value.Should().BeNull();
        reading.Problems.Should().ContainSingle().Which.ToString().Should().Match(message);
    }

    [Fact]
    public void All_problems_of_all_files_are_told_in_one_pass() =>
        FarmHistoryFolder.Read(Folder(("a.csv", "# placed_birds: 300\n" + Weighed), ("b.csv", "age_d,mean_weight_g,birds\n28,x,20\n"), ("c.csv", "# killed: no\n" + Weighed)))
            .Problems.Select(problem => (problem.File, problem.Field)).Should().Equal(("a.csv", "lost_birds"), ("a.csv", "age_at_killing"), ("a.csv", "age_at_placement_d"), ("b.csv", "mean_weight_g"), ("c.csv", "killed"));

    [Fact]
    public void A_folder_that_is_not_there_is_a_problem() => FarmHistoryFolder.Read(scratch.PathOf("none")).Problems.Should().ContainSingle().Which.Fault.Should().Be("does not exist");

    private string Folder(params (string Name, string Text)[] files)
    {
        Directory.CreateDirectory(History);
        foreach ((string name, string text) in files)
        {
            File.WriteAllText(Path.Combine(History, name), text);
        }

        return History;
    }

    private static FarmBatch Batch(string name, int lost = 30, int opened = 70) => new()
    {
        Weights = PastBatch.Of(
            name,
            WeighInSeries.Of(
                WeighIn.Mean(Age.FromDays(14), Mass.FromGrams(390), 20),
                WeighIn.Birds(Age.FromDays(21), Mass.FromGrams(700), Mass.FromGrams(731), Mass.FromGrams(702)).Of(Sex.Male),
                WeighIn.Group(Age.FromDays(28), Mass.FromKilograms(22), 20),
                WeighIn.Group(Age.FromDays(28), Mass.FromKilograms(22), 20),
                WeighIn.Mean(Age.FromDays(56), Mass.FromKilograms(2.61), 270)),
            BatchKind.Of("strain A", "movable shelter")),
        Killed = new DateOnly(2027, 6, 8),
        Losses = PastLosses.Of(300, lost, Age.FromDays(1), Age.FromDays(56)),
        Feed = PastFeed.Of(Mass.FromKilograms(1750), Mass.FromKilograms(1700.5), "energy-heat-production"),
        Dressed = (LiveWeight.Of(Mass.FromKilograms(675.123456789), LiveState.OffFeed(Duration.FromHours(10), Duration.FromHours(1.5))), CarcassWeight.Of(Mass.FromKilograms(480), CarcassBasis.Of(CarcassCondition.Packed, Inclusion.With))),
        Inspection = opened == 0 ? null : LesionInspection.Of(opened, 2, name, new DateOnly(2027, 6, 8)),
    };
}
