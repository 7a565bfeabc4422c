using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Curves;

/// <summary>A table as a curve; the rows are invented unless named otherwise.</summary>
public class TabulatedCurveTests
{
    private static readonly Citation Source = new("Farm", "Own weigh-ins, invented for this test", HowKnown.Assumption);

    [Fact]
    public void Rows_come_out_exactly_and_in_the_order_given()
    {
        (Age, Mass)[] rows = [Row(28, 1.4), Row(7, 0.18), Row(42, 2.6), Row(14, 0.46)];
        TabulatedCurve curve = TabulatedCurve.Of("Invented flock", Source, rows);
        curve.Rows.Select(row => row.Age.Days).Should().Equal(28, 7, 42, 14);
        curve.Rows.Select(row => row.Weight.Kilograms).Should().Equal(1.4, 0.18, 2.6, 0.46);
        foreach ((Age age, Mass weight) in rows)
        {
            curve.WeightAt(age).Kilograms.Should().Be(weight.Kilograms);
            curve.AgeAt(weight).Age.Should().Be(age);
        }
    }

    [Fact]
    public void The_order_of_the_rows_does_not_change_the_curve()
    {
        TabulatedCurve up = TabulatedCurve.Of("Up", Source, [Row(7, 0.18), Row(14, 0.46), Row(28, 1.4)]);
        TabulatedCurve down = TabulatedCurve.Of("Down", Source, [Row(28, 1.4), Row(14, 0.46), Row(7, 0.18)]);
        up.WeightAt(Age.FromDays(20)).Kilograms.Should().Be(down.WeightAt(Age.FromDays(20)).Kilograms);
        up.GainAt(Age.FromDays(20)).KilogramsPerDay.Should().Be(down.GainAt(Age.FromDays(20)).KilogramsPerDay);
    }

    [Fact]
    public void Two_rows_are_a_straight_line()
    {
        TabulatedCurve curve = TabulatedCurve.Of("Line", Source, [Row(10, 1), Row(20, 2)]);
        curve.WeightAt(Age.FromDays(13)).Kilograms.Should().BeApproximately(1.3, 1e-15);
        curve.GainAt(Age.FromDays(20)).KilogramsPerDay.Should().BeApproximately(0.1, 1e-16);
        curve.Inflection.Should().BeNull("gain is the same everywhere");
    }

    [Theory]
    [InlineData(6.9), InlineData(42.1)]
    public void It_says_nothing_outside_its_rows(double days)
    {
        TabulatedCurve curve = TabulatedCurve.Of("Invented flock", Source, [Row(7, 0.18), Row(42, 2.6)]);
        Action[] questions =
        [
            () => curve.WeightAt(Age.FromDays(days)),
            () => curve.GainAt(Age.FromDays(days)),
            () => curve.RelativeGainAt(Age.FromDays(days)),
        ];
        foreach (Action question in questions)
        {
            question.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age")
                .WithMessage(FormattableString.Invariant($"{days} d is not allowed; the table covers 7 to 42 d.*"));
        }
    }

    [Fact]
    public void A_weight_beyond_either_end_has_no_age_but_a_reason()
    {
        TabulatedCurve curve = TabulatedCurve.Of("Invented flock", Source, [Row(7, 0.18), Row(42, 2.6)]);
        AgeAtWeight above = curve.AgeAt(Mass.FromKilograms(2.7));
        AgeAtWeight below = curve.AgeAt(Mass.FromGrams(100));
        above.Status.Should().Be(AgeAtWeightStatus.BeyondTable);
        above.Explanation.Should().Be("The table ends at 42 d below 2.7 kg (5.95 lb).");
        below.Status.Should().Be(AgeAtWeightStatus.BeforeTable);
        below.Explanation.Should().Be("The table starts at 7 d above 100 g (3.53 oz).");
        (above.Age ?? below.Age).Should().BeNull();
    }

    [Fact]
    public void A_weight_that_stands_still_is_reached_when_first_reached()
    {
        TabulatedCurve curve = TabulatedCurve.Of("Plateau", Source, [Row(7, 0.2), Row(14, 0.5), Row(21, 0.5), Row(28, 0.9)]);
        curve.AgeAt(Mass.FromGrams(500)).Age.Should().Be(Age.FromDays(14));
        curve.WeightAt(Age.FromDays(17)).Kilograms.Should().BeApproximately(0.5, 1e-15);
        curve.GainAt(Age.FromDays(17)).KilogramsPerDay.Should().BeApproximately(0, 1e-16);
    }

    [Fact]
    public void Tables_that_cannot_be_a_curve_are_refused_with_the_row()
    {
        Refuses(() => Of(Row(7, 0.2)), "*two rows or more; 1 given*");
        Refuses(() => Of(Row(7, 0.2), Row(14, 0.5), Row(7, 0.3)), "7 d stands in the table twice*");
        Refuses(() => Of(Row(7, 0.2), Row(21, 0.4), Row(14, 0.5)), "The weight falls from 500 g (17.64 oz) at 14 d to 400 g (14.11 oz) at 21 d; expected no fall.*");
        Refuses(() => Of(Row(7, 0), Row(14, 0.5)), "0 kg is not allowed; expected above 0 kg*");
    }

    [Fact]
    public void A_table_without_name_or_source_is_refused()
    {
        Action nameless = () => TabulatedCurve.Of(" ", Source, [Row(7, 0.2), Row(14, 0.5)]);
        Action sourceless = () => TabulatedCurve.Of("Hearsay", null!, [Row(7, 0.2), Row(14, 0.5)]);
        nameless.Should().Throw<ArgumentException>().WithParameterName("name");
        sourceless.Should().Throw<ArgumentNullException>().WithParameterName("source");
    }

    [Fact]
    public void It_carries_its_name_its_source_its_ages_and_its_cautions()
    {
        Caution target = new("target", "An objective, not an average.");
        TabulatedCurve curve = TabulatedCurve.Of("Invented objective, 2031", Source, [Row(7, 0.2), Row(14, 0.5)], target);
        curve.Model.Name.Should().Be("Invented objective, 2031");
        curve.Model.Citations[0].Should().BeSameAs(Source);
        curve.Model.HowKnown.Should().Be(HowKnown.Assumption);
        curve.Model.Ranges.Single().ToString().Should().Be("age 7 to 14 d");
        curve.Cautions.Should().Equal(target);
        curve.MatureWeight.Should().BeNull();
    }

    private static (Age Age, Mass Weight) Row(double days, double kilograms) => (Age.FromDays(days), Mass.FromKilograms(kilograms));

    private static TabulatedCurve Of(params (Age Age, Mass Weight)[] rows) => TabulatedCurve.Of("Refused", Source, rows);

    private static void Refuses(Action make, string message) =>
        make.Should().Throw<ArgumentException>().WithParameterName("rows").WithMessage(message);
}
