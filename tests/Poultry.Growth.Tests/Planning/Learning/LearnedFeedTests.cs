using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Tests.Planning;

/// <summary>The farm's own factor of feed between its batches and the model.</summary>
public sealed class LearnedFeedTests
{
    private static readonly EnergyModel Model = EnergyModel.DefaultFor(BirdType.Fast);

    [Fact]
    public void Without_a_batch_of_this_model_there_is_none()
    {
        LearnedFeed.From([], Model).Should().BeNull();
        LearnedFeed.From([PastFeed.Of(Mass.FromKilograms(1100), Mass.FromKilograms(1000), "another")], Model).Should().BeNull();
    }

    /// <summary>By hand: error 0.05, b² = w² = 0.00125; one batch of r = ln 1.1 counts a half, s² = 4 w²/4; the next batch: 1/(1/b² + 1/s²) + s² = 0.001875.</summary>
    [Fact]
    public void One_batch_counts_a_half()
    {
        LearnedFeed learned = LearnedFeed.From([Of(1.1)], Model)!;

        learned.Ratio.Should().BeApproximately(Math.Sqrt(1.1), 1e-12);
        learned.LogSpread.Should().BeApproximately(Math.Sqrt(0.001875), 1e-12);
        learned.ToString().Should().Be("1 own batch: 1.05 times the model's feed");
    }

    /// <summary>By hand: r = ln 1.1 and ln 1.02, x = 0.0575565, S = 0.0028507, s² = (0.005 + S)/5 = 0.0015701, m = (2 x/s²)/(800 + 2/s²) = 0.0353528.</summary>
    [Fact]
    public void Two_batches_by_hand() => Math.Log(LearnedFeed.From([Of(1.1), Of(1.02)], Model)!.Ratio).Should().BeApproximately(0.0353528, 1e-7);

    [Fact]
    public void A_record_that_lacks_a_delivery_is_refused()
    {
        FluentActions.Invoking(() => PastFeed.Of(Mass.FromKilograms(300), Mass.FromKilograms(1000), "m")).Should().Throw<ArgumentOutOfRangeException>();
        PastFeed.Of(Mass.FromKilograms(2180), Mass.FromKilograms(2096), "m").ToString().Should().Be("1.04 (2180 of 2096 kg; 4806 of 4621 lb)");
    }

    private static PastFeed Of(double ratio) => PastFeed.Of(Mass.FromKilograms(1000 * ratio), Mass.FromKilograms(1000), Model.Model.Id);
}
