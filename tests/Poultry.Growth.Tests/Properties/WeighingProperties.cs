using CsCheck;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Properties;

public sealed class WeighingProperties
{
    private static readonly Gen<double[]> Kilograms = Gen.Double[0.5, 5].Array[2, 60];

    [Fact]
    public void Pounds_in_equal_kilograms_in() => Kilograms.Sample(kilograms =>
    {
        WeighIn metric = WeighIn.Birds(Age.FromDays(42), kilograms.Select(weight => Mass.FromKilograms(weight)));
        WeighIn pounds = WeighIn.Birds(Age.FromDays(42), kilograms.Select(weight => Mass.FromPounds(weight / 0.45359237)));

        pounds.MeanWeight.Kilograms.Should().BeApproximately(metric.MeanWeight.Kilograms, 1e-9);
        pounds.StandardDeviation!.Value.Kilograms.Should().BeApproximately(metric.StandardDeviation!.Value.Kilograms, 1e-9);
    });

    [Fact]
    public void Cutting_a_weigh_in_in_two_leaves_the_uniformity_of_the_age() => Kilograms.Sample(kilograms =>
    {
        Mass[] weights = [.. kilograms.Select(weight => Mass.FromKilograms(weight))];
        Age age = Age.FromDays(42);
        WeighIn first = WeighIn.Birds(age, weights.AsSpan(0, 1)), second = WeighIn.Birds(age, weights.AsSpan(1));

        Uniformity whole = Uniformity.Of(WeighIn.Birds(age, weights)), parts = Uniformity.ByAge(WeighInSeries.Of(first, second)).Single();

        parts.CoefficientOfVariation.Should().BeApproximately(whole.CoefficientOfVariation!.Value, 1e-9);
        parts.Histogram.Sum(bin => bin.Birds).Should().Be(weights.Length);
    });

    [Fact]
    public void A_smaller_flock_or_a_wider_interval_never_takes_more_birds() =>
        Gen.Select(Gen.Double[0.03, 0.4], Gen.Double[0.01, 0.2], Gen.Int[2, 5000]).Sample((variation, precision, flock) =>
        {
            int birds = BirdsToWeigh.For(variation, precision, flock: flock);

            birds.Should().BeInRange(2, flock);
            birds.Should().BeLessThanOrEqualTo(BirdsToWeigh.For(variation, precision));
            BirdsToWeigh.For(variation, 1.2 * precision, flock: flock).Should().BeLessThanOrEqualTo(birds);
        });

    [Fact]
    public void A_mass_written_is_read_again_to_the_printed_digits() =>
        Gen.Select(Gen.Double[0, 20], Gen.Enum<WeightUnit>(), Gen.Int[0, 5]).Sample((kilograms, unit, decimals) =>
        {
            string text = QuantityText.Write(Mass.FromKilograms(kilograms), unit, decimals);

            QuantityText.TryMass(text, out Mass mass, out string? problem).Should().BeTrue(problem);
            mass.Kilograms.Should().BeApproximately(kilograms, 0.51 * Math.Pow(10, -decimals), "half a unit of the last digit, in no unit larger than kg");
        });
}
