using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Planning;

/// <summary>What a farm's finished batches teach: only those of the batch's own kind, each as far as it was written down.</summary>
public sealed class FarmHistoryTests
{
    private static readonly BatchKind Kind = BatchKind.Of("strain A", "movable shelter");
    private static readonly GrowthPrior Prior = GrowthPrior.FastGrowingOutdoor(Sex.Mixed);
    private static readonly EnergyModel Model = EnergyModel.DefaultFor(BirdType.Fast);

    [Fact]
    public void Nothing_is_learned_across_a_change_of_strain_system_or_sex()
    {
        FarmHistory history = FarmHistory.Of(
            Batch("a", BatchKind.Of("strain B", "movable shelter")), Batch("b", BatchKind.Of("strain A", "barn")), Batch("c", BatchKind.Of("strain A", "movable shelter", Sex.Male)), Batch("d", BatchKind.Of()));
        FarmLearning learned = history.Learn(Kind, Prior, Survival.FastGrowingOutdoor, Model);

        (learned.Batches.Count, learned.OfOtherKinds, learned.Feed, learned.Dressing, learned.Lesions).Should().Be((0, 4, null, null, null));
        learned.Growth.Prior.Should().BeSameAs(Prior);
        learned.Survival.Survival.Should().BeSameAs(Survival.FastGrowingOutdoor);
        learned.Cautions.Should().Contain(caution => caution.Code == "no-batch-of-this-kind" && caution.Text.Contains("4 batches, none of strain A, movable shelter"));
    }

    [Fact]
    public void Each_part_learns_from_what_was_written_down()
    {
        FarmLearning learned = FarmHistory.Of(Batch("a", Kind, lost: 40), Batch("b", Kind, lost: 50, neck: Inclusion.With), Batch("c", Kind, neck: Inclusion.Without), Batch("d", Kind, neck: Inclusion.With))
            .Learn(Kind, Prior, Survival.FastGrowingOutdoor, Model);

        (learned.Growth.Batches.Count, learned.Survival.Batches.Count, learned.Feed).Should().Be((4, 2, null));
        learned.Dressing!.Batches.Should().Be(2, "the latest says that the neck is weighed with the carcass");
        learned.Cautions.Should().Contain(caution => caution.Code == "carcasses-not-alike");
        learned.ToString().Should().Be("4 batches of strain A, movable shelter, both sexes");
    }

    [Fact]
    public void A_batch_gives_way_to_its_own_later_figures()
    {
        FarmHistory history = FarmHistory.Of(Batch("a", Kind, lost: 40), Batch("b", Kind));

        history.With(Batch("A", Kind, lost: 10)).Select(batch => (batch.Name, batch.Losses?.Lost)).Should().Equal(("b", null), ("A", 10));
        history.Without(" a ").Single().Name.Should().Be("b");
        FluentActions.Invoking(() => FarmHistory.Of(Batch("a", Kind), Batch("A", Kind))).Should().Throw<ArgumentException>().WithMessage("*stands there twice*");
    }

    [Fact]
    public void A_batch_that_kept_an_old_name_is_told()
    {
        FarmHistory history = FarmHistory.Of(Batch("Meadow 1", Kind), Batch("Meadow 2", Kind));

        history.Without("meadow 2").Learn(Kind, Prior, Survival.FastGrowingOutdoor, Model).Cautions.Should().Contain(caution => caution.Code == "own-name-in-history" && caution.Text.Contains("\"Meadow 2\""));
        history.Without("Meadow 3").Learn(Kind, Prior, Survival.FastGrowingOutdoor, Model).Cautions.Should().NotContain(caution => caution.Code == "own-name-in-history");
    }

    private static FarmBatch Batch(string name, BatchKind kind, int? lost = null, Inclusion? neck = null) => new()
    {
        Weights = PastBatch.Of(name, WeighInSeries.Of(WeighIn.Mean(Age.FromDays(28), Mass.FromGrams(1100), 20), WeighIn.Mean(Age.FromDays(49), Mass.FromGrams(2400), 20)), kind),
        Losses = lost is { } birds ? PastLosses.Of(300, birds, Age.FromDays(1), Age.FromDays(56)) : null,
        Dressed = neck is { } part
            ? (LiveWeight.Of(Mass.FromKilograms(700), LiveState.OffFeed(Duration.FromHours(10))), CarcassWeight.Of(Mass.FromKilograms(490), CarcassBasis.Of(CarcassCondition.Packed, part)))
            : null,
    };
}
