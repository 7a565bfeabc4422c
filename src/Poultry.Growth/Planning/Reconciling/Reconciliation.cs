using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Planning;

/// <summary>
/// A plant's sheet beside the forecast: where the birds have gone, each figure with the interval that was claimed for it, what explains the difference, the batch's
/// indices, and what the batch teaches the next one.
/// </summary>
/// <remarks>The forecast is the plan as it stood before killing: with the weigh-ins before that day, the deaths written down, and without a feed record of the last two days.</remarks>
public sealed class Reconciliation
{
    /// <summary>A feed record this near to killing is what the batch ate, and no forecast.</summary>
    private const double RecordDays = 2;

    private Reconciliation(BatchPlan plan, PlantSheet sheet, HarvestOptions options, CancellationToken stop)
    {
        OfferedDate? offered = plan.Dates.FirstOrDefault(date => date.Date == sheet.Killed);
        (Plan, Sheet, Age, WasOffered) = (plan, sheet, plan.AgeOn(sheet.Killed), offered is not null);
        Date = offered ?? Elsewhen(plan, sheet.Killed);
        bool isRecorded = plan.FeedRecord is { } record && Math.Abs((record.Age - Age).Days) <= RecordDays;
        EatenKilograms = sheet.FeedEaten?.Kilograms ?? (isRecorded ? plan.FeedRecord!.Eaten.Kilograms : null);
        Forecast = plan.Before(Date, Known(plan, Age), isRecorded || plan.FeedRecord?.Age >= Age ? null : plan.FeedRecord);
        HeadCount = new(plan, sheet, Age);
        Outcome = new(this);
        Figures = Differences.Of(this, ReconciledDraws.Of(Forecast, sheet, options, stop), new Sample(options.Draws, options.Level));
        Cautions = [.. ReconciliationCautions.Of(this)];
    }

    /// <summary>How a difference is taken apart.</summary>
    public static ModelInfo Model { get; } = new(
        "reconciliation",
        "Forecast and plant sheet",
        "P = N W y; P - P' = L (ln N/N' + ln W/W' + ln y/y'), L = (P - P')/(ln P - ln P'); R = P v likewise, v left open; F = f(N, W) k: f(N, W')/f(N', W') by head, f(N, W)/f(N, W') by weight, k left open",
        [
            new("P", "packed weight; P' by forecast, and so for the others", "kg"),
            new("N", "birds delivered", "birds"),
            new("W", "mean live weight at killing", "kg"),
            new("y", "packed over live weight", "-"),
            new("L", "logarithmic mean: the parts add up exactly", "kg"),
            new("R", "revenue", "money"),
            new("v", "revenue for packed weight: cuts, prices, demand", "money/kg"),
            new("F", "feed eaten", "kg"),
            new("f", "feed by the model for a head and a growth", "kg"),
            new("k", "eaten over what the model says", "-"),
        ],
        [new Citation("ExactParts", "A product taken apart by logarithms of its factors; own arithmetic", HowKnown.Derived)],
        "Exact: parts and what is left open add up to the difference. It says where a difference lies, not why.",
        HowKnown.Derived);

    /// <summary>The plan, with everything written down since.</summary>
    public BatchPlan Plan { get; }

    /// <summary>The plan as it stood before killing, for that day only.</summary>
    public BatchPlan Forecast { get; }

    /// <summary>What the forecast knew, in words and in every culture.</summary>
    public string Knew => (Forecast.Growth.WeighIns is { } weighed ? weighed.ToString() : "no weigh-in")
        + (HeadCount.DeathsWritten ? "; deaths written down to " + Forecast.Birds.CountedUntil : "; no deaths written down")
        + (Forecast.FeedRecord is { } record ? "; " + record : "; no feed record");

    /// <summary>What came of it.</summary>
    public PlantSheet Sheet { get; }

    /// <summary>The day of killing and the plant's terms.</summary>
    public OfferedDate Date { get; }

    /// <summary>Whether the plan offered that day; otherwise the terms of the booked or the first day were taken.</summary>
    public bool WasOffered { get; }

    /// <summary>How old the birds were.</summary>
    public Age Age { get; }

    /// <summary>Where the birds have gone.</summary>
    public HeadBalance HeadCount { get; }

    /// <summary>Each figure of the forecast beside what came of it.</summary>
    public IReadOnlyList<ReconciledFigure> Figures { get; }

    /// <summary>The trade's figures of the batch; null where the feed to the end was not written down, or no bird passed, or by the plant's count more than were placed.</summary>
    public BatchFigures? Indices => Outcome.Indices;

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>What the batch ate to the end; null where that was not written down.</summary>
    internal double? EatenKilograms { get; }

    /// <summary>What the batch did, by everything that was written down.</summary>
    internal BatchOutcome Outcome { get; }

    /// <summary>Holds a plant's sheet against a plan.</summary>
    /// <param name="plan">The batch, as its file stands.</param>
    /// <param name="sheet">What came back.</param>
    /// <param name="options">Draws, seed, level; the usual where null.</param>
    /// <param name="stop">Asks to stop.</param>
    /// <exception cref="ArgumentException">The plan offers no day, the birds were killed less than 15 days after they came, more birds were delivered than placed, or deaths stand in both.</exception>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public static Reconciliation Of(BatchPlan plan, PlantSheet sheet, HarvestOptions? options = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sheet);
        Require.Some(plan.Dates);
        if (sheet.Killed.DayNumber - plan.Placed.DayNumber < 15)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"The birds were killed on {sheet.Killed:yyyy-MM-dd} and came on {plan.Placed:yyyy-MM-dd}; expected a day at least 15 days later."), nameof(sheet));
        }

        if (sheet.Dead + sheet.Culled > 0 && plan.Birds.Deaths.Count > 0)
        {
            throw new ArgumentException("Dead or culled birds stand in the sheet and day by day too; expected them once.", nameof(sheet));
        }

        return sheet.Delivered <= plan.Birds.Placed
            ? new(plan, sheet, options ?? new(), stop)
            : throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"{sheet.Delivered} birds were delivered; expected at most the {plan.Birds.Placed} placed."), nameof(sheet));
    }

    /// <summary>The batch for the farm's history: weigh-ins with the plant's scale, losses, feed, dressing, dead tenders, as far as they were written down.</summary>
    /// <param name="kind">Strain, system and sex: what it will teach.</param>
    /// <exception cref="ArgumentException">Nothing of the batch was ever weighed, or the kind is of the other sex.</exception>
    public FarmBatch ForHistory(BatchKind kind) => Outcome.ForHistory(kind);

    /// <summary>In one line, as in <c>Meadow 3: 8 of 10 figures inside</c>, in every culture.</summary>
    public override string ToString()
    {
        ReconciledFigure[] measured = [.. Figures.Where(figure => figure.Actual is not null)];
        return string.Create(CultureInfo.InvariantCulture, $"{Plan.Name}: {measured.Count(figure => figure.IsInside == true)} of {measured.Length} figures inside");
    }

    /// <summary>A day that was not offered, on the terms of the one booked or else of the first.</summary>
    private static OfferedDate Elsewhen(BatchPlan plan, DateOnly killed)
    {
        OfferedDate terms = plan.Dates.FirstOrDefault(date => date.IsBooked) ?? plan.Dates[0];
        return terms.As(killed, terms.IsBooked, terms.BookedBirds);
    }

    private static Projection Known(BatchPlan plan, Age killed)
    {
        WeighIn[] before = [.. (plan.Growth.WeighIns ?? Enumerable.Empty<WeighIn>()).Where(weighIn => weighIn.Age < killed)];
        return before.Length == (plan.Growth.WeighIns?.Count ?? 0) ? plan.Growth
            : before.Length == 0 ? Projection.Of(plan.Growth.Prior)
            : Projection.Of(WeighInSeries.Of(before), plan.Growth.Prior);
    }
}
