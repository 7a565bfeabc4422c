using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Weighing;

public sealed class UniformityTests
{
    [Fact]
    public void The_share_within_a_tenth_of_the_mean_is_counted_with_both_bounds()
    {
        Uniformity uniformity = Uniformity.Of(WeighIn.Birds(Age.FromDays(42), new double[] { 945, 1155, 1050, 900, 1200 }.Select(grams => Mass.FromGrams(grams))));

        uniformity.Basis.Should().Be(UniformityBasis.Counted);
        uniformity.ShareWithinTenPercent.Should().Be(0.6);
    }

    [Fact]
    public void A_mean_with_its_spread_is_taken_for_a_normal_flock()
    {
        WeighIn weighIn = WeighIn.Mean(Age.FromDays(42), Mass.FromKilograms(2), 30, Mass.FromKilograms(0.2));

        Uniformity uniformity = Uniformity.Of(weighIn);

        uniformity.Basis.Should().Be(UniformityBasis.NormalCurve);
        uniformity.Cautions.Should().Equal(Uniformity.CaughtBirds, Uniformity.MixedFlock);
        Uniformity.Of(weighIn.Of(Sex.Male)).Cautions.Should().Equal(Uniformity.CaughtBirds);
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
        uniformity.ToString().Should().Be("42 d: 10 birds, mean 2.4 kg (5.29 lb), spread unknown");
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
        bins.Select(bin => bin.ToString()).Should().Equal("2..2.2 kg (4.41..4.85 lb): 4", "2.2..2.4 kg (4.85..5.29 lb): 4", "2.4..2.6 kg (5.29..5.73 lb): 1", "2.6..2.8 kg (5.73..6.17 lb): 1");
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
