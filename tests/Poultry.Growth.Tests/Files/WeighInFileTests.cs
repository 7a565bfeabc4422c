using System.Text;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Files;

public sealed class WeighInFileTests
{
    [Fact]
    public void Kinds_mix_freely_and_consecutive_single_birds_are_one_weigh_in()
    {
        WeighInSeries series = Series("""
            # An invented batch.
            age_d,weight_g,mean_weight_g,total_weight_kg,birds,sd_g,sex,note
            7,171,,,,,,
            7,164,,,,,,"slow, small"
            7,180,,,,,female,

            14,,428,,20,37,m,
            21,,,17.4,20,,,two crates
            """);

        series.Select(weighIn => (weighIn.Kind, weighIn.Age.Days, weighIn.BirdsWeighed, weighIn.Sex)).Should().Equal(
            (WeighInKind.Birds, 7, 2, Sex.Mixed), (WeighInKind.Birds, 7, 1, Sex.Female), (WeighInKind.Mean, 14, 20, Sex.Male), (WeighInKind.Group, 21, 20, Sex.Mixed));
        series[0].Note.Should().Be("slow, small");
        series[2].StandardDeviation!.Value.Grams.Should().BeApproximately(37, 1e-9);
        series[3].MeanWeight.Kilograms.Should().BeApproximately(0.87, 1e-12);
    }

    [Theory]
    [InlineData("weight_g", "2600", 2.6)]
    [InlineData("weight_kg", "2.6", 2.6)]
    [InlineData("weight_lb", "5.7", 5.7 * 0.45359237)]
    [InlineData("weight_oz", "91.2", 5.7 * 0.45359237)]
    [InlineData("weight_lb_oz", "5:11", 5.6875 * 0.45359237)]
    [InlineData("Weight_LB_OZ", "5:11.2", 5.7 * 0.45359237)]
    public void The_header_says_the_unit(string column, string cell, double kilograms) =>
        Series("age_d," + column + "\n42," + cell + "\n")[0].MeanWeight.Kilograms.Should().BeApproximately(kilograms, 1e-12);

    [Theory]
    [InlineData("age_wk;weight_g\r\n6;2600\r\n")]
    [InlineData("age_wk\tweight_g\n6\t2600\n")]
    [InlineData("\uFEFFage_wk,weight_g\n6,2600")]
    [InlineData("\n\n# c\n \"age_wk\" , \"weight_g\" \n\n 6 , \"2600\" \n,\n")]
    [InlineData("age_wk,weight_g,,\n6,2600,,\n,,,\n")]
    [InlineData("age_wk,weight_g\r6,2600\r")]
    public void Delimiters_line_ends_quotes_and_empty_lines_of_other_programs_are_read(string text)
    {
        WeighIn weighIn = Series(text).Should().ContainSingle().Subject;

        (weighIn.Age.Days, weighIn.MeanWeight.Grams).Should().Be((42, 2600));
    }

    [Fact]
    public void A_quoted_note_may_hold_quotes_delimiters_and_lines()
    {
        WeighInSeries series = Series("age_d,note,weight_g\n7,\"a \"\"b\"\",\nc\",171\n14,,440\n");

        series[0].Note.Should().Be("a \"b\",\nc");
        series.Should().HaveCount(2);
    }

    [Fact]
    public void Lines_are_counted_through_quoted_line_breaks() =>
        WeighInFile.ReadText(new StringReader("age_d,note,weight_g\n7,\"a\r\nb\",171\n14,,x\n"), "f").Problems.Single()
            .Should().Match<FileProblem>(problem => problem.Line == 4 && problem.Column == 5);

    [Fact]
    public void Dates_become_ages_by_the_placement_of_the_file()
    {
        WeighInReading reading = Read("# placed: 2027-04-12\n# Age_at_placement_d: 2\ndate,weight_g\n2027-04-12,50\n2027-04-19,190\n");

        reading.Series!.Select(weighIn => weighIn.Age.Days).Should().Equal(2, 9);
        reading.Placed.Should().Be(new DateOnly(2027, 4, 12));
        reading.AgeAtPlacement.Should().Be(Age.FromDays(2));
    }

    [Fact]
    public void Options_win_over_the_file() =>
        Read("# placed: 2027-04-12\n# age_at_placement_d: 2\ndate,weight_g\n2027-04-19,190\n", new() { Placed = new(2027, 4, 10), AgeAtPlacement = Age.FromDays(1) })
            .Series![0].Age.Days.Should().Be(10);

    [Fact]
    public void Columns_of_other_peoples_files_are_named_by_options()
    {
        WeighInReading reading = Read(
            "Chick,Diet,Time,weight\n1,1,0,42\n1,1,2,51\n2,1,0,40\n", new() { AgeColumn = "time", WeightColumn = "weight", WeightUnit = WeightUnit.Gram, Where = ["Chick=1"] });

        reading.Series!.Select(weighIn => weighIn.MeanWeight.Kilograms).Should().Equal(0.042, 0.051);
        reading.RowsPassedOver.Should().Be(1);
        reading.IgnoredColumns.Should().Equal("Chick", "Diet");
    }

    [Fact]
    public void A_column_asked_for_by_where_needs_no_other_option() =>
        Read("age_d,weight_g,pen\n7,171,1\n7,990,2\n", new() { Where = ["pen=1"] }).Series!.Single().MeanWeight.Grams.Should().BeApproximately(171, 1e-9);

    [Fact]
    public void A_flagged_bird_is_named_by_its_line_and_kept_unless_left_out()
    {
        const string Text = "age_d,weight_g\n7,171\n7,164\n7,1800\n7,180\n14,440\n";

        WeighInReading kept = Read(Text), left = Read(Text, new() { ExcludeFlagged = true });

        kept.Series![0].BirdsWeighed.Should().Be(4);
        kept.Suspicions.Single().ToString().Should().Be(
            "f.csv:4: A bird of 1.8 kg (3.97 lb) at 7 d is far from its fellows; expected near 175.4 g (6.19 oz), the middle bird (about 10 times: a slipped decimal point?). (kept)");
        left.Series![0].Weights.Select(weight => weight.Grams).Should().Equal(171, 164, 180);
        left.Suspicions.Single().IsExcluded.Should().BeTrue();
        left.ToString().Should().Be("f.csv: 2 weigh-ins of 4 birds, 7 d to 14 d; 1 suspicion");
    }

    [Fact]
    public void Nothing_left_without_the_flagged_is_a_problem() =>
        Read("age_d,mean_weight_g,birds,sd_g\n35,2000,20,1900\n", new() { ExcludeFlagged = true }).Problems.Single().ToString()
            .Should().Be("f.csv: file has no weigh-in left without the flagged ones; expected at least one weigh-in that looks right");

    [Fact]
    public void A_repeated_group_is_suspected_and_equal_single_birds_are_not()
    {
        const string Text = "age_d,weight_g,total_weight_kg,birds\n7,171,,\n7,171,,\n21,,8.7,10\n21,,8.7,10\n";

        WeighInReading kept = Read(Text), left = Read(Text, new() { ExcludeFlagged = true });

        kept.Series!.Should().HaveCount(3);
        kept.Suspicions.Single().Should().Match<FileSuspicion>(suspicion => suspicion.Code == FileSuspicion.RepeatedGroup && suspicion.Lines.Single() == 5);
        left.Series!.Should().HaveCount(2);
    }

    [Theory]
    [InlineData("5.11 4.03 5.15 4.14", true)]
    [InlineData("5.1 5.0 5 4.15 5.11", true)]
    [InlineData("5.11 4.03 5.15 4.16", false)]
    [InlineData("5.1 5.3 4.9 5.2 5.7 4.8", false)]
    [InlineData("5 5 4 5 6 5 4", false)]
    [InlineData("5.11 5.1", false)]
    [InlineData("5.112 5.110 5.103 5.101", false)]
    public void Ounces_typed_as_decimals_of_pounds_are_suspected(string pounds, bool suspected)
    {
        WeighInReading reading = Read("age_d,weight_lb\n" + string.Concat(pounds.Split(' ').Select(cell => "49," + cell + "\n")));

        reading.Suspicions.Select(suspicion => suspicion.Code).Should().Equal(suspected ? [FileSuspicion.OuncesAsDecimals] : []);
    }

    [Fact]
    public void A_file_on_disk_is_named_by_its_name()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string path = Path.Combine(folder, "weigh-ins.csv");
        File.WriteAllText(path, "age_d,weight_g,note\n7,171,Küken\n", new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));

        WeighInReading reading = WeighInFile.Read(path);

        reading.ToString().Should().Be("weigh-ins.csv: 1 weigh-in of 1 bird, 7 d to 7 d; 0 suspicions");
        reading.Series![0].Note.Should().Be("Küken");
        Directory.Delete(folder, recursive: true);
    }

    private static WeighInReading Read(string text, WeighInFileOptions? options = null) => WeighInFile.ReadText(new StringReader(text), "f.csv", options);

    private static WeighInSeries Series(string text)
    {
        WeighInReading reading = Read(text);
        reading.Problems.Select(problem => problem.ToString()).Should().BeEmpty();
        return reading.Series!;
    }
}
