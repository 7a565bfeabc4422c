using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What a batch eats, drinks and costs in feed from placement to an age, day by day, and what it should have eaten by now.</summary>
/// <remarks>
/// Energy need of each day (see <see cref="EnergyModel"/>), less what pasture gives, over the energy of the feed and what is not spilt. Intervals hold the error
/// of the model and that of the weights, taken as independent and log-normal; not that of how many birds live, nor of the energy of the feed (3 % for each
/// 100 kcal/kg). Whole days from placement on. Deterministic; immutable, safe to share.
/// </remarks>
public sealed class FeedForecast
{
    private readonly FeedSums sums;

    private FeedForecast(FeedSums sums, HeadCountPath birds, FeedingPlan plan, FeedingConditions conditions, IReadOnlyList<Caution> cautions)
    {
        (this.sums, HeadCount, Conditions, Cautions) = (sums, birds, conditions, cautions);
        ByDay = [.. Enumerable.Range(0, sums.Count).Select(sums.Day)];
        Phases = [.. Enumerable.Range(0, plan.Phases.Count).Where(sums.HasPhase).Select(phase => new PhaseFeed(plan.Phases[phase], sums.PhaseFeed(phase), birds.AgeAtPlacement))];
    }

    /// <summary>One a day, in order.</summary>
    public IReadOnlyList<FeedDay> ByDay { get; }

    /// <summary>What to buy of each feed; phases that begin after the forecast ends are left out.</summary>
    public IReadOnlyList<PhaseFeed> Phases { get; }

    /// <summary>The last day: totals of a bird and of the batch.</summary>
    public FeedDay Total => ByDay[^1];

    /// <summary>What all phases cost together; null where a price is not known.</summary>
    public Money? Cost => Phases.Any(phase => phase.Cost is null) ? null : Phases.Aggregate(Money.Zero, (sum, phase) => sum + phase.Cost!.Value);

    /// <summary>The same at the bounds of the batch's feed, as dear as the expected feed by weight; null where a price is not known.</summary>
    public Interval<Money>? CostInterval => Cost is { } cost && Total.BatchFeed is { Interval: var range, Value: var feed }
        ? Interval<Money>.Of(cost * (range.Low!.Value / feed), cost * (range.High!.Value / feed), range.Level)
        : null;

    /// <summary>The farm's record against the forecast; null without a record.</summary>
    public FarmFactor? FarmFactor => sums.Factor;

    /// <summary>Birds by age.</summary>
    public HeadCountPath HeadCount { get; }

    /// <summary>How the batch is kept.</summary>
    public FeedingConditions Conditions { get; }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The ages at which a forecast asks for weights: what to draw curves at.</summary>
    /// <param name="birds">Birds by age.</param>
    /// <param name="until">The last age, at least a day after placement.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not.</exception>
    public static IReadOnlyList<Age> AgesFor(HeadCountPath birds, Age until)
    {
        ArgumentNullException.ThrowIfNull(birds);
        return [.. Enumerable.Range(0, Days(birds, until) + 1).Select(day => Age.FromDays(birds.AgeAtPlacement.Days + day))];
    }

    /// <summary>Forecasts the feed of a batch.</summary>
    /// <param name="curve">Mean live weight by age, of the sex that <paramref name="conditions"/> name.</param>
    /// <param name="birds">Birds by age.</param>
    /// <param name="plan">The feeds.</param>
    /// <param name="conditions">How the batch is kept and what it is.</param>
    /// <param name="until">The last age, at least a day after placement; part days are not forecast.</param>
    /// <param name="options">How sure the weights are, and what was recorded.</param>
    /// <exception cref="ArgumentException">The feeds do not cover the time, pasture or ranging are given for birds that never go out, a record lies outside the time, or curves are drawn at other ages.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The end is too early, or no bird is left by then, or the curve says nothing about an age, is outside 12.5 g to 10 kg or falls so fast that a day asks for no feed.</exception>
    public static FeedForecast For(
        IGrowthCurve curve, HeadCountPath birds, FeedingPlan plan, FeedingConditions conditions, Age until, FeedForecastOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(birds);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(conditions);
        options ??= new FeedForecastOptions();
        int count = Days(birds, until);
        double start = birds.AgeAtPlacement.Days;
        Require.Positive(birds.BirdsAt(Age.FromDays(start + count)), "birds alive at the end", nameof(birds));
        plan.RequireCovers(birds.AgeAtPlacement, Age.FromDays(start + count), nameof(plan));
        if (conditions.Temperatures.MoveOut is null && (conditions.Pasture.EnergyShare.Fraction > 0 || conditions.Ranging.Fraction > 0))
        {
            throw new ArgumentException("Pasture or ranging without a day on which the birds go out; expected Temperatures.HouseThen.", nameof(conditions));
        }

        FeedPath path = new(plan, conditions, start, count);
        WeightPath weights = new(curve, start, count, conditions.HatchWeight?.Kilograms);
        CurveError error = CurveError.None;
        if (options.Curves is { } curves)
        {
            if (!curves.Ages.SequenceEqual(AgesFor(birds, until)))
            {
                throw new ArgumentException("The curves are drawn at other ages; expected those of FeedForecast.AgesFor.", nameof(options));
            }

            error = CurveError.Of(path, curves, options.Draws, weights);
        }

        FeedSums sums = new(path, weights, error, birds, conditions, options);
        return new(sums, birds, plan, conditions, FeedCautions.Of(plan, conditions, options, weights, path, error, start));
    }

    /// <summary>What the batch should have eaten by an age, by the forecast and its corrections.</summary>
    /// <param name="age">From placement to the end of the forecast; between whole days in proportion.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these.</exception>
    public Estimate<Mass> BatchFeedTo(Age age) =>
        sums.BatchTo(Require.Between(age.Days - HeadCount.AgeAtPlacement.Days, 0, ByDay.Count, "d after placement", nameof(age)));

    /// <summary>In one line and in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{HeadCount.Placed} birds to {Total.Age}: {Total.BatchFeed} feed, {Conditions.Model}");

    /// <summary>What a bird eats each day on another curve, the farm's factor included: for draws of whole batches.</summary>
    /// <param name="kilograms">Weights at <see cref="AgesFor"/>; those of the first week are put on the way from hatch weight.</param>
    /// <param name="feedKilograms">Receives the feed of each day.</param>
    /// <returns>False where no bird could follow the curve.</returns>
    internal bool OfCurve(Span<double> kilograms, Span<double> feedKilograms) => sums.OfCurve(kilograms, feedKilograms);

    /// <summary>Standard error of the logarithm of feed still to come, for want of a better model.</summary>
    internal double LogError => sums.LongError;

    /// <summary>The days whose feed together a record tells that corrects the forecast; 0 without one.</summary>
    internal int RecordedDays => sums.RecordedDays;

    private static int Days(HeadCountPath birds, Age until) =>
        (int)Math.Floor(Require.Between(until.Days - birds.AgeAtPlacement.Days, 1, 365, "d after placement", nameof(until)) + 1e-9);
}
