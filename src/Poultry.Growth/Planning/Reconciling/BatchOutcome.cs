using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What a batch did, by everything written down to its end: its growth with the plant's scale, its head, the feed that the model says for both, its indices.</summary>
internal sealed class BatchOutcome
{
    private readonly Reconciliation reconciled;
    private readonly LiveState atKilling;

    public BatchOutcome(Reconciliation reconciled)
    {
        this.reconciled = reconciled;
        atKilling = LiveState.OffFeed(reconciled.Date.OffFeed, reconciled.Date.Road);
        MeanAtPlantKilograms = reconciled.Sheet.LiveWeight?.Kilograms / reconciled.Sheet.Delivered;
        MeanFullFedKilograms = MeanAtPlantKilograms is { } weighed ? LiveWeight.Of(Mass.FromKilograms(weighed), atKilling).In(LiveState.FullFed, Plan.Plant.Withdrawal).Weight.Kilograms : null;
        WeighIns =
        [
            .. (Plan.Growth.WeighIns ?? Enumerable.Empty<WeighIn>()).Where(weighIn => weighIn.Age <= reconciled.Age),
            .. MeanFullFedKilograms is { } mean ? [WeighIn.Mean(reconciled.Age, Mass.FromKilograms(mean), reconciled.Sheet.Delivered).Noted("over the plant's scale, brought to full-fed")] : Array.Empty<WeighIn>(),
        ];
        Growth = WeighIns.Count > 0 ? Projection.Of(WeighInSeries.Of(WeighIns), Plan.Growth.Prior) : Plan.Growth;
        Head = PathOf(Plan.Birds, reconciled.HeadCount, reconciled.Age);
        FeedForForecast = Feed(Forecast.Growth, Forecast.Birds);
        FeedForHead = Feed(Forecast.Growth, Head);
        FeedForBoth = Feed(Growth, Head);
        Indices = reconciled.EatenKilograms is { } eaten && reconciled.HeadCount.Passed > 0 && reconciled.HeadCount.Passed <= Plan.Birds.Placed ? IndicesOf(eaten) : null;
    }

    /// <summary>All weigh-ins, the plant's scale last.</summary>
    public IReadOnlyList<WeighIn> WeighIns { get; }

    /// <summary>By all of them.</summary>
    public Projection Growth { get; }

    /// <summary>Live weight over the plant's scale; null where there was none.</summary>
    public double? MeanAtPlantKilograms { get; }

    /// <summary>The same with what was lost off feed put back.</summary>
    public double? MeanFullFedKilograms { get; }

    /// <summary>Birds by age as they were.</summary>
    public HeadCountPath Head { get; }

    /// <summary>kg by the model for the growth and head of the forecast, for the head as it was, for both as they were.</summary>
    public double FeedForForecast { get; }

    /// <inheritdoc cref="FeedForForecast"/>
    public double FeedForHead { get; }

    /// <inheritdoc cref="FeedForForecast"/>
    public double FeedForBoth { get; }

    public BatchFigures? Indices { get; }

    private BatchPlan Plan => reconciled.Plan;

    private BatchPlan Forecast => reconciled.Forecast;

    public FarmBatch ForHistory(BatchKind kind)
    {
        PlantSheet sheet = reconciled.Sheet;
        int lesions = sheet.Lesions?.Total ?? 0;
        return new()
        {
            Weights = PastBatch.Of(Plan.Name, WeighIns.Count > 0 ? WeighInSeries.Of(WeighIns) : throw new ArgumentException("Nothing of the batch was ever weighed; expected weigh-ins, or the live weight over the plant's scale.", nameof(kind)), kind),
            Killed = sheet.Killed,
            Losses = reconciled.HeadCount.Lost >= 0 ? PastLosses.Of(Plan.Birds.Placed, reconciled.HeadCount.Lost, Plan.Birds.AgeAtPlacement, reconciled.Age) : null,
            Feed = reconciled.EatenKilograms is { } eaten && eaten > FeedForBoth / 3 && eaten < FeedForBoth * 3
                ? PastFeed.Of(Mass.FromKilograms(eaten), Mass.FromKilograms(FeedForBoth), Plan.Feeding.Model.Model.Id)
                : null,
            Dressed = Dressed(sheet),
            Inspection = sheet.Opened > 0 ? LesionInspection.Of(sheet.Opened, lesions, Plan.Name, sheet.Killed) : null,
        };
    }

    /// <summary>Birds by age: deaths as written down, and those without a day week by week as birds are expected to die.</summary>
    private static HeadCountPath PathOf(HeadCountPath birds, HeadBalance balance, Age killed)
    {
        List<Deaths> deaths = [.. birds.Deaths.Where(day => day.Age <= killed)];
        int undated = Math.Max(0, balance.Undated + balance.Missing + balance.RemainderOnFarm), told = 0;
        Age last = deaths.Count > 0 ? deaths[^1].Age : birds.AgeAtPlacement;
        Survival law = birds.Thereafter.ShareAlive(last, killed).Fraction < 1 ? birds.Thereafter : Survival.FastGrowingOutdoor;
        double all = 1 - law.ShareAlive(last, killed).Fraction;
        for (double days = Math.Min(last.Days + 7, killed.Days); told < undated; days = Math.Min(days + 7, killed.Days))
        {
            int soFar = all > 0 ? (int)Math.Round(undated * (1 - law.ShareAlive(last, Age.FromDays(days)).Fraction) / all) : undated;
            deaths.Add(Deaths.Of(Age.FromDays(days), soFar - told));
            told = soFar;
        }

        return HeadCountPath.Recorded(birds.Placed, birds.AgeAtPlacement, deaths, Survival.WithoutLoss);
    }

    private double Feed(Projection growth, HeadCountPath birds) =>
        FeedForecast.For(growth.Curve, birds, Plan.Feeds, Plan.Feeding, reconciled.Age).Total.BatchFeed.Value.Kilograms;

    private BatchFigures IndicesOf(double eaten)
    {
        double mean = MeanAtPlantKilograms ?? LiveWeight.FullFed(Growth.MeanAt(reconciled.Age).Value).In(atKilling, Plan.Plant.Withdrawal).Weight.Kilograms;
        int passed = reconciled.HeadCount.Passed;
        return BatchFigures.Of(new(Plan.Birds.Placed, passed, reconciled.Age, Mass.FromKilograms(eaten), Mass.FromKilograms(mean * passed)));
    }

    /// <summary>The carcass before cutting over the live weight: a plan takes the loss in cutting off by itself. Ratios out of all sense are left out.</summary>
    private (LiveWeight, CarcassWeight)? Dressed(PlantSheet sheet)
    {
        if (sheet.LiveWeight is not { } live)
        {
            return null;
        }

        double kept = 1 - Plan.Plant.CuttingLoss.Fraction;
        double carcass = sheet.Packs.Sum(pack => pack.Weight.Kilograms / (pack.Piece.Equals(CutOrderLine.WholeBird, StringComparison.OrdinalIgnoreCase) ? 1 : kept));
        double percent = 100 * carcass / live.Kilograms;
        return percent is > 40 and < 95 ? (LiveWeight.Of(live, atKilling), CarcassWeight.Of(Mass.FromKilograms(carcass), sheet.Basis)) : null;
    }
}
