using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

public sealed class BatchHistoryFolderTests : IDisposable
{
    private const string Header = "age_d,mean_weight_g,birds,sex\n";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("poultry-growth-history-");

    [Fact]
    public void Each_file_is_a_batch_of_its_kind()
    {
        Write("2027 spring.csv", "# strain: Strain A\n# System: movable shelter\n" + Header + "14,350,20,\n28,1100,20,\n");
        Write("2026.CSV", "# strain: strain a\n# system: Movable shelter\n# sex: m\n" + Header + "14,350,20,\n28,1100,20,male\n");
        Write("2025.csv", Header + "14,350,20,f\n28,1100,20,f\n");
        Write("notes.txt", "nothing to read");

        BatchHistoryReading reading = BatchHistoryFolder.Read(folder.FullName);

        reading.Problems.Should().BeEmpty();
        reading.History!.Select(batch => batch.Name).Should().Equal("2025", "2026", "2027 spring");
        reading.History!.Kinds.Should().Equal(
            BatchKind.Of(sex: Sex.Female), BatchKind.Of("Strain A", "movable shelter", Sex.Male), BatchKind.Of("Strain A", "movable shelter"));
        reading.Files.Should().HaveCount(3);
        reading.ToString().Should().EndWith(": 3 batches of 3 kinds");
    }

    [Fact]
    public void All_problems_of_all_files_are_told_at_once()
    {
        Write("a.csv", "# strain:\n# sex: hen\n" + Header + "14,35O,20,\n");
        Write("b.csv", Header + "14,350,20,\n");
        Write("c.csv", "# sex: male\n# system: shelter\n# system: house\n" + Header + "14,350,20,male\n");
        Write("d.csv", "# sex: male\n" + Header + "14,350,20,male\n21,600,20,female\n");
        Write("e.csv", "");

        BatchHistoryReading reading = BatchHistoryFolder.Read(folder.FullName);

        reading.History.Should().BeNull();
        reading.Problems.Select(problem => problem.ToString()).Should().Equal(
            "a.csv:1:10: strain \"\" is empty; expected the name of the strain",
            "a.csv:2:8: sex \"hen\" is no sex; expected male, female or mixed",
            "a.csv:4:4: mean_weight_g \"35O\" is not a number; expected a mean weight above 0 in g",
            "c.csv:3:11: system \"house\" is stated a second time; expected one line system",
            "d.csv:1:8: sex \"male\" is not the sex of the weigh-in at 21 d; expected mixed, or weigh-ins of one sex",
            "e.csv:1:1: file is empty; expected " + reading.Problems[^1].Expected);
        reading.ToString().Should().EndWith(": 6 problems");
    }

    [Fact]
    public void A_folder_that_gives_no_batch_is_a_problem()
    {
        string missing = Path.Combine(folder.FullName, "missing");
        Problem(folder.FullName).Should().EndWith(": folder holds no .csv file; expected a folder with one weigh-in file (.csv) a batch");
        Problem(missing).Should().EndWith(": folder does not exist; expected a folder with one weigh-in file (.csv) a batch");
        Write("file.csv", Header);
        Problem(Path.Combine(folder.FullName, "file.csv")).Should().Contain(": folder is a file;");

        static string Problem(string path)
        {
            BatchHistoryReading reading = BatchHistoryFolder.Read(path);
            reading.History.Should().BeNull();
            return reading.Problems.Should().ContainSingle().Subject.ToString();
        }
    }

    [Fact]
    public void What_looks_wrong_is_flagged_or_left_out()
    {
        Write("a.csv", "age_d,weight_g\n" + string.Concat(Enumerable.Repeat("14,350\n14,360\n14,340\n14,355\n14,345\n", 2)) + "14,3500\n");

        BatchHistoryReading kept = BatchHistoryFolder.Read(folder.FullName);
        BatchHistoryReading without = BatchHistoryFolder.Read(folder.FullName, excludeFlagged: true);

        kept.Suspicions.Should().NotBeEmpty();
        kept.History![0].WeighIns.BirdsWeighed.Should().Be(11);
        without.History![0].WeighIns.BirdsWeighed.Should().Be(10);
    }

    public void Dispose() => folder.Delete(recursive: true);

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(folder.FullName, name), text);
}
