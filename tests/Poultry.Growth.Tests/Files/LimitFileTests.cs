using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Tests.Files;

/// <summary>A file of one's own limits is read like the library's table, or refused with every problem.</summary>
public class LimitFileTests
{
    private const string Header = "jurisdiction,instrument,edition,scope,quantity,operator,value,unit,mark,kind,subject,system,house,when,requires,step\n";
    private const string Columns = "jurisdiction, instrument, edition, scope, quantity, operator, value, unit, mark, kind; if wanted source, subject, system, house, when, requires, step";
    private const string Start = "our farm,Our own rule,2027,hot months,density,<=,";

    public static TheoryData<string, string> Broken => new()
    {
        { "", "f.csv:1:1: file is empty; expected a header and at least one row: " + Columns },
        { Header, "f.csv:1:1: file has no rows below the header; expected a header and at least one row: " + Columns },
        { "place," + Header + "x," + Start + "28,kg/m2,practice,scheme,,,,,,\n", "f.csv:1:1: header \"place\" is no column of this table; expected " + Columns },
        { Header.Replace(",unit,", ",units,", StringComparison.Ordinal) + Start + "28,kg/m2,practice,scheme,stocking-density,,,,,\n", "f.csv:1:63: header \"units\" is no column of this table (did you mean unit?); expected " + Columns },
        { Header + Start + "28 kg,kg/m2,practice,scheme,stocking-density,,,,,\n", "f.csv:2:50: value \"28 kg\" carries a unit; expected a number in the unit beside it" },
        { Header + Start + "28,kg,practice,scheme,stocking-density,,,,,\n", "f.csv:2:53: unit \"kg\" is no unit of stocking-density; expected kg/m2 or lb/ft2" },
        { Header + Start + "28,kg/m2,hearsay,scheme,stocking-density,,,,,\n", "f.csv:2:59: mark \"hearsay\" is unknown; expected law, abstract, derived, secondary, memory, practice, assumption" },
        { Header + Start + "28,kg/m2,practice,rule,stocking-density,,,,,\n", "f.csv:2:68: kind \"rule\" is unknown; expected law, code, scheme, advice" },
        { Header + Start + "28,kg/m2,practice,scheme,stocking-density,pasture,,,,\n", "f.csv:2:92: system \"pasture\" is unknown; expected indoor, barn, free-range, traditional-free-range, organic, shelter" },
        { Header + Start + "28,kg/m2,practice,scheme,stocking-density,,,many birds,,\n", "f.csv:2:94: when \"many birds\" is no condition; expected conditions such as flock-size>=500birds;bird-weight<1.6kg" },
        { Header + Start + "28,kg/m2,practice,scheme,stocking-density,,,bird-weight>2,,\n", "f.csv:2:94: when \"bird-weight>2\" has no unit of its subject; expected kg or g or lb" },
        { Header + Start + "28,kg/m2,practice,scheme,stocking-density,,,bird-weight>-2kg,,\n", "f.csv:2:94: when \"-2\" is below 0; expected 0 or more" },
        { Header + Start + "-28,kg/m2,practice,scheme,stocking-density,,,,,\n", "f.csv:2:50: value \"-28\" is below 0; expected 0 or more" },
        { Header + Start + "28,kg/m2,practice,scheme,stocking-density,,,,,first\n", "f.csv:2:96: step \"first\" is not a number; expected a whole number from 1 to 1000" },
        { Header + Start + "28,kg/m2,practice,scheme,,,,,,\n" + Start + "30,kg/m2,practice,law,,,,,,\n", "f.csv:3:68: kind \"law\" is another than in an earlier row of the same instrument; expected one kind an instrument" },
    };

    [Fact]
    public void A_rule_of_one_s_own_is_read_with_its_conditions()
    {
        Limit limit = Read(Header + Start + "5.5,lb/ft2,practice,scheme,stocking-density,shelter;free-range?,mobile,bird-weight>=5lb;bird-age>4wk?,shade,2\n").Limits.Should().ContainSingle().Which;

        limit.Value.Should().BeApproximately(26.853, 0.001);
        (limit.Printed, limit.HowKnown, limit.House, limit.Requires, limit.Step).Should().Be(("5.5 lb/ft2", HowKnown.CommonPractice, HouseKind.Mobile, "shade", 2));
        limit.Systems.Should().Equal(RearingSystem.Shelter);
        limit.UnsettledSystems.Should().Equal(RearingSystem.FreeRange);
        limit.When.Select(clause => clause.ToString()).Should().Equal("bird weight 2.268 kg (5 lb) or more", "bird age above 28 d");
        limit.When.Select(clause => clause.IsSettled).Should().Equal(true, false);
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_file_is_refused_with_one_exact_message(string text, string message)
    {
        LimitReading reading = Read(text);

        reading.Limits.Should().BeEmpty();
        reading.Problems.Select(problem => problem.ToString()).Should().Equal(message);
    }

    [Fact]
    public void All_problems_are_told_in_one_pass()
    {
        LimitReading reading = Read(Header + Start + "x,kg,hearsay,rule,stocking-density,pasture,tent,flock-size,,0\n,,2027,,,,,,,,,,,,,\n" + Start + "28\n");

        reading.Problems.Select(problem => problem.Line).Distinct().Should().Equal(2, 3, 4);
        reading.Problems.Where(problem => problem.Line == 2).Select(problem => problem.Field).Should().Equal("value", "mark", "kind", "system", "house", "when", "step");
        reading.ToString().Should().MatchRegex(@"^f\.csv: \d+ problems$");
    }

    [Fact]
    public void A_missing_file_is_a_problem_and_not_an_exception() => LimitFile.Read("none.csv").Problems.Should().ContainSingle()
        .Which.ToString().Should().Be("none.csv: file does not exist; expected a text file in UTF-8 of at most 50 MB");

    private static LimitReading Read(string text) => LimitFile.ReadText(new StringReader(text), "f.csv");
}
