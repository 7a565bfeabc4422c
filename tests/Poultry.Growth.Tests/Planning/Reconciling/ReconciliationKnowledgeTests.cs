using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using static Poultry.Growth.Tests.Planning.ReconciledCase;

namespace Poultry.Growth.Tests.Planning;

/// <summary>What the forecast may know, and what the batch teaches: only what was measured.</summary>
public sealed class ReconciliationKnowledgeTests
{
    [Fact]
    public void The_forecast_knows_nothing_of_the_last_day()
    {
        WeighIn last = WeighIn.Mean(Age.FromDays(56), Mass.FromKilograms(2.2), 40);
        BatchPlan plan = Plan(weighIns: [.. HarvestCase.Plan().Growth.WeighIns!, last], record: new FeedRecord(Age.FromDays(55), Mass.FromKilograms(1700), Mass.FromKilograms(90)));
        Reconciliation reconciled = Reconciliation.Of(plan, Sheet(265), Few);

        reconciled.Forecast.Growth.WeighIns!.Max(weighIn => weighIn.Age).Days.Should().Be(28);
        reconciled.Forecast.FeedRecord.Should().BeNull();
        reconciled.Knew.Should().EndWith("14 d to 28 d; no deaths written down; no feed record");
        reconciled.Figures.Single(figure => figure.Code == "feed").Actual.Should().Be(1610);
        reconciled.ForHistory(BatchKind.Of()).Weights.WeighIns.Should().HaveCount(4, "it is learned from all the same");
    }

    [Fact]
    public void A_record_of_weeks_before_belongs_to_the_forecast()
    {
        Reconciliation reconciled = Reconciliation.Of(Plan(record: new FeedRecord(Age.FromDays(30), Mass.FromKilograms(700), Mass.FromKilograms(90))), Sheet(265), Few);

        reconciled.Forecast.FeedRecord.Should().NotBeNull();
        reconciled.Figures.Single(figure => figure.Code == "feed").Actual.Should().BeNull();
    }

    [Fact]
    public void What_the_batch_teaches_is_what_was_measured()
    {
        BatchPlan plan = Plan(cuttingLoss: 4);
        FarmBatch batch = Reconciliation.Of(plan, new PlantSheet
        {
            Killed = Killed,
            Delivered = 270,
            LiveWeight = Mass.FromKilograms(270 * 2.5),
            FeedEaten = Mass.FromKilograms(1750),
            Missing = 2,
            Packs = [PackedLine.Of("whole", 1, 200, Mass.FromKilograms(350)), PackedLine.Of("breast", 2, 60, Mass.FromKilograms(96))],
            Basis = CarcassBasis.Of(CarcassCondition.Packed, neck: Inclusion.With),
            Opened = 70,
            Lesions = LesionCounts.Of(green: 2),
        }, Few).ForHistory(BatchKind.Of("strain A", "movable shelter"));

        batch.Losses!.ToString().Should().Be("30 of 300 birds, 1 d to 56 d");
        batch.Weights.WeighIns[^1].BirdsWeighed.Should().Be(270);
        batch.Weights.WeighIns[^1].MeanWeight.Kilograms.Should().BeApproximately(2.5 / (1 - 0.03 - (1.5 * 0.0011)), 1e-9, "10 h off feed, 1.5 of them on the road, are put back");
        (LiveWeight live, CarcassWeight carcass) = batch.Dressed!.Value;
        live.Weight.Kilograms.Should().BeApproximately(675, 1e-9);
        carcass.Weight.Kilograms.Should().BeApproximately(350 + (96 / 0.96), 1e-9, "a plan takes the loss in cutting off by itself");
        carcass.Basis.Neck.Should().Be(Inclusion.With);
        (batch.Inspection!.Opened, batch.Inspection.Found, batch.Inspection.Batch).Should().Be((70, 2, "invented"));
        batch.Feed!.Eaten.Kilograms.Should().Be(1750);
        batch.Feed.Ratio.Should().BeInRange(0.8, 1.3);
        batch.Kind.Should().Be(BatchKind.Of("Strain a", "movable shelter"));
    }

    [Fact]
    public void Money_taken_is_the_revenue_where_all_of_it_is_known()
    {
        PlantSheet taken = new() { Killed = Killed, Delivered = 260, Packs = [PackedLine.Of("whole", 1, 258, Mass.FromKilograms(500)).Taking(Money.Of(4321))] };
        PlantSheet priced = new() { Killed = Killed, Delivered = 260, Packs = [PackedLine.Of("whole", 1, 280, Mass.FromKilograms(560))] };

        Actual(taken, "revenue").Should().Be(4321);
        Actual(priced, "revenue").Should().BeApproximately((260 * 2 * 9.50) + (20 * 2 * 6), 1e-9, "260 are likely to sell, the freezer takes the rest");
    }

    private static double? Actual(PlantSheet sheet, string code) => Reconciliation.Of(Plan(), sheet, Few).Figures.Single(figure => figure.Code == code).Actual;
}
