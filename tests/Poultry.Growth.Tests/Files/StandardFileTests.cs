using Poultry.Growth.Evidence;
using Poultry.Growth.Curves;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

/// <summary>A standard is read with its name, year and source, or refused with every problem.</summary>
public sealed class StandardFileTests
{
    private const string Label = "# name: Made up, males\n# year: 2022\n# source: A page that nobody printed\n";

    private const string Columns = "age_d or age_wk, and weight_<unit>; <unit> is g, kg, lb, oz or lb_oz";

    public static TheoryData<string, string> Broken => new()
    {
        { "# year: 2022\n# source: x\nage_d,weight_g\n7,150\n14,400\n", "f.csv: name is not stated; expected a line with whose table and of which birds, as in \"# name: Objective, males\"" },
        { "# name: x\n# source: x\nage_d,weight_g\n7,150\n14,400\n", "f.csv: year is not stated; expected a line with the year of its edition, as in \"# year: 2022\"" },
        { "# name: x\n# year: 2022\nage_d,weight_g\n7,150\n14,400\n", "f.csv: source is not stated; expected a line with where the table is printed, as in \"# source: Breeder's handbook, page 12\"" },
        { "# name:\n# year: 2022\n# source: x\nage_d,weight_g\n7,150\n14,400\n", "f.csv:1:8: name \"\" is empty; expected whose table and of which birds, as in \"# name: Objective, males\"" },
        { "# name: x\n# year: last\n# source: x\nage_d,weight_g\n7,150\n14,400\n", "f.csv:2:9: year \"last\" is no year; expected a year from 1900 to 2100" },
        { Label + "# year: 2023\nage_d,weight_g\n7,150\n14,400\n", "f.csv:4:9: year \"2023\" is stated a second time; expected one line year" },
        { Label, "f.csv:1:1: file is empty; expected a header and at least two rows: " + Columns },
        { Label + "age_d,weight_g\n", "f.csv:4:1: file has no rows below the header; expected at least two rows" },
        { Label + "age_d,weight_g\n7,150\n", "f.csv:4:1: file has one row below the header; expected at least two rows" },
        { Label + "age_d,weight\n7,150\n14,400\n", "f.csv:4:7: header \"weight\" has no unit; expected " + Columns },
        { Label + "age_d,mean_weight_g\n7,150\n14,400\n", "f.csv:4:7: header \"mean_weight_g\" is no column of a standard; expected " + Columns },
        { Label + "age_d,,weight_g\n7,,150\n14,,400\n", "f.csv:4:7: header \"\" is a column without a name; expected " + Columns },
        { Label + "age_d,weight_g,weight_kg\n7,150,0.15\n14,400,0.4\n", "f.csv:4:16: header \"weight_kg\" says the same as weight_g; expected one of the two" },
        { Label + "age_d\n7\n14\n", "f.csv:4:1: weight is missing from the header; expected " + Columns },
        { Label + "weight_g\n150\n400\n", "f.csv:4:1: age is missing from the header; expected " + Columns },
        { Label + "age_d,weight_g\n7,150\n14,4OO\n", "f.csv:6:4: weight_g \"4OO\" is not a number; expected a weight above 0 in g" },
        { Label + "age_d,weight_g\n7,150\n-14,400\n", "f.csv:6:1: age_d \"-14\" is below 0; expected an age of 0 or more in d" },
        { Label + "age_d,weight_g\n7,150\n14\n", "f.csv:6:1: row has 1 cells; expected 2 cells, as in the header" },
        { Label + "age_d,weight_g\n7,150\n7,151\n", "f.csv:6:3: weight_g \"151\" is of the same age as line 5; expected every age once" },
        { Label + "age_d,weight_g\n14,150\n7,400\n", "f.csv:5:4: weight_g \"150\" is less than the younger birds weigh in line 6; expected a weight that does not fall with age" },
    };

    [Theory]
    [InlineData("age_d,weight_g\n7,150\n14,400\n")]
    [InlineData("AGE_WK;weight_kg\n2;0.400\n1;0.150\n")]
    [InlineData("age_d,weight_g,\n7,150,\n14,400,\n")]
    public void A_table_is_read_with_its_label(string table)
    {
        StandardReading reading = Read(Label + table);

        reading.Problems.Should().BeEmpty();
        (reading.Name, reading.Year, reading.ToString()).Should().Be(("Made up, males", 2022, "f.csv: Made up, males, 2022"));
        reading.Standard!.Model.Name.Should().Be("Made up, males, 2022");
        reading.Standard.Model.Citations[0].Should().Match<Citation>(
            source => source.ToString() == "A page that nobody printed, as typed into f.csv" && source.HowKnown == HowKnown.Secondary);
        reading.Standard.Cautions.Should().Equal(GrowthStandard.Target);
        reading.Standard.WeightAt(Age.FromDays(7)).Grams.Should().BeApproximately(150, 1e-9);
        reading.Standard.WeightAt(Age.FromDays(14)).Grams.Should().BeApproximately(400, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_standard_is_refused_with_one_exact_message(string text, string message)
    {
        StandardReading reading = Read(text);

        (reading.Standard, reading.Name, reading.Year).Should().Be((null, null, null));
        reading.Problems.Select(problem => problem.ToString()).Should().Equal(message);
    }

    [Fact]
    public void All_problems_are_told_in_one_pass()
    {
        StandardReading reading = Read("# year: 22\nage_d,weight_g\n7,x\n14,400\n21,390\n");

        reading.Problems.Select(problem => (problem.Line, problem.Field)).Should().Equal((0, "name"), (0, "source"), (1, "year"), (3, "weight_g"), (5, "weight_g"));
        reading.ToString().Should().Be("f.csv: 5 problems");
    }

    [Fact]
    public void A_missing_file_is_a_problem_and_not_an_exception() => StandardFile.Read("none.csv").Problems.Should().ContainSingle()
        .Which.ToString().Should().Be("none.csv: file does not exist; expected a text file in UTF-8 of at most 50 MB");

    private static StandardReading Read(string text) => StandardFile.ReadText(new StringReader(text), "f.csv");
}
