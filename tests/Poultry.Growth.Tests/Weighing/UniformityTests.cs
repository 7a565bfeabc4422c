using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Weighing;

public sealed class UniformityTests
{
    /// <summary>Source: IASRI e-course, flock uniformity: 95 of 115 birds within 945 to 1155 g about a mean of 1050 g are 82.6 %.</summary>
    [Fact]
    public void The_share_within_a_tenth_of_the_mean_is_counted_with_both_bounds()
    {
        double[] grams = [.. Enumerable.Repeat(945.0, 40), .. Enumerable.Repeat(1155.0, 40), .. Enumerable.Repeat(1050.0, 15),
            .. Enumerable.Repeat(900.0, 10), .. Enumerable.Repeat(1200.0, 10)];

        Uniformity uniformity = Uniformity.Of(WeighIn.Birds(Age.FromDays(42), grams.Select(weight => Mass.FromGrams(weight))));

        uniformity.MeanWeight.Grams.Should().BeApproximately(1050, 1e-9);
        uniformity.Basis.Should().Be(UniformityBasis.Counted);
        uniformity.ShareWithinTenPercent.Should().BeApproximately(0.826, 0.0005);
    }

    /// <summary>Source: 2 Phi(10/CV) - 1, one decimal of a percent.</summary>
    [Theory]
    [InlineData(8, 78.9)]
    [InlineData(10, 68.3)]
    [InlineData(12, 59.5)]
    public void A_mean_with_its_spread_gives_the_share_of_a_normal_flock(double percent, double share)
    {
        WeighIn weighIn = WeighIn.Mean(Age.FromDays(42), Mass.FromKilograms(2), 30, Mass.FromKilograms(0.02 * percent));

        Uniformity uniformity = Uniformity.Of(weighIn);

        uniformity.Basis.Should().Be(UniformityBasis.NormalCurve);
        (100 * uniformity.ShareWithinTenPercent!.Value).Should().BeApproximately(share, 0.05);
        uniformity.Cautions.Should().Equal(Uniformity.CaughtBirds, Uniformity.MixedFlock);
        Uniformity.Of(weighIn.Of(Sex.Male)).Cautions.Should().Equal(Uniformity.CaughtBirds);
    }

    /// <summary>Source: R 4, t.test(c(2.1, 2.3, 2.2, 2.5, 1.9), conf.level = .9); of a flock of 20 with qt(.95, 4) sd sqrt(1/5 - 1/20).</summary>
    [Theory]
    [InlineData(null, 1.98681532137, 2.41318467863)]
    [InlineData(20, 2.01537665261, 2.38462334739)]
    public void The_mean_of_the_flock_lies_where_Students_t_says(int? flock, double low, double high)
    {
        Uniformity uniformity = Uniformity.Of(WeighIn.Birds(Age.FromDays(42), new[] { 2.1, 2.3, 2.2, 2.5, 1.9 }.Select(kilograms => Mass.FromKilograms(kilograms))));

        Interval<Mass> interval = uniformity.MeanInterval(0.90, flock);

        interval.Low!.Value.Kilograms.Should().BeApproximately(low, 1e-10);
        interval.High!.Value.Kilograms.Should().BeApproximately(high, 1e-10);
    }

    [Fact]
    public void The_mean_has_no_bounds_where_the_spread_is_unknown_or_wider_than_it()
    {
        Uniformity.Of(WeighIn.Group(Age.FromDays(42), Mass.FromKilograms(24), 10)).MeanInterval().Should().Be(Interval<Mass>.Of(null, null, 0.90));
        Uniformity.Of(WeighIn.Birds(Age.FromDays(42), [Mass.FromKilograms(1), Mass.FromKilograms(3)])).MeanInterval().Low.Should().BeNull();
    }

    [Fact]
    public void A_flock_smaller_than_the_sample_is_refused()
    {
        Action ask = () => Uniformity.Of(WeighIn.Birds(Age.FromDays(42), [Mass.FromKilograms(1), Mass.FromKilograms(1.1)])).MeanInterval(flock: 1);

        ask.Should().Throw<ArgumentOutOfRangeException>().WithMessage("*flock*");
    }

    [Fact]
    public void A_group_on_one_scale_says_nothing_of_the_spread()
    {
        Uniformity uniformity = Uniformity.Of(WeighIn.Group(Age.FromDays(42), Mass.FromKilograms(24), 10));

        uniformity.ShareWithinTenPercent.Should().BeNull();
        uniformity.Basis.Should().Be(UniformityBasis.Unknown);
        uniformity.Histogram.Should().BeEmpty();
        uniformity.ToString().Should().Be("42 d: 10 birds, mean 2.4 kg, spread unknown");
    }

    [Fact]
    public void Weigh_ins_of_one_age_are_one_heap_and_sexes_stay_apart()
    {
        double[] all = [2.0, 2.2, 2.4, 1.9, 2.6];
        Mass[] weights = [.. all.Select(weight => Mass.FromKilograms(weight))];
        Age age = Age.FromDays(42);
        WeighInSeries series = WeighInSeries.Of(
            WeighIn.Birds(age, weights.AsSpan(0, 3)), WeighIn.Birds(age, weights.AsSpan(3)), WeighIn.Mean(age, Mass.FromKilograms(1.8), 4).Of(Sex.Female));

        IReadOnlyList<Uniformity> byAge = Uniformity.ByAge(series);

        byAge.Select(uniformity => uniformity.Sex).Should().Equal(Sex.Mixed, Sex.Female);
        Uniformity heap = byAge[0], whole = Uniformity.Of(WeighIn.Birds(age, weights));
        heap.Birds.Should().Be(5);
        heap.StandardDeviation!.Value.Kilograms.Should().BeApproximately(whole.StandardDeviation!.Value.Kilograms, 1e-12);
        heap.ShareWithinTenPercent.Should().Be(whole.ShareWithinTenPercent);
        heap.Basis.Should().Be(UniformityBasis.Counted);
    }

    [Fact]
    public void A_group_adds_to_the_mean_and_not_to_the_spread()
    {
        Age age = Age.FromDays(42);
        WeighIn birds = WeighIn.Birds(age, Mass.FromKilograms(2.0), Mass.FromKilograms(2.4));

        Uniformity uniformity = Uniformity.ByAge(WeighInSeries.Of(birds, WeighIn.Group(age, Mass.FromKilograms(16), 8))).Single();

        uniformity.MeanWeight.Kilograms.Should().BeApproximately(2.04, 1e-12);
        uniformity.BirdsBehindSpread.Should().Be(2);
        uniformity.StandardDeviation!.Value.Kilograms.Should().BeApproximately(birds.StandardDeviation!.Value.Kilograms, 1e-12);
        uniformity.Basis.Should().Be(UniformityBasis.NormalCurve);
    }

    [Fact]
    public void Histogram_bars_stand_on_round_edges_and_hold_every_bird()
    {
        double[] kilograms = [2.00, 2.05, 2.10, 2.18, 2.20, 2.25, 2.31, 2.30, 2.42, 2.60];

        IReadOnlyList<HistogramBin> bins =
            Uniformity.Of(WeighIn.Birds(Age.FromDays(42), kilograms.Select(weight => Mass.FromKilograms(weight)))).Histogram;

        // Quartiles 2.12 and 2.3075 kg, so 2 IQR / 10^(1/3) = 0.174 kg, rounded up to 0.2 kg.
        bins.Select(bin => bin.ToString()).Should().Equal("2..2.2 kg: 4", "2.2..2.4 kg: 4", "2.4..2.6 kg: 1", "2.6..2.8 kg: 1");
    }

    [Fact]
    public void Birds_all_alike_fill_one_bar_and_a_wild_weight_makes_no_thousand_of_them()
    {
        Mass[] alike = [.. Enumerable.Repeat(Mass.FromKilograms(2), 5)];

        Uniformity.Of(WeighIn.Birds(Age.FromDays(42), alike)).Histogram.Should().ContainSingle().Which.Birds.Should().Be(5);
        Uniformity.Of(WeighIn.Birds(Age.FromDays(42), [.. alike, Mass.FromKilograms(1.9), Mass.FromKilograms(2000)]))
            .Histogram.Count.Should().BeLessThanOrEqualTo(50);
    }
}
