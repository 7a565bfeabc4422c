using Microsoft.CodeAnalysis;
using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Architecture;
using HotWithNeck = Poultry.Growth.Carcass.BasisOf<Poultry.Growth.Carcass.Hot, Poultry.Growth.Carcass.With, Poultry.Growth.Carcass.Without, Poultry.Growth.Carcass.Without>;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Ratios with their basis: what is comparable, what is not, and how a farm's own past overrides the book.</summary>
public sealed class DressingTests
{
    private static readonly CarcassBasis Hot = CarcassBasis.Of(CarcassCondition.Hot, Inclusion.With, Inclusion.Without, Inclusion.Without);
    private static readonly CarcassBasis Packed = Hot.In(CarcassCondition.Packed);

    [Fact]
    public void Weights_of_one_basis_add_up_and_are_compared()
    {
        CarcassWeight<HotWithNeck> light = CarcassWeight.Of(Mass.FromKilograms(2), Hot).On<HotWithNeck>(), heavy = CarcassWeight.Of(Mass.FromKilograms(3), Hot).On<HotWithNeck>();

        (light + heavy).Weight.Kilograms.Should().Be(5);
        (light < heavy && light <= heavy && heavy > light && heavy >= light && light != heavy).Should().BeTrue();
        (light == heavy || light > heavy || light >= heavy).Should().BeFalse();
        new[] { heavy, light }.Order().Should().Equal(light, heavy);
        light.Should().Be(CarcassWeight.Of(Mass.FromGrams(2000), Hot).On<HotWithNeck>());
        light.ToString().Should().Be("2 kg (4.41 lb), hot, with neck, without giblets, without feet");
    }

    /// <summary>The line between them is one word in each statement: the first compiles, the others do not.</summary>
    [Theory]
    [InlineData("hot + hot", true)]
    [InlineData("hot + packed", false)]
    [InlineData("hot > hot", true)]
    [InlineData("hot > packed", false)]
    [InlineData("hotRatio.PercentOfLiveAbove(hotRatio)", true)]
    [InlineData("hotRatio.PercentOfLiveAbove(packedRatio)", false)]
    [InlineData("water.Chilled(hot)", true)]
    [InlineData("water.Chilled(packed)", false)]
    public void Two_bases_mixed_up_do_not_compile(string mixed, bool compiles)
    {
        string program = $$"""
            using Poultry.Growth.Carcass;
            using HotWithNeck = Poultry.Growth.Carcass.BasisOf<Poultry.Growth.Carcass.Hot, Poultry.Growth.Carcass.With, Poultry.Growth.Carcass.Without, Poultry.Growth.Carcass.Without>;
            using PackedWithNeck = Poultry.Growth.Carcass.BasisOf<Poultry.Growth.Carcass.Packed, Poultry.Growth.Carcass.With, Poultry.Growth.Carcass.Without, Poultry.Growth.Carcass.Without>;
            (CarcassWeight<HotWithNeck> hot, CarcassWeight<PackedWithNeck> packed) = (default, default);
            (DressingRatio<HotWithNeck> hotRatio, DressingRatio<PackedWithNeck> packedRatio) = (null!, null!);
            ChillWater water = ChillWater.Of(4);
            System.Console.WriteLine({{mixed}});
            """;

        CSharp.Compile("Mixed", OutputKind.ConsoleApplication, [], [("mixed.cs", program)]).Errors().Any().Should().Be(!compiles);
    }

    [Fact]
    public void A_basis_that_is_not_stated_or_another_one_is_not_taken_for_it()
    {
        Action packed = () => CarcassWeight.Of(Mass.FromKilograms(2), Packed).On<HotWithNeck>(), unstated = () => Dressings.For(BirdType.Fast).On<HotWithNeck>();

        packed.Should().Throw<ArgumentException>().WithMessage("The carcass was weighed packed, with neck, without giblets, without feet; expected hot, with neck, without giblets, without feet.*");
        unstated.Should().Throw<ArgumentException>().WithMessage("The ratio planning-fast is hot or chilled not stated, *");
    }

    [Fact]
    public void Ratios_of_one_basis_are_compared_where_the_live_birds_were_weighed_in_one_state()
    {
        DressingRatio<HotWithNeck> Ratio(double percent, LiveState state) =>
            DressingRatio.Of("own", LikelyRange<Probability>.Of(Probability.FromPercent(percent - 2), Probability.FromPercent(percent), Probability.FromPercent(percent + 2)), Hot, state).On<HotWithNeck>();
        Action otherState = () => Ratio(72, LiveState.FullFed).PercentOfLiveAbove(Ratio(74, LiveState.OffFeed(Duration.FromHours(12))));

        Ratio(72, LiveState.FullFed).PercentOfLiveAbove(Ratio(70.5, LiveState.FullFed)).Should().BeApproximately(1.5, 1e-9);
        Ratio(72, LiveState.FullFed).CarcassOf(LiveWeight.FullFed(Mass.FromKilograms(3))).Weight.Kilograms.Should().BeApproximately(2.16, 1e-12);
        otherState.Should().Throw<ArgumentException>().WithMessage("*full-fed, and 12 h off feed*");
    }

    [Fact]
    public void Only_chill_water_of_the_user_s_turns_hot_into_chilled_and_packed()
    {
        CarcassWeight<HotWithNeck> hot = CarcassWeight.Of(Mass.FromKilograms(2), Hot).On<HotWithNeck>();
        ChillWater water = ChillWater.Of(uptakePercent: 4, dripPercent: 1.5);
        CarcassWeight<BasisOf<Packed, With, Without, Without>> packed = water.Packed(hot);

        water.Chilled(hot).Weight.Kilograms.Should().BeApproximately(2.08, 1e-12);
        packed.Weight.Kilograms.Should().BeApproximately(2.05, 1e-12, "uptake and drip refer to the same weight before chilling");
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

    [Fact]
    public void A_ratio_keeps_its_basis_and_its_source()
    {
        ModelInfo source = Dressings.For(BirdType.Slow).Model;

        DressingRatio.Of("own", Dressings.For(BirdType.Slow).Ratio, Hot, LiveState.FullFed, source).Model.Should().BeSameAs(source);
        Dressings.Named("packaged-outdoor")!.Basis.Condition.Should().Be(CarcassCondition.Packed);
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
    public void Own_batches_that_contradict_each_other_teach_nothing()
    {
        LiveWeight live = LiveWeight.FullFed(Mass.FromKilograms(100));
        PastDressing wild = PastDressing.Weighed([(live, CarcassWeight.Of(Mass.FromKilograms(41), Packed)), (live, CarcassWeight.Of(Mass.FromKilograms(94), Packed))]);
        Action pool = () => Dressings.For(BirdType.Fast).PooledWith(wild);

        pool.Should().Throw<ArgumentException>().WithMessage("The own batches lie 19 points apart*").WithParameterName("own");
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
