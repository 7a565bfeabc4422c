using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>Birds to a crate: rounded down, and never more of the heavier.</summary>
public class CrateTests
{
    private static readonly Area Crate = Area.FromSquareCentimeters(97 * 58);

    [Theory]
    [InlineData(1.0, 200, 28)]
    [InlineData(1.3, 247, 22)]
    [InlineData(1.6, 288, 19)]
    [InlineData(2.0, 340, 16)]
    [InlineData(2.5, 400, 14)]
    [InlineData(3.0, 480, 11)]
    [InlineData(4.0, 520, 10)]
    [InlineData(5.0, 575, 9)]
    public void The_German_table_counts_by_class_upper_ends_included(double kilograms, double squareCentimeters, int birds)
    {
        CrateLoading loading = CrateLoading.Of(CrateStandard.Germany2009, Crate, Mass.FromKilograms(kilograms));

        CrateStandard.Germany2009.AreaPerBird(Mass.FromKilograms(kilograms)).SquareCentimeters.Should().BeApproximately(squareCentimeters, 1e-9);
        loading.BirdsByStandard.Should().Be(birds);
        loading.Birds.Should().BeLessThanOrEqualTo(birds);
    }

    [Fact]
    public void Where_the_table_steps_the_wrong_way_the_smaller_count_is_advised_and_the_law_s_is_shown()
    {
        CrateLoading lighter = CrateLoading.Of(CrateStandard.Germany2009, Crate, Mass.FromKilograms(2));
        CrateLoading heavier = CrateLoading.Of(CrateStandard.Germany2009, Crate, Mass.FromKilograms(2.01));

        (lighter.BirdsByStandard, lighter.Birds).Should().Be((16, 16));
        (heavier.BirdsByStandard, heavier.Birds).Should().Be((17, 16));
        lighter.Cautions.Should().Equal(CrateLoading.Heat);
        heavier.Cautions.Should().Equal(CrateLoading.Heat, CrateLoading.WrongWayStep);
    }

    [Fact]
    public void Unequal_birds_take_the_smallest_count_over_their_weights()
    {
        WeightDistribution flock = WeightDistribution.Of(Mass.FromKilograms(2.05), 0.10);
        int[] counts =
        [
            .. Enumerable.Range(5, 91).Select(percent => CrateLoading.Of(CrateStandard.Germany2009, Crate, flock.WeightAt(Probability.FromPercent(percent))).BirdsByStandard),
        ];

        CrateLoading loading = CrateLoading.Of(CrateStandard.Germany2009, Crate, flock);

        loading.BirdsByStandard.Should().Be(counts.Min());
        loading.Birds.Should().BeLessThanOrEqualTo(counts.Min());
    }

    [Fact]
    public void A_recalled_standard_says_so_wherever_it_is_named()
    {
        foreach (CrateStandard standard in CrateStandard.All.Where(standard => standard.IsUnverified))
        {
            standard.ToString().Should().Contain("unverified");
            CrateLoading.Of(standard, Crate, Mass.FromKilograms(2)).ToString().Should().Contain("unverified");
        }

        CrateStandard.All.Select(standard => standard.IsUnverified).Should().Equal(false, true, true);
    }

    [Fact]
    public void Of_a_band_the_stricter_figure_counts() =>
        CrateStandard.Eu2005.AreaPerBird(Mass.FromKilograms(1.5)).SquareCentimeters.Should().BeApproximately(300, 1e-9);

    [Fact]
    public void Height_crates_and_hot_days()
    {
        CrateLoading loading = CrateLoading.Of(CrateStandard.Germany2009, Crate, Mass.FromKilograms(3.2));
        HeatRule rule = HeatRule.Of(Temperature.FromDegreesCelsius(24), Probability.FromPercent(15), "the plant's");

        loading.HeightNeeded!.Value.Centimeters.Should().Be(25);
        (loading.BirdsByStandard, loading.Birds).Should().Be((13, 11), "birds of 3.0 kg have 480 cm2 each");
        (loading.BirdsInHeat(rule, Temperature.FromDegreesCelsius(24)), loading.BirdsInHeat(rule, Temperature.FromDegreesCelsius(25))).Should().Be((11, 9));
        (CrateLoading.Crates(300, 11), CrateLoading.Crates(297, 11), CrateLoading.Crates(0, 11)).Should().Be((28, 27, 0));
        rule.ToString().Should().Be("the plant's rule: 15 % fewer birds above 24 °C (75.2 °F)");
    }

    [Fact]
    public void Birds_heavier_than_the_text_goes_are_refused()
    {
        Action loading = () => CrateLoading.Of(CrateStandard.Germany2009, Crate, Mass.FromKilograms(31));

        loading.Should().Throw<ArgumentOutOfRangeException>().WithMessage("31 kg (68.34 lb) is not allowed; Germany: TierSchTrV Anl. 1 no. 1 (11 Feb 2009) says nothing about birds of this weight.*");
    }

    [Fact]
    public void A_bird_has_its_part_of_the_crate_and_none_where_none_fits()
    {
        CrateLoading.Of(CrateStandard.Germany2009, Crate, Mass.FromKilograms(2)).AreaPerBird!.Value.SquareCentimeters.Should().BeApproximately(97 * 58 / 16.0, 1e-9);
        CrateLoading none = CrateLoading.Of(CrateStandard.Germany2009, Area.FromSquareCentimeters(100), Mass.FromKilograms(2));

        (none.Birds, none.AreaPerBird).Should().Be((0, null));
    }

    [Theory]
    [InlineData(1.0, 1.04, 1.0 * 200)]
    [InlineData(1.0, 1.1, 1.1 * 190)]
    [InlineData(1.3, 1.5, 1.5 * 180)]
    [InlineData(2.9, 3.1, 3.0 * 160)]
    [InlineData(3.0, 3.1, 3.0 * 160)]
    [InlineData(3.05, 3.1, 3.1 * 130)]
    [InlineData(0, 3.1, 3.0 * 160)]
    public void Between_two_weights_the_largest_need_counts(double lightest, double heaviest, double squareCentimeters) =>
        CrateStandard.Germany2009.LargestBetween(Mass.FromKilograms(lightest), Mass.FromKilograms(heaviest)).SquareCentimeters.Should().BeApproximately(squareCentimeters, 1e-9);

    [Fact]
    public void Of_two_heights_the_higher_holds()
    {
        Limit height = MadeUpLimit.On(LimitSubject.CrateHeight, 23, LimitComparison.AtLeast), higher = MadeUpLimit.On(LimitSubject.CrateHeight, 26, LimitComparison.AtLeast);
        CrateStandard standard = CrateStandard.Of([MadeUpLimit.On(LimitSubject.CrateAreaPerWeight, 160, LimitComparison.AtLeast), height, higher]);

        standard.HeightFor(Mass.FromKilograms(2))!.Value.Centimeters.Should().Be(26);
        (standard.ToString(), standard.AreaPerBird(Mass.FromKilograms(2)).SquareCentimeters).Should().Be(("general: A limit (2027)", 320));
    }

    [Fact]
    public void A_name_says_unverified_once() => CrateStandard.All.Select(standard => standard.ToString().Split("unverified").Length - 1).Should().Equal(0, 1, 1);
}
