using System.Text;
using Poultry.Growth.Files;

namespace Poultry.Growth.Tests.Files;

/// <summary>Every kind of broken file is refused with its line, its column, what stands there and what was expected.</summary>
public sealed class BrokenWeighInFilesTests
{
    private const string ByAge = "age_d,weight_g\n";
    private const string ByMean = "age_d,mean_weight_g,birds,sd_g\n";
    private const string ByGroup = "age_d,total_weight_kg,birds\n";
    private const string ByDate = "# placed: 2027-04-12\n# age_at_placement_d: 1\ndate,weight_g\n";

    public static TheoryData<string, string> Cells => new()
    {
        // Cells that are no weights.
        { ByAge + "7,41O\n", "f.csv:2:3: weight_g \"41O\" is not a number; expected a weight above 0 in g" },
        { ByAge + "7,NaN\n", "f.csv:2:3: weight_g \"NaN\" is not a finite number; expected a weight above 0 in g" },
        { ByAge + "7,-Infinity\n", "f.csv:2:3: weight_g \"-Infinity\" is not a finite number; expected a weight above 0 in g" },
        { ByAge + "7,-171\n", "f.csv:2:3: weight_g \"-171\" is below 0; expected a weight above 0 in g" },
        { ByAge + "7,0\n", "f.csv:2:3: weight_g \"0\" is 0; expected a weight above 0 in g" },
        { ByAge + "7,\n", "f.csv:2:3: weight_g \"\" is empty; expected a weight above 0 in g" },
        { ByAge + "7,1.7e2\n", "f.csv:2:3: weight_g \"1.7e2\" has an exponent; expected a weight above 0 in g" },
        { ByAge + "7,171g\n", "f.csv:2:3: weight_g \"171g\" carries a unit; expected a weight above 0 in g" },
        { ByAge + "7,\"1,71\"\n", "f.csv:2:3: weight_g \"1,71\" has a decimal comma; expected a weight above 0 in g with a decimal point" },
        { "age_d;weight_kg\n7;0,171\n", "f.csv:2:3: weight_kg \"0,171\" has a decimal comma; expected a weight above 0 in kg with a decimal point" },
        { ByAge + "7,9999999999999\n", "f.csv:2:3: weight_g \"9999999999999\" is too large; expected a weight above 0 in g" },
        { ByAge + "7,0.0000001\n", "f.csv:2:3: weight_g \"0.0000001\" is too small; expected a weight above 0 in g" },
        { "age_d,weight_lb_oz\n42,5:16\n", "f.csv:2:4: weight_lb_oz \"5:16\" has 16 ounces or more; expected a weight above 0 in pounds:ounces, as in 5:11" },
        { "age_d,weight_lb_oz\n42,5.7\n", "f.csv:2:4: weight_lb_oz \"5.7\" has no colon; expected a weight above 0 in pounds:ounces, as in 5:11" },
        { "age_d,weight_lb_oz\n42,5.5:1\n", "f.csv:2:4: weight_lb_oz \"5.5:1\" has a part of a pound before its ounces; expected a weight above 0 in pounds:ounces, as in 5:11" },
        { "age_d,weight_lb_oz\n42,0:0\n", "f.csv:2:4: weight_lb_oz \"0:0\" is 0; expected a weight above 0 in pounds:ounces, as in 5:11" },
        { "age_d,weight_lb_oz\n42,5:-3\n", "f.csv:2:4: weight_lb_oz \"5:-3\" is below 0; expected a weight above 0 in pounds:ounces, as in 5:11" },

        // Ages and dates.
        { ByAge + "-1,171\n", "f.csv:2:1: age_d \"-1\" is below 0; expected an age of 0 or more in d" },
        { ByAge + ",171\n", "f.csv:2:1: age_d \"\" is empty; expected an age of 0 or more in d" },
        { "age_wk,weight_g\none,171\n", "f.csv:2:1: age_wk \"one\" is not a number; expected an age of 0 or more in wk" },
        { ByDate + "2027-04-11,50\n", "f.csv:4:1: date \"2027-04-11\" lies before the chicks were placed; expected a date not before 2027-04-12" },
        { ByDate + "19.04.2027,171\n", "f.csv:4:1: date \"19.04.2027\" is not a date; expected a date as year, month and day, as in 2027-04-12" },
        { ByDate + "2027-02-30,171\n", "f.csv:4:1: date \"2027-02-30\" is not a date; expected a date as year, month and day, as in 2027-04-12" },
        { ByDate + ",171\n", "f.csv:4:1: date \"\" is empty; expected a date as year, month and day, as in 2027-04-12" },
        { "# age_at_placement_d: 1\ndate,weight_g\n2027-04-19,171\n", "f.csv:2:1: header \"date\" needs the day the chicks were placed; expected a line \"# placed: 2027-04-12\" in the file, or the option placed" },
        { "# placed: 2027-04-12\ndate,weight_g\n2027-04-19,171\n", "f.csv:2:1: header \"date\" needs the age of the chicks when placed; expected a line \"# age_at_placement_d: 1\" in the file, or the option age-at-placement" },
        { "# placed: April\n" + ByAge + "7,171\n", "f.csv:1:11: placed \"April\" is not a date; expected a date as year, month and day, as in 2027-04-12" },
        { "# age_at_placement_d: -2\n" + ByAge + "7,171\n", "f.csv:1:23: age_at_placement_d \"-2\" is below 0; expected an age of 0 or more in d" },
        { "# placed: 2027-04-12\n# placed: 2027-04-13\n" + ByAge + "7,171\n", "f.csv:2:11: placed \"2027-04-13\" is stated a second time; expected one line placed" },

        // Means and groups.
        { ByMean + "7,171,0,9\n", "f.csv:2:7: birds \"0\" is below 1; expected a whole number of birds, 1 to 1000000" },
        { ByMean + "7,171,2.5,9\n", "f.csv:2:7: birds \"2.5\" is not a whole number; expected a whole number of birds, 1 to 1000000" },
        { ByMean + "7,171,,9\n", "f.csv:2:7: birds \"\" is empty; expected a whole number of birds, 1 to 1000000" },
        { ByMean + "7,171,20000000,9\n", "f.csv:2:7: birds \"20000000\" is too many; expected a whole number of birds, 1 to 1000000" },
        { ByMean + "7,171,1,9\n", "f.csv:2:9: sd_g \"9\" is the spread of a single bird; expected nothing, or 2 birds or more" },
        { ByMean + "7,171,20,-9\n", "f.csv:2:10: sd_g \"-9\" is below 0; expected a standard deviation above 0 in g, or nothing where it is not known" },
        { ByMean + "7,171,20,9\n14,440,20,\n7,171,20,9\n", "f.csv:4:3: mean weight \"171\" repeats line 2 exactly; expected every weigh-in once" },
        { ByGroup + "21,-17,20\n", "f.csv:2:4: total_weight_kg \"-17\" is below 0; expected a total weight above 0 in kg" },
        { ByGroup + "21,0.001,999999\n", "f.csv:2:4: total_weight_kg \"0.001\" is too small for so many birds; expected a total weight above 0 in kg" },
        { "age_d,weight_g,total_weight_kg,birds,mean_weight_g,sd_g\n7,171,,,,12\n", "f.csv:2:10: sd_g \"12\" has no mean beside it; expected nothing, or a mean in mean_weight_<unit>" },
        { "age_d,weight_g,mean_weight_g,birds\n7,171,168,20\n", "f.csv:2:7: mean_weight_g \"168\" stands beside weight_g; expected one kind of weight in a row" },
        { "age_d,weight_g,mean_weight_g,birds\n7,171,,20\n", "f.csv:2:8: birds \"20\" stands beside a single bird; expected nothing or 1; a mean goes into mean_weight_<unit>, a group into total_weight_<unit>" },
        { "age_d,weight_g,sex\n7,171,hen\n", "f.csv:2:7: sex \"hen\" is no known sex; expected male, female, mixed or nothing" },

        // Rows.
        { ByAge + "7\n", "f.csv:2:1: row has 1 cells; expected 2 cells, as in the header" },
        { ByAge + "7,0,171\n", "f.csv:2:5: row \"171\" has 3 cells; expected 2 cells, as in the header (a decimal comma, or a comma in a note without quotes?)" },
        { "age_d,weight_g,note\n7,171,\"pen 2\n14,440,\n", "f.csv:2:7: cell \"pen 2?14,440,?\" starts with a quote that never ends; expected a closing quote" },
        { "age_d,weight_g,note\n7,171,\"pen\" 2\n", "f.csv:2:7: cell \"pen\" goes on after its closing quote; expected a quote within a quoted cell to be doubled" },

        // Headers.
        { "age_d,weight_g,weight_g\n7,171,171\n", "f.csv:1:16: header \"weight_g\" stands there twice; expected every column once" },
        { "age_d,weight_g,weight_kg\n7,171,\n", "f.csv:1:16: header \"weight_kg\" says the same as weight_g; expected one of the two" },
        { "age_d,weight_st\n7,171\n", "f.csv:1:7: header \"weight_st\" has an unknown unit; expected weight_g, weight_kg, weight_lb, weight_oz or weight_lb_oz" },
        { "age_d,weight\n7,171\n", "f.csv:1:7: header \"weight\" has no unit; expected weight_g, weight_kg, weight_lb, weight_oz or weight_lb_oz" },
        { "age,weight_g\n7,171\n", "f.csv:1:1: header \"age\" has no unit; expected age_d or age_wk" },
        { "age_months,weight_g\n7,171\n", "f.csv:1:1: header \"age_months\" has an unknown unit; expected age_d or age_wk" },
        { "age_d,weight_g,sdd_g\n7,171,\n", "f.csv:1:16: header \"sdd_g\" is no known column; expected age_d, age_wk or date; weight_<unit>, or mean_weight_<unit> with birds and sd_<unit>, or total_weight_<unit> with birds; sex; note; <unit> is g, kg, lb, oz or lb_oz" },
        { "age_d,,weight_g\n7,,171\n", "f.csv:1:7: header \"\" is a column without a name; expected age_d, age_wk or date; weight_<unit>, or mean_weight_<unit> with birds and sd_<unit>, or total_weight_<unit> with birds; sex; note; <unit> is g, kg, lb, oz or lb_oz" },
        { "weight_g,note\n171,\n", "f.csv:1:1: age is missing from the header; expected a column age_d, age_wk or date" },
        { "age_d,note\n7,\n", "f.csv:1:1: weight is missing from the header; expected a column weight_<unit>, mean_weight_<unit> or total_weight_<unit>; <unit> is g, kg, lb, oz or lb_oz" },
        { "age_d,mean_weight_g\n7,171\n", "f.csv:1:1: birds is missing from the header; expected a column birds beside mean_weight_g" },
        { "age_d,weight_g,sd_g\n7,171,\n", "f.csv:1:16: header \"sd_g\" has no mean beside it; expected a column mean_weight_<unit> too" },
        { "# placed: 2027-04-12\n# age_at_placement_d: 1\nage_d,date,weight_g\n7,2027-04-18,171\n", "f.csv:3:7: header \"date\" stands beside another column of age; expected either an age or a date" },

        // Files.
        { "", "f.csv:1:1: file is empty; expected a header and at least one row: age_d, age_wk or date; weight_<unit>, or mean_weight_<unit> with birds and sd_<unit>, or total_weight_<unit> with birds; sex; note; <unit> is g, kg, lb, oz or lb_oz" },
        { "\n  \n# nothing\n", "f.csv:1:1: file is empty; expected a header and at least one row: age_d, age_wk or date; weight_<unit>, or mean_weight_<unit> with birds and sd_<unit>, or total_weight_<unit> with birds; sex; note; <unit> is g, kg, lb, oz or lb_oz" },
        { ByAge, "f.csv:1:1: file has no rows below the header; expected at least one row" },
        { ByAge + "7,17\01\n", "f.csv:2:5: text holds a zero byte; expected text, not a program's own format" },
    };

    [Theory]
    [MemberData(nameof(Cells))]
    public void A_broken_file_is_refused_with_one_exact_message(string text, string message)
    {
        WeighInReading reading = WeighInFile.ReadText(new StringReader(text), "f.csv");

        reading.Series.Should().BeNull();
        reading.Suspicions.Should().BeEmpty();
        reading.Problems.Select(problem => problem.ToString()).Should().Equal(message);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x61, 0x00 }, "f.csv:1:1: text is in UTF-16; expected UTF-8: save it as \"CSV UTF-8\"")]
    [InlineData(new byte[] { 0x61, 0x0A, 0x62, 0xE9, 0x0A }, "f.csv:2:2: text is not UTF-8; expected UTF-8: save it as \"CSV UTF-8\"")]
    [InlineData(new byte[] { 0x50, 0x4B, 0x03, 0x04, 0x00, 0x00 }, "f.csv:1:5: text holds a zero byte; expected text, not a program's own format")]
    public void A_file_that_is_not_text_is_refused(byte[] bytes, string message)
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        File.WriteAllBytes(Path.Combine(folder, "f.csv"), bytes);

        WeighInFile.Read(Path.Combine(folder, "f.csv")).Problems.Select(problem => problem.ToString()).Should().Equal(message);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void A_missing_file_and_a_folder_are_problems_and_not_exceptions()
    {
        string folder = Directory.CreateTempSubdirectory("weigh-ins").FullName;

        WeighInFile.Read(Path.Combine(folder, "none.csv")).Problems.Should().ContainSingle()
            .Which.ToString().Should().Be("none.csv: file does not exist; expected a text file in UTF-8 of at most 50 MB");
        WeighInFile.Read(folder).Problems.Should().ContainSingle().Which.Fault.Should().Be("is a folder");
        WeighInFile.Read("").Problems.Should().ContainSingle().Which.Fault.Should().StartWith("cannot be read");
        Directory.Delete(folder);
    }

    [Fact]
    public void All_problems_are_told_in_one_pass_and_in_the_order_of_the_file()
    {
        const string Text = "age_d,weight_g,colour\n7,x\n-7,y,red\n14,440,\n\n# note\n21,,\n28,1480,\"open\n";

        WeighInReading reading = WeighInFile.ReadText(new StringReader(Text), "f.csv");

        reading.Problems.Select(problem => (problem.Line, problem.Column, problem.Field)).Should().Equal(
            (1, 16, "header"), (2, 1, "row"), (3, 1, "age_d"), (3, 4, "weight_g"), (7, 4, "weight_g"), (8, 9, "cell"));
        reading.ToString().Should().Be("f.csv: 6 problems");
    }

    [Theory]
    [InlineData(73, "... and 23 more problems")]
    [InlineData(51, "... and 1 more problem")]
    public void The_first_fifty_problems_are_printed_and_the_rest_counted(int problems, string last)
    {
        StringBuilder text = new(ByAge);
        text.Insert(text.Length, "7,x\n", problems);

        IReadOnlyList<string> lines = FileProblem.Lines(WeighInFile.ReadText(new StringReader(text.ToString()), "f.csv").Problems);

        lines.Should().HaveCount(51);
        lines[50].Should().Be(last);
    }

    [Fact]
    public void Weeks_that_no_number_of_days_holds_are_too_many() => WeighInFile.ReadText(new StringReader("age_wk,weight_g\n" + new string('9', 308) + ",200\n"), "f.csv")
        .Problems.Should().ContainSingle().Which.Fault.Should().Be("is too large");

    [Theory]
    [InlineData("Age", null, null, "", "f.csv:1:1: age-column \"Age\" is not in the header; expected one of Chick, Time, weight")]
    [InlineData("Time", "weight", null, "", "f.csv:1:12: header \"weight\" has no unit; expected a name that ends in _g, _kg, _lb, _oz or _lb_oz, or the option weight-unit")]
    [InlineData("Time", "weight", WeightUnit.Gram, "Chick", "f.csv: where \"Chick\" has no equals sign; expected column=value, as in Chick=1")]
    [InlineData("Time", "weight", WeightUnit.Gram, "Hen=1", "f.csv: where \"Hen=1\" names no column of the header; expected column=value, as in Chick=1")]
    [InlineData("Time", "weight", WeightUnit.Gram, "Chick=9", "f.csv:1:1: file has no row that fits Chick=9; expected at least one row")]
    public void Options_that_do_not_fit_the_file_are_problems(string age, string? weight, WeightUnit? unit, string where, string message)
    {
        WeighInFileOptions options = new() { AgeColumn = age, WeightColumn = weight, WeightUnit = unit, Where = where.Length == 0 ? [] : [where] };

        WeighInReading reading = WeighInFile.ReadText(new StringReader("Chick,Time,weight\n1,0,42\n"), "f.csv", options);

        reading.Problems.Select(problem => problem.ToString()).Should().Contain(message);
        reading.Series.Should().BeNull();
    }

    [Fact]
    public void A_unit_without_its_column_is_a_problem() =>
        WeighInFile.ReadText(new StringReader(ByAge + "7,171\n"), "f.csv", new() { WeightUnit = WeightUnit.Pound, AgeUnit = AgeUnit.Week })
            .Problems.Select(problem => problem.ToString()).Should().Equal(
                "f.csv: age-unit has no column to go with; expected the option age-column too",
                "f.csv: weight-unit has no column to go with; expected the option weight-column too");
}
