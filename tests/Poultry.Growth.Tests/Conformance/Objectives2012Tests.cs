using Poultry.Growth.Curves;
using Poultry.Growth.Tests.Curves;

namespace Poultry.Growth.Tests.Conformance;

public class Objectives2012Tests
{
    [Fact]
    public void The_table_as_a_curve_puts_the_highest_gain_in_the_same_week()
    {
        Inflection table = CurveCase.Objective2012Females().Inflection!;
        table.Age.Days.Should().BeApproximately(Objectives2012.Females.Inflection!.Age.Days, 3.5, "half the distance of two rows");
        table.Gain.GramsPerDay.Should().BeApproximately((2550 - 1973) / 7.0, 2, "the largest weekly step is from 35 to 42 d");
    }
}
