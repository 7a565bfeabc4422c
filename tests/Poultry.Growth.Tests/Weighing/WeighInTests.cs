using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Weighing;

public sealed class WeighInTests
{
    private static readonly Age Week = Age.FromDays(7);

    [Fact]
    public void Single_birds_give_mean_and_sample_standard_deviation()
    {
        WeighIn weighIn = WeighIn.Birds(Week, Mass.FromGrams(160), Mass.FromGrams(170), Mass.FromGrams(180));

        weighIn.Kind.Should().Be(WeighInKind.Birds);
        weighIn.BirdsWeighed.Should().Be(3);
        weighIn.MeanWeight.Grams.Should().BeApproximately(170, 1e-9);
        weighIn.StandardDeviation!.Value.Grams.Should().BeApproximately(10, 1e-9);
        weighIn.CoefficientOfVariation.Should().BeApproximately(10.0 / 170, 1e-12);
        weighIn.Weights.Select(weight => weight.Kilograms).Should().Equal(0.160, 0.170, 0.180);
        weighIn.Sex.Should().Be(Sex.Mixed);
        weighIn.Note.Should().BeNull();
    }

    [Fact]
    public void A_mean_keeps_what_it_was_given()
    {
        WeighIn weighIn = WeighIn.Mean(Week, Mass.FromPounds(1), birds: 20, standardDeviation: Mass.FromOunces(1.6)).Of(Sex.Male).Noted("pen 2");

        weighIn.Kind.Should().Be(WeighInKind.Mean);
        weighIn.MeanWeight.Kilograms.Should().BeApproximately(0.45359237, 1e-15);
        weighIn.CoefficientOfVariation.Should().BeApproximately(0.1, 1e-12);
        weighIn.Weights.Should().BeEmpty();
        weighIn.Sex.Should().Be(Sex.Male);
        weighIn.Note.Should().Be("pen 2");
        weighIn.ToString().Should().Be("7 d: 20 birds, mean 453.6 g (16 oz), SD 45.4 g (1.6 oz)");
    }

    [Fact]
    public void A_group_on_one_scale_has_a_mean_and_no_spread()
    {
        WeighIn weighIn = WeighIn.Group(Age.FromDays(21), total: Mass.FromKilograms(17.4), birds: 20);

        weighIn.MeanWeight.Kilograms.Should().BeApproximately(0.87, 1e-12);
        weighIn.StandardDeviation.Should().BeNull();
        weighIn.CoefficientOfVariation.Should().BeNull();
    }

    [Fact]
    public void One_bird_has_no_standard_deviation()
    {
        WeighIn.Birds(Week, Mass.FromGrams(171)).StandardDeviation.Should().BeNull();
        FluentActions.Invoking(() => WeighIn.Mean(Week, Mass.FromGrams(171), 1, Mass.FromGrams(9)))
            .Should().Throw<ArgumentException>().WithMessage("*expected at least 2 birds*");
    }

    [Fact]
    public void What_makes_no_sense_is_refused_with_its_value_and_range()
    {
        FluentActions.Invoking(() => WeighIn.Birds(Week)).Should().Throw<ArgumentException>().WithMessage("*at least one*");
        FluentActions.Invoking(() => WeighIn.Birds(Week, Mass.FromGrams(171), Mass.FromGrams(-3)))
            .Should().Throw<ArgumentOutOfRangeException>().WithMessage("-0.003 kg is not allowed; expected above 0 kg.*weights?1?*");
        FluentActions.Invoking(() => WeighIn.Mean(Week, Mass.Zero, 3)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*mean*");
        FluentActions.Invoking(() => WeighIn.Mean(Week, Mass.FromGrams(171), 0))
            .Should().Throw<ArgumentOutOfRangeException>().WithMessage("0 birds is not allowed; expected 1 to 1000000 birds.*");
        FluentActions.Invoking(() => WeighIn.Mean(Week, Mass.FromGrams(171), 3, Mass.Zero)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => WeighIn.Group(Week, Mass.FromTonnes(2000), 3)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*total*");
    }

    [Fact]
    public void What_was_saved_is_held_against_the_same_bounds()
    {
        static WeighInRecord Record(double mean = 2, double? deviation = null, Sex sex = Sex.Mixed, params double[] single) => new()
        {
            Kind = single.Length > 0 ? WeighInKind.Birds : WeighInKind.Mean, AgeDays = 7, Birds = Math.Max(1, single.Length), MeanKilograms = mean, StandardDeviationKilograms = deviation, Kilograms = single, Sex = sex,
        };

        WeighIn.FromRecord(Record()).MeanWeight.Kilograms.Should().Be(2);
        FluentActions.Invoking(() => WeighIn.FromRecord(Record(mean: 1e7))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("MeanKilograms").WithMessage("10000000 kg is not allowed; expected 1E-06 to 1000000 kg.*");
        FluentActions.Invoking(() => WeighIn.FromRecord(Record(deviation: 1e7))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("StandardDeviationKilograms");
        FluentActions.Invoking(() => WeighIn.FromRecord(Record(single: [1e-7]))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("Kilograms");
        FluentActions.Invoking(() => WeighIn.FromRecord(Record(sex: (Sex)9))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("Not a named value*");
    }
}
