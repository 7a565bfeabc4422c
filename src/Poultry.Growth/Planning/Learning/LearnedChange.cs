using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What is known of the next batch before and after a finished one was added to the history: one part of the plan.</summary>
/// <remarks>Parts have different units, so they are plain numbers here, in the <see cref="Unit"/> stated.</remarks>
public sealed class LearnedChange
{
    private LearnedChange(string code, string name, ReconciledUnit unit, int batches, (double Value, Interval<double> Range) before, (double Value, Interval<double> Range) after) =>
        (Code, Name, Unit, Batches, Before, BeforeInterval, After, AfterInterval) = (code, name, unit, batches, before.Value, before.Range, after.Value, after.Range);

    /// <summary>For programs: <c>growth</c>, <c>losses</c>, <c>feed</c>, <c>dressing</c>, <c>lesions</c>.</summary>
    public string Code { get; }

    /// <summary>What it is, as in <c>mean live weight at 58 d</c>.</summary>
    public string Name { get; }

    /// <summary>What the numbers count.</summary>
    public ReconciledUnit Unit { get; }

    /// <summary>How many own batches stand behind it now.</summary>
    public int Batches { get; }

    /// <summary>What was expected of the next batch before.</summary>
    public double Before { get; }

    /// <summary>Where it was expected to lie.</summary>
    public Interval<double> BeforeInterval { get; }

    /// <summary>What is expected of the next batch now.</summary>
    public double After { get; }

    /// <summary>Where it is expected to lie.</summary>
    public Interval<double> AfterInterval { get; }

    /// <summary>The parts of a plan, one by one.</summary>
    /// <param name="before">What the history taught.</param>
    /// <param name="after">What it teaches with the batch added.</param>
    /// <param name="plan">The batch that was added: its model of feed, its sex, its ages.</param>
    /// <param name="dressing">The ratio of a book behind the farm's own.</param>
    /// <param name="killed">The age for which growth and losses are told.</param>
    /// <param name="level">The chance that intervals claim; the range of dressing is that of 90 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public static IReadOnlyList<LearnedChange> Between(FarmLearning before, FarmLearning after, BatchPlan plan, DressingRatio dressing, Age killed, double level = GrowthFit.DefaultLevel)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(dressing);
        double reach = Distributions.NormalQuantile((1 + Require.Share(level)) / 2);
        LearnedChange Change(string code, string name, ReconciledUnit unit, int batches, Func<FarmLearning, (double, Interval<double>)> part) => new(code, name, unit, batches, part(before), part(after));
        return
        [
            Change("growth", string.Create(CultureInfo.InvariantCulture, $"mean live weight at {killed}, nothing weighed yet"), ReconciledUnit.Kilograms, after.Growth.Batches.Count, farm => Weight(farm.Growth.Prior, killed, level)),
            Change("losses", string.Create(CultureInfo.InvariantCulture, $"lost on the farm to {killed}"), ReconciledUnit.Percent, after.Survival.Batches.Count, farm => Lost(farm.Survival.Survival, plan.Birds.AgeAtPlacement, killed, reach, level)),
            Change("feed", "feed, of what the model says", ReconciledUnit.Percent, after.Feed?.Batches.Count ?? 0, farm => Fed(farm.Feed, plan.Feeding.Model, reach, level)),
            Change("dressing", "carcass of live weight", ReconciledUnit.Percent, after.Dressing?.Batches ?? 0, farm => Dressed(farm.Dressing, dressing)),
            Change("lesions", "birds with dead tenders, median", ReconciledUnit.Percent, after.Lesions?.Inspections.Count ?? 0, farm => Lesions(farm.Lesions, plan, killed, level)),
        ];
    }

    /// <summary>In one line, as in <c>losses: 9.4 (4.6 to 17.9) to 8.1 (4.9 to 12.8)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Code}: {Before:0.##} ({BeforeInterval.Low:0.##} to {BeforeInterval.High:0.##}) to {After:0.##} ({AfterInterval.Low:0.##} to {AfterInterval.High:0.##})");

    private static (double, Interval<double>) Weight(GrowthPrior prior, Age age, double level)
    {
        Evidence.Estimate<UnitsNet.Mass> mean = Projection.Of(prior).MeanAt(age, level);
        return (mean.Value.Kilograms, Interval<double>.Of(mean.Interval.Low?.Kilograms, mean.Interval.High?.Kilograms, level));
    }

    private static (double, Interval<double>) Lost(Survival survival, Age from, Age to, double reach, double level)
    {
        double In(double deviations) => 100 * (1 - survival.ShareAliveInBatch(from, to, deviations).Fraction);
        return (100 * (1 - survival.ShareAlive(from, to).Fraction), Interval<double>.Of(In(-reach), In(reach), level));
    }

    private static (double, Interval<double>) Fed(LearnedFeed? feed, EnergyModel model, double reach, double level)
    {
        (double mean, double spread) = (feed?.LogMean ?? 0, feed?.LogSpread ?? model.CumulativeError);
        return (100 * Math.Exp(mean), Interval<double>.Of(100 * Math.Exp(mean - (reach * spread)), 100 * Math.Exp(mean + (reach * spread)), level));
    }

    private static (double, Interval<double>) Dressed(PastDressing? own, DressingRatio published)
    {
        LikelyRange<Probability> ratio = own is not null && published.Basis.Covers(own.Basis) ? published.PooledWith(own).Ratio : published.Ratio;
        return (ratio.Likely.Percent, Interval<double>.Of(ratio.Low.Percent, ratio.High.Percent, 0.9));
    }

    private static (double, Interval<double>) Lesions(FarmLesionRate? found, BatchPlan plan, Age killed, double level)
    {
        BatchPrevalence share = LesionShares.PrevalenceOf(found is null ? PlanningRisk.Published : PlanningRisk.Learned(found), plan, killed, plan.Growth.MeanAt(killed).Value);
        Interval<BirdPrevalence> range = share.IntervalAt(level);
        return (share.Median.Share.Percent, Interval<double>.Of(range.Low!.Value.Share.Percent, range.High!.Value.Share.Percent, level));
    }
}
