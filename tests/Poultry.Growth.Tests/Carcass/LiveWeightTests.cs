using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>What is lost off feed counts once: not twice, and not never. Over 300 birds of 3 kg the difference is 23 kg of carcass.</summary>
public sealed class LiveWeightTests
{
    private static readonly LiveState TwelveHours = LiveState.OffFeed(Duration.FromHours(12));
    private static readonly LiveWeight FullFed = LiveWeight.FullFed(300 * Mass.FromKilograms(3));
    private static readonly LiveWeight Killed = LiveWeight.Of(300 * Mass.FromKilograms(3 * 0.964), TwelveHours);

    [Fact]
    public void Going_to_a_state_twice_changes_nothing_the_second_time()
    {
        FullFed.In(TwelveHours).Weight.Kilograms.Should().BeApproximately(900 * 0.964, 1e-9);
        FullFed.In(TwelveHours).In(TwelveHours).Weight.Kilograms.Should().Be(FullFed.In(TwelveHours).Weight.Kilograms);
        FullFed.In(TwelveHours).In(LiveState.FullFed).Weight.Kilograms.Should().BeApproximately(900, 1e-9);
    }

    /// <summary>The same birds, weighed full-fed or at killing, give the same carcass, whichever of the two weights the ratio was measured on.</summary>
    [Theory]
    [InlineData(false, 0.72 * 900)]
    [InlineData(true, 0.72 * 900 * 0.964)]
    public void Shrink_is_counted_exactly_once(bool ratioOfWeightAtKilling, double carcassKilograms)
    {
        DressingRatio ratio = DressingRatio.Of(
            "own", LikelyRange<Probability>.Exactly(Probability.FromPercent(72)), CarcassBasis.Of(CarcassCondition.Hot), ratioOfWeightAtKilling ? TwelveHours : LiveState.FullFed);

        ratio.CarcassOf(FullFed, TwelveHours).Weight.Kilograms.Should().BeApproximately(carcassKilograms, 1e-9);
        ratio.CarcassOf(Killed).Weight.Kilograms.Should().BeApproximately(carcassKilograms, 1e-9);
        Balance(ratio, FullFed).Should().BeApproximately(carcassKilograms, 1e-9);
        Balance(ratio, Killed).Should().BeApproximately(carcassKilograms, 1e-9);

        // Counted never or twice, the carcass would be 23 kg off: far more than any tolerance above.
        (0.72 * 900 * (1 - 0.964)).Should().BeInRange(23, 23.5);
    }

    [Fact]
    public void A_ratio_that_does_not_say_is_taken_for_the_weight_at_killing_and_needs_the_hours()
    {
        DressingRatio planning = Dressings.For(BirdType.Fast);
        Action ask = () => planning.CarcassOf(FullFed);

        ask.Should().Throw<ArgumentException>().WithMessage("*does not state on which live weight*expected the hours off feed to killing*");
        planning.CarcassOf(FullFed, TwelveHours).Weight.Kilograms.Should().BeApproximately(0.725 * 900 * 0.964, 1e-9);
        planning.CarcassOf(Killed).Weight.Kilograms.Should().BeApproximately(0.725 * 900 * 0.964, 1e-9);
        planning.CautionsFor(Sex.Mixed, null, Mass.FromKilograms(3)).Select(caution => caution.Code).Should().Contain("dressing-live-state-not-stated");
    }

    [Fact]
    public void A_weight_without_a_state_is_refused()
    {
        Action weigh = () => LiveWeight.Of(Mass.FromKilograms(3), LiveState.NotStated), turn = () => FullFed.In(LiveState.NotStated);

        weigh.Should().Throw<ArgumentException>().WithMessage("A live weight needs its state; expected full-fed, or hours off feed.*");
        turn.Should().Throw<ArgumentException>();
    }

    [Fact]
    public void Another_rate_goes_through()
    {
        FeedWithdrawal slow = FeedWithdrawal.Of(LikelyRange<double>.Exactly(0.2));

        FullFed.In(LiveState.OffFeed(Duration.FromHours(10)), slow).Weight.Kilograms.Should().BeApproximately(900 * 0.98, 1e-9);
        LiveState.OffFeed(Duration.FromHours(10), Duration.FromHours(4)).ToString().Should().Be("10 h off feed, 4 h of them on the road");
        Killed.ToString().Should().Be("867.6 kg (1912.73 lb) 12 h off feed");
    }

    private static double Balance(DressingRatio ratio, LiveWeight live) => CarcassBalance.Of(
        live, new PlantConditions { Dressing = ratio, AtKilling = TwelveHours, Condemned = Condemnation.None }).Carcass.Weight.Kilograms;
}
