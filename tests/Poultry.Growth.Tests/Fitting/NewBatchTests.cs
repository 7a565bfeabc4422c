using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Fitting;

public class NewBatchTests
{
    private static readonly GrowthPrior Shipped = StudyRows.Shipped;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_batch_of_another_strain_does_not_look_like_the_past_ones(bool otherStrain)
    {
        SimulatedFarm farm = new(seed: 3, pastBatches: 10, otherStrain, weighInError: 0.02);
        LearnedPrior learned = farm.History.Learn(SimulatedFarm.Kind, Shipped);

        NewBatch batch = NewBatch.Of(farm.GroupTo(28), learned.Prior, learned.WeighInError)!;

        (batch.ChanceLikePast < 0.5).Should().Be(otherStrain);
    }

    [Fact]
    public void Before_the_first_weigh_in_the_chance_is_the_one_given_beforehand()
    {
        NewBatch batch = NewBatch.Of(new([], [], []), Learned().Prior, 0.02)!;

        batch.ChanceLikePast.Should().BeApproximately(0.90, 1e-12);
    }

    [Fact]
    public void A_prior_with_nothing_behind_it_is_one_normal()
    {
        SimulatedFarm farm = new(seed: 4, pastBatches: 0, otherStrain: false, weighInError: 0.02);
        MixedGroup group = farm.GroupTo(21);
        NewBatch batch = NewBatch.Of(group, Shipped, 0.02)!;
        (double mean, double deviation) = PriorView.Of(group, Shipped, 0.02)!.LogKilogramsAt(56);

        batch.ChanceLikePast.Should().Be(1);
        foreach (double probability in (double[])[0.001, 0.05, 0.5, 0.95])
        {
            batch.LogKilogramsAt(56, probability).Should().BeApproximately(mean + (deviation * Distributions.NormalQuantile(probability)), 1e-9);
        }
    }

    [Fact]
    public void The_mixture_lies_between_its_parts_and_has_the_probability_asked_for()
    {
        SimulatedFarm farm = new(seed: 5, pastBatches: 10, otherStrain: true, weighInError: 0.02);
        LearnedPrior learned = farm.History.Learn(SimulatedFarm.Kind, Shipped);
        MixedGroup group = farm.GroupTo(14);
        NewBatch batch = NewBatch.Of(group, learned.Prior, 0.02)!;
        (double past, double pastDeviation) = PriorView.Of(group, learned.Prior, 0.02)!.LogKilogramsAt(56);
        (double wide, double wideDeviation) = PriorView.Of(group, Shipped, 0.02)!.LogKilogramsAt(56);

        foreach (double probability in (double[])[0.05, 0.5, 0.95])
        {
            double log = batch.LogKilogramsAt(56, probability);
            double below = (batch.ChanceLikePast * Distributions.NormalProbability((log - past) / pastDeviation))
                + ((1 - batch.ChanceLikePast) * Distributions.NormalProbability((log - wide) / wideDeviation));
            below.Should().BeApproximately(probability, 1e-9);
        }
    }

    private static LearnedPrior Learned() =>
        new SimulatedFarm(seed: 6, pastBatches: 6, otherStrain: false, weighInError: 0.02).History.Learn(SimulatedFarm.Kind, Shipped);
}
