using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Each flow of the balance against arithmetic done apart from it: that it closes would prove nothing.</summary>
public sealed class CarcassBalanceTests
{
    private static readonly LiveState TwelveHours = LiveState.OffFeed(Duration.FromHours(12));
    private static readonly LiveWeight Flock = LiveWeight.FullFed(Mass.FromKilograms(1000));

    private static readonly DressingRatio Hot = DressingRatio.Of(
        "own", LikelyRange<Probability>.Of(Probability.FromPercent(70), Probability.FromPercent(72), Probability.FromPercent(74)), CarcassBasis.Of(CarcassCondition.Hot), TwelveHours);

    [Fact]
    public void Every_flow_is_what_arithmetic_says()
    {
        CarcassBalance balance = CarcassBalance.Of(Flock, new PlantConditions
        {
            Dressing = Hot,
            AtKilling = TwelveHours,
            Condemned = Condemnation.Of(Probability.FromPercent(1), Probability.FromPercent(2)),
            Trim = Probability.FromPercent(3),
            Water = ChillWater.Of(5, 1),
            OtherParts = [NamedPart.Of("giblets", Probability.FromPercent(4)), NamedPart.Of("feet", Probability.FromPercent(3))],
        });

        // 1000 kg, 36 lost off feed, 9.64 condemned, 954.36 killed, 687.1392 dressed, 13.742784 condemned, 673.396416 passed, 20.20189248 trimmed.
        Expect("lost off feed", 36);
        Expect("condemned live", 9.64);
        Expect("condemned carcasses", 13.742784);
        Expect("trim", 20.20189248);
        Expect("giblets", 0.04 * 954.36);
        Expect("feet", 0.03 * 954.36);
        Expect("chill water (in)", 653.19452352 * 0.04);
        Expect("carcass", 653.19452352 * 1.04);
        Expect("other, by difference", 954.36 - 687.1392 - (0.07 * 954.36));
        balance.Lines.Should().HaveCount(9);
        balance.Closes.Should().BeTrue();
        balance.Carcass.Basis.Condition.Should().Be(CarcassCondition.Packed);
        balance.Cautions.ShouldBeNone();

        void Expect(string name, double kilograms) =>
            balance.Lines.Single(line => line.Name == name).Weight.Likely.Kilograms.Should().BeApproximately(kilograms, 1e-8, name);
    }

    [Fact]
    public void The_range_is_that_of_ratio_and_shrink_together()
    {
        BalanceLine carcass = CarcassBalance.Of(Flock, new PlantConditions { Dressing = Hot, AtKilling = TwelveHours, Condemned = Condemnation.None })
            .Lines.Single(line => line.Kind == BalanceKind.Carcass);

        carcass.Weight.Low.Kilograms.Should().BeApproximately(1000 * 0.70 * (1 - 0.048), 1e-9);
        carcass.Weight.High.Kilograms.Should().BeApproximately(1000 * 0.74 * (1 - 0.024), 1e-9);
        carcass.PercentOfLive.Should().BeApproximately(72 * 0.964, 1e-9);
    }

    [Fact]
    public void A_ratio_that_includes_the_condemned_takes_them_off_once()
    {
        DressingRatio totals = DressingRatio.Of(
            "own", Hot.Ratio, CarcassBasis.Of(CarcassCondition.Packed), TwelveHours, includesCondemned: true);

        CarcassBalance balance = CarcassBalance.Of(Flock, new PlantConditions { Dressing = totals, AtKilling = TwelveHours, Trim = Probability.FromPercent(3) });

        balance.Carcass.Weight.Kilograms.Should().BeApproximately(0.72 * 964, 1e-9);
        balance.Lines.Should().NotContain(line => line.Name.Contains("condemned") || line.Name == "trim");
    }

    /// <summary>
    /// 964 kg at 12 h off feed were 1000 kg (1 - 12 x 0.3 %) full-fed, 987.70 kg at 0.2 % an hour and 1012.61 kg at 0.4 %: the more was lost, the heavier the birds were on which the ratio was measured.
    /// </summary>
    [Fact]
    public void Of_birds_weighed_at_the_plant_the_carcass_is_least_where_least_was_lost()
    {
        DressingRatio fullFed = DressingRatio.Of("own", Hot.Ratio, CarcassBasis.Of(CarcassCondition.Packed), LiveState.FullFed, includesCondemned: true);
        LikelyRange<Mass> carcass = CarcassBalance.Of(LiveWeight.Of(Mass.FromKilograms(964), TwelveHours), new PlantConditions { Dressing = fullFed }).Lines.Single(line => line.Kind == BalanceKind.Carcass).Weight;

        carcass.Low.Kilograms.Should().BeApproximately(0.70 * 964 / 0.976, 1e-9);
        carcass.Likely.Kilograms.Should().BeApproximately(720, 1e-9);
        carcass.High.Kilograms.Should().BeApproximately(0.74 * 964 / 0.952, 1e-9);
    }

    [Fact]
    public void Not_all_of_a_carcass_is_trimmed_off()
    {
        Action all = () => CarcassBalance.Of(Flock, new PlantConditions { Dressing = Hot, AtKilling = TwelveHours, Trim = Probability.FromPercent(51) });

        all.Should().Throw<ArgumentOutOfRangeException>().WithMessage("0.51 is not allowed; expected 0 to 0.5.*");
    }

    [Theory]
    [InlineData(80, "balance-implausible")]
    [InlineData(60, "balance-implausible")]
    [InlineData(72, "hot-weights")]
    public void What_is_left_over_must_be_plausible(double percent, string code)
    {
        DressingRatio ratio = DressingRatio.Of("own", LikelyRange<Probability>.Exactly(Probability.FromPercent(percent)), CarcassBasis.Of(CarcassCondition.Hot), TwelveHours);

        CarcassBalance.Of(Flock, new PlantConditions { Dressing = ratio, AtKilling = TwelveHours }).Cautions[0].Code.Should().Be(code);
    }

    [Fact]
    public void Parts_that_weigh_more_than_the_birds_carry_a_caution()
    {
        CarcassBalance balance = CarcassBalance.Of(
            Flock, new PlantConditions { Dressing = Hot, AtKilling = TwelveHours, OtherParts = [NamedPart.Of("viscera", Probability.FromPercent(40))] });

        balance.Cautions[0].Code.Should().Be("balance-negative");
        balance.Lines.Single(line => line.Kind == BalanceKind.ByDifference).Weight.Likely.Kilograms.Should().BeNegative();
        balance.Closes.Should().BeTrue();
    }

    [Fact]
    public void Chill_water_is_asked_only_for_a_hot_ratio()
    {
        Action ask = () => CarcassBalance.Of(Flock, new PlantConditions { Dressing = Dressings.For(BirdType.Fast), AtKilling = TwelveHours, Water = ChillWater.Of(4) });
        CarcassBalance without = CarcassBalance.Of(Flock, new PlantConditions { Dressing = Dressings.Named("packaged-outdoor")!, AtKilling = TwelveHours });

        ask.Should().Throw<ArgumentException>().WithMessage("Chill water belongs to a dressing ratio of hot carcasses*");
        without.Cautions.Select(caution => caution.Code).Should().Equal("water-in-carcass");
    }

    [Fact]
    public void A_long_fast_is_warned_of()
    {
        CarcassBalance balance = CarcassBalance.Of(Flock, new PlantConditions { Dressing = Hot, AtKilling = LiveState.OffFeed(Duration.FromHours(25)) });

        balance.Cautions.Select(caution => caution.Code).Should().Equal("hot-weights", "carcass-loses-weight", "withdrawal-too-long");
        balance.Carcass.Weight.Kilograms.Should().BeApproximately(
            0.72 * 964 * (1 - 0.0024) * (1 - 0.0097), 1e-9, "the carcass does not depend on the hours, but on the state of the ratio");
    }
}
