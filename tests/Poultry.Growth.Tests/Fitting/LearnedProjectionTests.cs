using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>A prior learned from past batches, inside a projection.</summary>
public class LearnedProjectionTests
{
    private static readonly GrowthPrior Shipped = StudyRows.Shipped;
    private static readonly Age EightWeeks = Age.FromWeeks(8);

    [Fact]
    public void The_learned_prior_brings_what_the_batches_tell_of_weighing()
    {
        SimulatedFarm farm = new(seed: 21, pastBatches: 12, otherStrain: false, weighInError: 0.05);
        LearnedPrior learned = farm.History.Learn(SimulatedFarm.Kind, Shipped);
        WeighInSeries means = WeighInSeries.Of(farm.WeighedTo(28).Select(weighIn => WeighIn.Mean(weighIn.Age, weighIn.MeanWeight, weighIn.BirdsWeighed)));

        Projection projection = Projection.Of(means, learned.Prior);
        Projection byHand = Projection.Of(
            means,
            learned.Prior.WithScatter(null, null),
            new ProjectionOptions { WeighInError = learned.WeighInError, CoefficientOfVariation = learned.CoefficientOfVariation });

        learned.WeighInError.Should().BeGreaterThan(0.03);
        learned.CoefficientOfVariation.Should().BeInRange(0.08, 0.14);
        (projection.WeighInError, projection.CoefficientOfVariation).Should().Be((learned.WeighInError, learned.CoefficientOfVariation!.Value));
        projection.Cautions.Should().NotContain(caution => caution.Code == "spread-assumed");
        ProjectionCases.Kilograms(projection.MeanAt(EightWeeks)).Should().Equal(ProjectionCases.Kilograms(byHand.MeanAt(EightWeeks)));
        Projection.Of(farm.WeighedTo(28), learned.Prior, new ProjectionOptions { WeighInError = 0.01 }).WeighInError.Should().Be(0.01, "what is said wins");
    }

    [Fact]
    public void Without_batches_the_projection_is_that_of_the_shipped_prior()
    {
        WeighInSeries weighIns = new SimulatedFarm(seed: 22, pastBatches: 0, otherStrain: false, weighInError: 0.02).WeighedTo(21);
        GrowthPrior learned = BatchHistory.Of().Learn(SimulatedFarm.Kind, Shipped).Prior;

        ProjectionCases.Kilograms(Projection.Of(weighIns, learned).MeanAt(EightWeeks))
            .Should().Equal(ProjectionCases.Kilograms(Projection.Of(weighIns, Shipped).MeanAt(EightWeeks)));
    }

    /// <summary>Mean distance, in ln W, of the three limits at 56 d from those under the farm's true prior: it falls with the batches.</summary>
    [Fact]
    [Trait("Speed", "Slow")]
    public void With_every_batch_the_limits_come_nearer_to_those_of_the_true_prior()
    {
        int[] counts = [0, 2, 8, 40];
        double[] distances = [.. counts.Select(batches => Enumerable.Range(0, 8).Average(farm => Distance(new(100 + farm, batches, otherStrain: false, weighInError: 0.02))))];

        distances.Should().BeInDescendingOrder();
        distances[^1].Should().BeLessThan(0.015).And.BeLessThan(distances[0] / 4);
    }

    [Theory]
    [InlineData(23, false)]
    [InlineData(24, true)]
    public void The_own_prior_and_the_one_behind_it_count_as_a_direct_integration_says(int seed, bool otherStrain)
    {
        SimulatedFarm farm = new(seed, pastBatches: 6, otherStrain, weighInError: 0.02);
        GrowthPrior learned = farm.History.Learn(SimulatedFarm.Kind, Shipped).Prior;
        WeighInSeries weighIns = farm.WeighedTo(28);
        FlockSpread spread = new(Sex.Male, weighIns, ProjectionOptions.Default);
        ProjectionData data = new(weighIns, spread, learned.WeighInError!.Value);
        NodeFits fits = new(new NodePlan(learned, ProjectionOptions.Default.ShapeStep), data);
        ProjectionKernel.Fit(fits, new double[ProjectionKernel.WorkspaceLength(data.Count)]);
        NormalMixture ours = NormalMixture.In(new double[3 * fits.Count]);
        NodePrediction.At(fits, 56, 0, ours);

        DirectNode[] direct = [.. fits.Plan.Nodes[..fits.Plan.GompertzNodes].ToArray().Select(node => DirectNode.Of(node.Follows!, node.Discrepancy, data, 56))];

        direct.Should().HaveCount(4);
        double total = direct.Select((node, q) => fits.Plan.Nodes[q].Share * node.Evidence).Sum();
        double followed = Enumerable.Range(0, 4).Sum(q => fits.Weight(q));
        for (int q = 0; q < 4; q++)
        {
            (fits.Weight(q) / followed).Should().BeApproximately(fits.Plan.Nodes[q].Share * direct[q].Evidence / total, 0.01);
            ours.Means[q].Should().BeApproximately(direct[q].Mean, 0.1 * direct[q].Deviation);
            ours.Deviations[q].Should().BeApproximately(direct[q].Deviation, 0.05 * direct[q].Deviation);
        }

        Projection projection = Projection.Of(weighIns, learned);
        projection.FamilyWeights.Take(2).Select(family => family.Prior).Should().Equal(learned, Shipped);
        (projection.FamilyWeights[1].Before.Fraction / projection.FamilyWeights[0].Before.Fraction).Should().BeApproximately(0.1 / 0.9, 1e-12);
        projection.FamilyWeights[1].After.Fraction.Should().BeApproximately(fits.Weight(2) + fits.Weight(3), 1e-12);
        (projection.Disagreement?.Code == "unlike-the-prior").Should().Be(otherStrain);
    }

    private static double Distance(SimulatedFarm farm)
    {
        GrowthPrior truth = farm.Truth.WithFallback(Shipped, 0.10);
        Estimate<Mass> known = Projection.Of(farm.WeighedTo(28), truth).MeanAt(EightWeeks);
        Estimate<Mass> learned = Projection.Of(farm.WeighedTo(28), farm.History.Learn(SimulatedFarm.Kind, Shipped).Prior).MeanAt(EightWeeks);
        return ProjectionCases.Kilograms(learned).Zip(ProjectionCases.Kilograms(known), (mine, best) => Math.Abs(Math.Log(mine / best))).Average();
    }
}
