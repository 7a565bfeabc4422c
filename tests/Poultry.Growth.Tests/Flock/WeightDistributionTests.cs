using CsCheck;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Flock;

public class WeightDistributionTests
{
    private static readonly WeightDistribution Mixed =
        WeightDistribution.OfSexes(Mass.FromKilograms(3), Mass.FromKilograms(2.4), Probability.FromFraction(0.5), 0.09);

    private static readonly Gen<WeightDistribution> Any =
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[0.5, 5], Gen.Double[0.05, 0.95], Gen.Double[0.02, 0.25],
            (male, female, males, spread) => WeightDistribution.OfSexes(Mass.FromKilograms(male), Mass.FromKilograms(female), Probability.FromFraction(males), spread));

    [Fact]
    public void A_mixed_flock_spreads_by_its_sexes_too()
    {
        Mixed.Mean.Kilograms.Should().BeApproximately(2.7, 1e-12);

        // Means 0.3 kg off the flock's either way, and 9 % within: sqrt(0.09 + (0.27^2 + 0.216^2)/2)/2.7.
        Mixed.CoefficientOfVariation.Should().BeApproximately(Math.Sqrt(0.09 + (((0.27 * 0.27) + (0.216 * 0.216)) / 2)) / 2.7, 1e-12);
    }

    [Fact]
    public void Ten_percent_about_the_mean_hold_what_the_normal_says()
    {
        WeightDistribution one = WeightDistribution.Of(Mass.FromKilograms(2), 0.10);

        // Tables of the normal: 68.27 % lie within one standard deviation.
        (one.ShareBelow(Mass.FromKilograms(2.2)).Fraction - one.ShareBelow(Mass.FromKilograms(1.8)).Fraction).Should().BeApproximately(0.6827, 0.00005);
    }

    [Fact]
    public void Quantile_and_share_are_inverse() => Gen.Select(Any, Gen.Double[0.01, 0.99]).Sample((flock, share) =>
        Math.Abs(flock.ShareBelow(flock.WeightAt(Probability.FromFraction(share))).Fraction - share) < 1e-9);

    [Fact]
    public void The_means_of_two_halves_make_the_mean() => Gen.Select(Any, Gen.Double[0.1, 0.9]).Sample((flock, share) =>
    {
        Mass cut = flock.WeightAt(Probability.FromFraction(share));
        double whole = (share * flock.MeanBetween(null, cut)!.Value.Kilograms) + ((1 - share) * flock.MeanBetween(cut, null)!.Value.Kilograms);
        return Math.Abs(whole - flock.Mean.Kilograms) < 1e-8;
    });

    [Fact]
    public void Heaviest_and_lightest_make_the_flock_again() => Gen.Select(Any, Gen.Double[0.05, 0.95], Gen.Double[0.4, 6]).Sample((flock, share, weight) =>
    {
        (WeightDistribution heavy, WeightDistribution light) = (flock.Heaviest(Probability.FromFraction(share)), flock.Lightest(Probability.FromFraction(1 - share)));
        Mass at = Mass.FromKilograms(weight);
        double mean = (share * heavy.Mean.Kilograms) + ((1 - share) * light.Mean.Kilograms), flockMean = flock.Mean.Kilograms;
        double Squares(WeightDistribution birds) => Math.Pow(birds.CoefficientOfVariation * birds.Mean.Kilograms, 2) + Math.Pow(birds.Mean.Kilograms - flockMean, 2);
        return Math.Abs(mean - flockMean) < 1e-8
            && Math.Abs((share * Squares(heavy)) + ((1 - share) * Squares(light)) - Squares(flock)) < 1e-8
            && Math.Abs((share * heavy.ShareBelow(at).Fraction) + ((1 - share) * light.ShareBelow(at).Fraction) - flock.ShareBelow(at).Fraction) < 1e-9
            && heavy.WeightAt(Probability.FromFraction(0.001)) >= light.WeightAt(Probability.FromFraction(0.999));
    });

    [Fact]
    public void The_heaviest_half_of_a_normal_has_the_half_normal_s_mean_and_spread()
    {
        // Half-normal: mean sigma sqrt(2/pi), variance sigma^2 (1 - 2/pi).
        WeightDistribution half = WeightDistribution.Of(Mass.FromKilograms(2), 0.10).Heaviest(Probability.FromPercent(50));

        half.Mean.Kilograms.Should().BeApproximately(2 + (0.2 * Math.Sqrt(2 / Math.PI)), 1e-9);
        half.CoefficientOfVariation.Should().BeApproximately(0.2 * Math.Sqrt(1 - (2 / Math.PI)) / half.Mean.Kilograms, 1e-9);
        half.ShareBelow(Mass.FromKilograms(2)).Fraction.Should().BeApproximately(0, 1e-9);
        half.Lightest(Probability.FromPercent(50)).WeightAt(Probability.FromPercent(99.9999)).Kilograms.Should().BeApproximately(2 + (0.2 * 0.674490), 1e-5, "the quarter above the median");
        half.MeanBetween(null, Mass.FromKilograms(1.9)).Should().BeNull();
    }

    [Fact]
    public void Birds_all_alike_lie_on_one_side_of_a_weight()
    {
        WeightDistribution alike = WeightDistribution.Of(Mass.FromKilograms(2), 0);

        alike.ShareBelow(Mass.FromKilograms(1.999)).Fraction.Should().Be(0);
        alike.ShareBelow(Mass.FromKilograms(2.001)).Fraction.Should().Be(1);
        alike.MeanBetween(Mass.FromKilograms(3), null).Should().BeNull();
        alike.WeightAt(Probability.FromFraction(0.95)).Kilograms.Should().BeApproximately(2, 1e-6);
        WeightDistribution.Of(Mass.FromGrams(300), 0).WeightAt(Probability.FromFraction(0.05)).Kilograms.Should().BeApproximately(0.3, 1e-6);
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        FluentActions.Invoking(() => WeightDistribution.Of(Mass.Zero, 0.1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*mean*");
        FluentActions.Invoking(() => WeightDistribution.Of(Mass.FromKilograms(2), 0.31)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*0 to 0.3*");
        FluentActions.Invoking(() => Mixed.WeightAt(Probability.FromFraction(1))).Should().Throw<ArgumentOutOfRangeException>();
    }

    /// <summary>Mean excess of a normal beyond z by the series of Mills' ratio, z + 1/z - 2/z³ + 10/z⁵ - 74/z⁷: at 8.4 it is 8.51589 (Abramowitz and Stegun 26.2.12).</summary>
    [Fact]
    public void The_mean_of_very_few_heavy_birds_keeps_its_digits() =>
        WeightDistribution.Of(Mass.FromKilograms(2.5), 0.10).MeanBetween(Mass.FromKilograms(2.5 + (8.4 * 0.25)), null)!.Value.Kilograms
            .Should().BeApproximately(2.5 + (0.25 * 8.51589), 1e-5);
}
