using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

/// <summary>Losses learned from own batches: nothing without batches, the farm's own with many, and intervals that hold on simulated farms.</summary>
public sealed class LearnedSurvivalTests
{
    private static readonly Survival Shipped = Survival.FastGrowingOutdoor;
    private static readonly Age From = Age.FromDays(1), To = Age.FromDays(56);
    private static readonly double Hazard = -Math.Log(Shipped.ShareAliveInBatch(From, To, 0).Fraction);

    [Fact]
    public void Without_batches_it_is_what_is_shipped()
    {
        LearnedSurvival learned = LearnedSurvival.From(Shipped, []);

        learned.Survival.Should().BeSameAs(Shipped);
        (learned.LevelRatio, learned.LogSpread).Should().Be((1, 0.45));
    }

    [Fact]
    public void The_grid_gives_the_shipped_law_back_before_any_batch_is_weighed()
    {
        (double mean, double variance) = new SurvivalGrid(0.45, LargeLoss.OneBatchInThirty).Next();

        mean.Should().BeApproximately(0, 1e-12);
        Math.Sqrt(variance).Should().BeApproximately(0.45, 0.002, "the two parts add up to the shipped variance; the grid ends at 3 and 4.5 deviations");
    }

    [Fact]
    public void A_batch_as_expected_narrows_and_does_not_move()
    {
        int lost = (int)Math.Round(3000 * (1 - Math.Exp(-Hazard)));
        LearnedSurvival learned = LearnedSurvival.From(Shipped, [PastLosses.Of(3000, lost, From, To)], LargeLoss.Never);

        learned.LevelRatio.Should().BeApproximately(1, 0.01);
        learned.LogSpread.Should().BeInRange(0.34, 0.42);
    }

    /// <summary>One batch counts as much as the shipped level: the weight of a is b^2/(b^2 + w^2) = 1/2.</summary>
    [Fact]
    public void One_large_batch_moves_the_level_half_way()
    {
        int lost = (int)Math.Round(30_000 * (1 - Math.Exp(-1.4 * Hazard)));
        double level = Math.Log(LearnedSurvival.From(Shipped, [PastLosses.Of(30_000, lost, From, To)], LargeLoss.Never).LevelRatio);

        level.Should().BeApproximately(Math.Log(1.4) / 2, 0.03);
    }

    [Fact]
    public void Many_batches_outvote_what_is_shipped()
    {
        PastLosses[] batches = [.. Enumerable.Range(0, 20).Select(_ => PastLosses.Of(300, (int)Math.Round(300 * (1 - Math.Exp(-1.8 * Hazard))), From, To))];
        LearnedSurvival learned = LearnedSurvival.From(Shipped, batches);

        learned.LevelRatio.Should().BeInRange(1.65, 1.85);
        learned.LogSpread.Should().BeLessThan(0.3);
        learned.ToString().Should().StartWith("20 own batches: 1.");
        (1 - learned.Survival.ShareAlive(From, To).Fraction).Should().BeApproximately(1 - Math.Exp(-1.8 * Hazard), 0.02);
    }

    [Fact]
    public void A_batch_without_loss_and_one_without_survivors_make_sense()
    {
        LearnedSurvival none = LearnedSurvival.From(Shipped, [PastLosses.Of(50, 0, From, To)]), all = LearnedSurvival.From(Shipped, [PastLosses.Of(50, 50, From, To)]);

        none.LevelRatio.Should().BeInRange(0.4, 0.95);
        double.IsFinite(all.LevelRatio).Should().BeTrue();
    }

    [Fact]
    public void A_dog_in_the_shelter_is_no_usual_loss()
    {
        PastLosses[] usual = [.. Enumerable.Repeat(PastLosses.Of(300, 27, From, To), 4)];
        PastLosses dog = PastLosses.Of(300, 160, From, To);
        LearnedSurvival without = LearnedSurvival.From(Shipped, usual), with = LearnedSurvival.From(Shipped, [.. usual, dog]);

        with.LargeLosses.Should().Equal(dog);
        without.LargeLosses.Should().BeEmpty();
        with.LevelRatio.Should().BeApproximately(without.LevelRatio, 0.08, "a batch with a large loss says little about the rest");
        LearnedSurvival.From(Shipped, [.. usual, dog], LargeLoss.Never).LevelRatio.Should().BeGreaterThan(with.LevelRatio + 0.1, "without large losses it would be taken for bad keeping");
    }

    [Fact]
    public void The_order_of_batches_does_not_matter()
    {
        PastLosses[] batches = [PastLosses.Of(300, 12, From, To), PastLosses.Of(250, 60, From, Age.FromDays(49)), PastLosses.Of(120, 5, From, To)];

        LearnedSurvival.From(Shipped, batches).LevelRatio.Should().BeApproximately(LearnedSurvival.From(Shipped, [batches[2], batches[0], batches[1]]).LevelRatio, 1e-12);
    }

    /// <summary>Of 250 next batches of farms that follow the model so many lie within the 90 % interval; 95 % of such counts lie within ±3.7 points of the true share, which the study puts at 90 to 92 %.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(10)]
    public void The_next_batch_is_held_on_simulated_farms(int batches) =>
        Enumerable.Range(0, 250).Average(farm => new LossFarm(2027, farm, batches, times: 1, apart: 1).Covered ? 1.0 : 0).Should().BeInRange(0.86, 0.95);

    [Fact]
    public void Ten_batches_narrow_the_interval_of_the_next()
    {
        PastLosses[] past = [.. new[] { 22, 30, 41, 27, 35, 19, 33, 28, 45, 31 }.Select(lost => PastLosses.Of(300, lost, From, To))];

        LearnedSurvival.From(Shipped, past).LogSpread.Should().BeLessThan(0.75 * Shipped.LogSpread);
    }

    [Fact]
    public void Losses_that_cannot_be_are_refused()
    {
        FluentActions.Invoking(() => PastLosses.Of(10, 11, From, To)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => PastLosses.Of(10, 1, To, From)).Should().Throw<ArgumentOutOfRangeException>();
        PastLosses.Of(300, 38, From, To).ToString().Should().Be("38 of 300 birds, 1 d to 56 d");
    }
}
