using Poultry.Growth.Files;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

/// <summary>Tables of inspections and logs of disturbances: what they hold, and every problem in one pass.</summary>
public class LesionFileTests
{
    [Fact]
    public void Rows_of_a_batch_are_one_inspection()
    {
        InspectionReading reading = Inspections("batch,killed,birds_opened,birds_found,detection_percent,note\nMay,2027-05-31,100,1,80,first day\nmay,2027-05-31,50,2,80,\nJune,,70,0,,\n");

        reading.Problems.Should().BeEmpty();
        reading.Inspections!.Select(inspection => inspection.ToString()).Should().Equal("May: 3 of 150 birds", "June: 0 of 70 birds");
        reading.Inspections![0].Detection.Percent.Should().Be(80);
        reading.Inspections[0].Killed.Should().Be(new DateOnly(2027, 5, 31));
        reading.Inspections[1].Detection.Percent.Should().Be(100);
        reading.ToString().Should().Be("inspections.csv: 2 batches");
    }

    [Fact]
    public void A_table_without_names_is_one_batch_named_by_its_file() =>
        Inspections("birds_opened;birds_found\n100;1\n40;0\n").Inspections!.Single().ToString().Should().Be("inspections: 1 of 140 birds");

    [Fact]
    public void Every_problem_of_inspections_is_told() =>
        Lines(Inspections("batch,killed,birds_opened,birds_found,detection_percent\nA,2027-13-01,10,12,0\nB,,x,1,\nC,2027-05-01,5,,\nD,2027-05-01,5,1,\nD,2027-05-02,5,1,\n").Problems).Should().Equal(
            "inspections.csv:2:3: killed \"2027-13-01\" is not a date; expected year, month and day, as in 2027-04-12",
            "inspections.csv:2:17: birds_found \"12\" is more than were opened; expected at most as many as birds_opened",
            "inspections.csv:2:20: detection_percent \"0\" is out of range; expected a percentage above 0, at most 100",
            "inspections.csv:3:4: birds_opened \"x\" is not a number; expected a whole number of birds, 1 to 1000000",
            "inspections.csv:4:16: birds_found \"\" is empty; expected a whole number of birds, 0 to 1000000",
            "inspections.csv:6:1: batch \"D\" has another killed or detection_percent than an earlier row of this batch; expected the same in all rows of a batch");

    [Fact]
    public void A_misspelt_column_is_told_once_and_blamed_for_nothing_else()
    {
        Lines(Inspections("bach,killed,birds_opened,birds_found\nA,2027-05-01,50,1\nB,2027-06-01,x,1\n").Problems).Select(line => line.Split(';')[0]).Should().Equal(
            "inspections.csv:1:1: header \"bach\" is no column of this table (did you mean batch?)", "inspections.csv:3:14: birds_opened \"x\" is not a number");
        Lines(Log("# hatched: 2027-04-11\ndat,what,share_percent,cycle\n2027-05-01,dog,5,3\n2027-05-02,,5,3\n").Problems).Select(line => line.Split(';')[0]).Should().Equal(
            "log.csv:2:1: header \"dat\" is no column of this table (did you mean date?)",
            "log.csv:2:24: header \"cycle\" is no column of this table (did you mean cycles?)",
            "log.csv:4:12: what \"\" is empty");
    }

    [Fact]
    public void A_batch_of_more_birds_than_there_can_be_is_told() =>
        Lines(Inspections("batch,birds_opened,birds_found\nA,2000000000,0\nB,1000000,0\nB,1,0\n").Problems).Should().Equal(
            "inspections.csv:2:3: birds_opened \"2000000000\" is out of range; expected a whole number of birds, 1 to 1000000",
            "inspections.csv:3:1: batch \"B\" holds too many birds in all; expected at most 1000000");

    [Fact]
    public void Spaces_in_quotes_are_nothing()
    {
        Inspections("batch,birds_opened,birds_found\n\"  \",70,0\n").Inspections!.Single().Batch.Should().Be("inspections");
        Lines(Log("age_d,what\n40,\"  \"\n").Problems).Should().Equal("log.csv:2:4: what \"\" is empty; expected what happened");
        InspectionFile.ReadText(new StringReader("birds_opened,birds_found\n70,0\n"), ".csv").Inspections!.Single().Batch.Should().Be(".csv");
    }

    [Theory]
    [InlineData("", "file is empty")]
    [InlineData("birds_opened,birds_found\n", "file has no rows below the header")]
    [InlineData("birds_opened,found\n1,1\n", "header \"found\" is no column of this table")]
    [InlineData("birds_opened,birds_found,birds_found\n1,1,1\n", "header \"birds_found\" stands there twice")]
    [InlineData("birds_opened,batch\n1,A\n", "birds_found is missing from the header")]
    [InlineData("birds_opened,birds_found\n1\n", "row has 1 cells")]
    public void A_table_that_is_none_is_refused(string text, string fault)
    {
        InspectionReading reading = Inspections(text);

        reading.Inspections.Should().BeNull();
        Lines(reading.Problems).Should().Contain(line => line.Contains(fault));
    }

    [Fact]
    public void A_missing_file_or_folder_is_a_problem_and_no_exception()
    {
        InspectionFile.Read("nowhere.csv").Problems.Single().Fault.Should().Be("does not exist");
        InspectionFile.ReadFolder("nowhere").Problems.Single().Fault.Should().Be("does not exist");
        DisturbanceFile.Read("nowhere.csv").Problems.Single().Fault.Should().Be("does not exist");
    }

    [Fact]
    public void A_log_has_dates_or_ages_and_a_dose_where_it_was_guessed()
    {
        DisturbanceReading reading = Log("# hatched: 2027-04-11\ndate,age_d,what,share_percent,share_high_percent,cycles,note\n2027-05-31,,dog,10,20,15,\n,45.5,storm,,,,loud\n");

        reading.Problems.Should().BeEmpty();
        reading.Hatched.Should().Be(new DateOnly(2027, 4, 11));
        reading.Log!.Select(disturbance => disturbance.ToString()).Should().Equal("45.5 d: storm", "50 d: dog (10 % of birds, 15 cycles)");
        FlappingDose dose = reading.Log![1].Dose!;
        (dose.LowShare, dose.HighShare, dose.LowCycles).Should().Be((Probability.FromPercent(10), Probability.FromPercent(20), 15));
    }

    [Fact]
    public void The_caller_s_day_of_hatch_wins() =>
        DisturbanceFile.ReadText(new StringReader("# hatched: 2027-04-11\ndate,what\n2027-05-31,dog\n"), "log.csv", new DateOnly(2027, 4, 1)).Log![0].Age.Days.Should().Be(60);

    [Fact]
    public void Every_problem_of_a_log_is_told() =>
        Lines(Log("date,age_d,what,share_percent,cycles,cycles_low\n2027-05-01,,dog,5,,\n,,storm,,,\n,40,,120,3,\n,41,hail,5,3,4\n2027-05-01,40,both,,,\n").Problems).Should().Equal(
            "log.csv:2:1: date \"2027-05-01\" needs the day of hatch; expected a line \"# hatched: 2027-04-11\" in the file, or the option hatched",
            "log.csv:2:13: what \"dog\" has half a dose; expected both share_percent and cycles, or neither: then the log gives dates and no rate",
            "log.csv:3:1: date \"\" is empty, and so is age_d; expected a date or an age in days, one of them",
            "log.csv:4:5: what \"\" is empty; expected what happened",
            "log.csv:4:6: share_percent \"120\" is out of range; expected a percentage of birds, 0 to 100",
            "log.csv:5:5: what \"hail\" has guesses out of order; expected low, likely, high",
            "log.csv:6:1: date \"2027-05-01\" stands beside age_d; expected a date or an age in days, one of them");

    [Fact]
    public void A_day_of_hatch_that_is_none_is_told() =>
        Lines(Log("# hatched: soon\n# hatched: 2027-04-11\ndate,what\n2027-04-01,dog\n").Problems).Should().Equal(
            "log.csv:1:12: hatched \"soon\" is not a date; expected a date as year, month and day, as in 2027-04-12",
            "log.csv:4:1: date \"2027-04-01\" lies before hatch; expected a later date");

    private static InspectionReading Inspections(string text) => InspectionFile.ReadText(new StringReader(text), "inspections.csv");

    private static DisturbanceReading Log(string text) => DisturbanceFile.ReadText(new StringReader(text), "log.csv");

    private static IReadOnlyList<string> Lines(IReadOnlyList<FileProblem> problems) => FileProblem.Lines(problems);
}
