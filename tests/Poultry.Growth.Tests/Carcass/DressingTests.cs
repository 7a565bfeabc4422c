using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Ratios with their basis: what is comparable, what is not, and how a farm's own past overrides the book.</summary>
public sealed class DressingTests
{
    private static readonly CarcassBasis Hot = CarcassBasis.Of(CarcassCondition.Hot, Inclusion.With, Inclusion.Without, Inclusion.Without);
    private static readonly CarcassBasis Packed = Hot.In(CarcassCondition.Packed);

    [Fact]
    public void Two_bases_are_not_compared_and_not_added()
    {
        CarcassWeight hot = CarcassWeight.Of(Mass.FromKilograms(2), Hot), packed = CarcassWeight.Of(Mass.FromKilograms(2.1), Packed);
        Action compare = () => hot.IsHeavierThan(packed), add = () => packed.Plus(hot);

        compare.Should().Throw<ArgumentException>().WithMessage("A carcass weighed packed, with neck, without giblets, without feet is not comparable with one weighed hot, *");
        add.Should().Throw<ArgumentException>();
        hot.Plus(hot).Weight.Kilograms.Should().Be(4);
        hot.Plus(hot).IsHeavierThan(hot).Should().BeTrue();
    }

    [Fact]
    public void Only_chill_water_of_the_user_s_turns_hot_into_chilled_and_packed()
    {
        CarcassWeight hot = CarcassWeight.Of(Mass.FromKilograms(2), Hot);
        ChillWater water = ChillWater.Of(uptakePercent: 4, dripPercent: 1.5);
        Action again = () => hot.Chilled(water).Chilled(water);

        hot.Chilled(water).Weight.Kilograms.Should().BeApproximately(2.08, 1e-12);
        hot.Packed(water).Weight.Kilograms.Should().BeApproximately(2.05, 1e-12, "uptake and drip refer to the same weight before chilling");
        hot.Packed(water).Basis.Should().Be(Packed);
        again.Should().Throw<ArgumentException>().WithMessage("Only a hot carcass takes up chill water*");
    }

    [Fact]
    public void Every_published_ratio_has_a_name_of_its_own_a_source_and_no_invented_live_state()
    {
        Dressings.All.Should().OnlyHaveUniqueItems(ratio => ratio.Name);
        Dressings.All.Should().OnlyContain(ratio => !ratio.MeasuredOn.IsStated && ratio.Model.Citations.All(source => source.HowKnown != HowKnown.Memory));
        Dressings.Named("RUDN-42d")!.Sex.Should().Be(Sex.Male);
        Dressings.Named("none").Should().BeNull();
        Dressings.For(BirdType.Slow).Ratio.ToString().Should().Be("67.5 % (65 % to 70 %)");
        Dressings.For(BirdType.Heritage).Model.HowKnown.Should().Be(HowKnown.Assumption);
    }

    [Theory]
    [InlineData(1, 71.23)]
    [InlineData(4, 70.43)]
    [InlineData(40, 70.05)]
    public void The_more_own_batches_the_less_the_book_counts(int batches, double expectedPercent)
    {
        // By hand: t^2 = (5/2/1.64485)^2 + 1.18156 = 3.49165, s^2 = 1.18156, own 70 %, book 72.5 %.
        double t = 3.49165, s = 1.18156;
        double byHand = ((72.5 / t) + (batches * 70 / s)) / ((1 / t) + (batches / s));
        DressingRatio pooled = Dressings.For(BirdType.Fast).PooledWith(PastDressing.Of(Probability.FromPercent(70), batches, Packed, LiveState.FullFed));

        pooled.Ratio.Likely.Percent.Should().BeApproximately(byHand, 1e-4);
        pooled.Ratio.Likely.Percent.Should().BeInRange(70, expectedPercent);
        pooled.IncludesCondemned.Should().BeTrue();
        (pooled.Basis, pooled.MeasuredOn).Should().Be((Packed, LiveState.FullFed));
    }

    [Fact]
    public void Own_batches_one_by_one_bring_their_own_spread()
    {
        LiveWeight live = LiveWeight.FullFed(Mass.FromKilograms(900));
        PastDressing alike = Weighed(live, 630, 630, 630, 630, 630, 630), unlike = Weighed(live, 600, 660, 610, 650, 605, 655);

        alike.MeanPercent.Should().BeApproximately(70, 1e-9);
        Width(alike).Should().BeLessThan(Width(PastDressing.Of(Probability.FromPercent(70), 6, Packed, LiveState.FullFed)));
        Width(unlike).Should().BeGreaterThan(2 * Width(alike));

        static PastDressing Weighed(LiveWeight live, params double[] packed) =>
            PastDressing.Weighed([.. packed.Select(kilograms => (live, CarcassWeight.Of(Mass.FromKilograms(kilograms), Packed)))]);

        static double Width(PastDressing own)
        {
            LikelyRange<Probability> range = Dressings.For(BirdType.Fast).PooledWith(own).Ratio;
            return range.High.Percent - range.Low.Percent;
        }
    }

    [Fact]
    public void A_ratio_stated_to_be_on_another_basis_is_not_pooled()
    {
        PastDressing withoutNeck = PastDressing.Of(
            Probability.FromPercent(70), 3, CarcassBasis.Of(CarcassCondition.Packed, neck: Inclusion.Without), LiveState.FullFed);
        Action pool = () => Dressings.Named("ross308-2008")!.PooledWith(withoutNeck);

        pool.Should().Throw<ArgumentException>().WithMessage("*expected the same basis, or one that is not stated*");
    }

    [Fact]
    public void A_ratio_used_beyond_its_birds_says_so()
    {
        IReadOnlyList<Caution> cautions = Dressings.Named("raji-males")!.CautionsFor(Sex.Female, Age.FromDays(60), Mass.FromKilograms(3));

        cautions.Select(caution => caution.Code).Should().Equal(
            "dressing-basis-not-stated", "dressing-live-state-not-stated", "dressing-other-sex", "dressing-outside-range");
        cautions[^1].Text.Should().Contain("42 d and 2.04 kg (4.5 lb)").And.Contain("1.4 points at 56 d");
    }
}
