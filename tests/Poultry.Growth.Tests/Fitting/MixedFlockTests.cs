using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>Cockerels and pullets together are two curves.</summary>
public class MixedFlockTests
{
    private static readonly GrowthPrior Prior = GrowthPrior.FastGrowingOutdoor(Sex.Mixed);
    private static readonly Age EightWeeks = Age.FromWeeks(8);

    private static readonly WeighInSeries Mixed = WeighInSeries.Of(
        WeighIn.Mean(Age.FromDays(21), Mass.FromGrams(620), 40), WeighIn.Mean(Age.FromDays(35), Mass.FromGrams(1400), 40));

    [Fact]
    public void The_sexes_lie_about_the_mean_as_the_tables_say()
    {
        Projection flock = Projection.Of(Mixed, Prior);
        double males = flock.MeanOf(Sex.Male, EightWeeks).Value.Kilograms;
        double females = flock.MeanOf(Sex.Female, EightWeeks).Value.Kilograms;

        (females / males).Should().BeApproximately(SexDimorphism.FemaleRatioAt(EightWeeks), 1e-12);
        ((females + males) / 2).Should().BeApproximately(flock.MeanAt(EightWeeks).Value.Kilograms, 1e-12);
    }

    /// <summary>Growth evidence: 9 % within each sex is 9.1, 10.3, 11.8, 12.8 and 13.3 % together at 14, 28, 42, 56 and 63 d by the objectives of 2012; the mean of three tables is within 1.1 points of that.</summary>
    [Theory]
    [InlineData(14, 9.1), InlineData(28, 10.3), InlineData(42, 11.8), InlineData(56, 12.8), InlineData(63, 13.3)]
    public void A_mixed_flock_drifts_apart(double days, double percent)
    {
        FlockSpread spread = new(Sex.Mixed, null, new ProjectionOptions { CoefficientOfVariation = 0.09 });

        (100 * Math.Sqrt(spread.Squared(Sex.Mixed, days))).Should().BeApproximately(percent, 1.1);
    }

    [Fact]
    public void Pullets_alone_tell_of_the_whole_flock()
    {
        double ratio = SexDimorphism.FemaleRatioAt(Age.FromDays(35));
        WeighInSeries pullets = WeighInSeries.Of(WeighIn.Mean(Age.FromDays(35), Mass.FromGrams(1400 * 2 * ratio / (1 + ratio)), 1_000_000).Of(Sex.Female));
        WeighInSeries all = WeighInSeries.Of(WeighIn.Mean(Age.FromDays(35), Mass.FromGrams(1400), 1_000_000));

        Projection.Of(pullets, Prior).MeanAt(EightWeeks).Value.Kilograms
            .Should().BeApproximately(Projection.Of(all, Prior).MeanAt(EightWeeks).Value.Kilograms, 1e-6);
    }

    [Fact]
    public void A_random_catch_adds_the_chance_of_the_sexes()
    {
        // Within a sex c, between the sexes b: a random bird has c² (1 + b²) + b², and a mean of n a part of n of that.
        FlockSpread spread = new(Sex.Mixed, null, new ProjectionOptions { CoefficientOfVariation = 0.10 });
        double ratio = SexDimorphism.FemaleRatioAt(EightWeeks);
        double between = (1 - ratio) / (1 + ratio);

        spread.Squared(Sex.Mixed, 56).Should().BeApproximately((0.01 * (1 + (between * between))) + (between * between), 1e-12);
        spread.Squared(Sex.Male, 56).Should().BeApproximately(0.01, 1e-15);
        (between / Math.Sqrt(20)).Should().BeApproximately(0.02, 0.001, "growth evidence: a catch of 20 is worth about 2 % of the mean at 56 d");
    }

    [Fact]
    public void Bands_of_a_mixed_flock_sum_to_1_and_are_wider_than_those_of_one_sex()
    {
        Projection mixed = Projection.Of(Mixed, Prior);
        IReadOnlyList<WeightBand> bands = mixed.ShareInBands(EightWeeks, Mass.FromKilograms(2), Mass.FromKilograms(2.5), Mass.FromKilograms(3));

        bands.Sum(band => band.Share.Fraction).Should().BeApproximately(1, 1e-12);
        mixed.UniformityAt(EightWeeks).Should().BeLessThan(Projection.Of(Mixed, GrowthPrior.FastGrowingOutdoor(Sex.Male)).UniformityAt(EightWeeks));
        mixed.UniformityAt(EightWeeks).Should().BeLessThan(mixed.UniformityAt(Age.FromDays(14)));
    }

    [Fact]
    public void More_cockerels_make_a_heavier_flock()
    {
        double Mean(double maleShare) => Projection.Of(Prior, new ProjectionOptions { MaleShare = maleShare }).MeanAt(EightWeeks).Value.Kilograms;

        Mean(0.7).Should().BeGreaterThan(Mean(0.5));
    }

    [Fact]
    public void Birds_closer_together_than_the_sexes_are_doubted()
    {
        WeighInSeries alike = WeighInSeries.Of(WeighIn.Mean(Age.FromDays(42), Mass.FromGrams(1900), 40, Mass.FromGrams(60)));
        Projection flock = Projection.Of(alike, Prior);

        flock.CoefficientOfVariation.Should().Be(0.05);
        flock.Cautions.Should().Contain(caution => caution.Code == "spread-less-than-sexes");
    }
}
