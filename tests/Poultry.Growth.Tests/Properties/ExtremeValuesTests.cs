using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Properties;

/// <summary>What the sweep of the surface once found wrong, each by itself: answers at the ends of what may be typed, and refusals beyond them.</summary>
public sealed class ExtremeValuesTests
{
    [Fact]
    public void A_million_birds_all_with_lesions_are_an_answer()
    {
        FarmLesionRate farm = FarmLesionRate.Learn(LesionInspection.Of(opened: 1_000_000, found: 1_000_000));

        farm.Level().Value.Percent.Should().BeGreaterThan(FarmLesionRate.Learn().Level().Value.Percent);
        farm.NextBatch.IntraclassCorrelation.Should().BeInRange(0, 1);
        farm.ToString().Should().StartWith("1 batch, 1000000 of 1000000 birds");
    }

    /// <summary>A spread of next to nothing leaves nothing to learn: the level stays what is shipped.</summary>
    [Fact]
    public void Losses_that_hardly_differ_between_batches_teach_hardly_anything()
    {
        Survival shipped = Survival.FastGrowingOutdoor;
        Survival alike = shipped.Scaled(1, 1e-9, shipped.Model);

        LearnedSurvival.From(alike, [PastLosses.Of(1_000_000, 2, Age.FromDays(5), Age.FromDays(36))]).LevelRatio.Should().BeApproximately(1, 1e-6);
    }

    [Fact]
    public void Birds_all_of_one_weight_are_cut_into_heavier_and_lighter()
    {
        WeightDistribution alike = WeightDistribution.Of(Mass.FromGrams(1), coefficientOfVariation: 0);

        foreach (WeightDistribution part in new[] { alike.Heaviest(Probability.FromPercent(45)), alike.Lightest(Probability.FromPercent(45)) })
        {
            part.Mean.Grams.Should().BeApproximately(1, 1e-9);
            part.CoefficientOfVariation.Should().BeInRange(0, 1e-9);
        }
    }

    [Fact]
    public void Next_to_no_birds_are_refused()
    {
        WeightDistribution birds = WeightDistribution.Of(Mass.FromKilograms(2.5), 0.1);

        FluentActions.Invoking(() => birds.Heaviest(Probability.FromFraction(1e-9))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*of all birds*");
    }

    [Fact]
    public void A_shelter_that_never_moves_in_a_batch_stands_on_one_spot() =>
        MoveSchedule.Steady(1e-12).Positions(Age.FromDays(21), Age.FromDays(56)).Should().Be(1);

    [Fact]
    public void A_live_weight_that_no_bird_has_is_refused() => FluentActions.Invoking(() => new BatchAtRisk { KillAge = Age.FromDays(56), LiveWeight = Mass.FromKilograms(100) })
        .Should().Throw<ArgumentOutOfRangeException>().WithParameterName("LiveWeight").WithMessage("100 kg*0.01 to 20 kg*");

    [Fact]
    public void A_saved_weigh_in_with_more_birds_than_weights_is_refused() => FluentActions
        .Invoking(() => WeighIn.FromRecord(new() { Kind = WeighInKind.Birds, AgeDays = 7, Birds = 3, MeanKilograms = 0.17, Kilograms = [0.17] }))
        .Should().Throw<ArgumentException>().WithMessage("1 numbers given, 3 expected.*");
}
