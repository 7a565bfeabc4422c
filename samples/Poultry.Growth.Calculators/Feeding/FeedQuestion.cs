using Poultry.Growth.Curves;
using Poultry.Growth.Feeding;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A batch, its weights, its feeds, and what is asked of them.</summary>
internal sealed class FeedQuestion
{
    public static readonly Age UsualEnd = Age.FromDays(56);

    /// <summary>What the batch is called.</summary>
    public required string Title { get; init; }

    public required DateOnly? Placed { get; init; }

    public required HeadCountPath HeadCount { get; init; }

    /// <summary>A table of weights; null where they are projected.</summary>
    public required TabulatedCurve? Table { get; init; }

    /// <summary>Null where a table is given.</summary>
    public required Projection? Projection { get; init; }

    /// <summary>What looks wrong in the weigh-ins.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions { get; init; } = [];

    public required FeedingPlan Plan { get; init; }

    public required FeedingConditions Conditions { get; init; }

    public FeedRecord? Record { get; init; }

    public required Age Until { get; init; }

    /// <summary>By when the batch should have eaten how much; null where nobody asked.</summary>
    public required Age? At { get; init; }

    public required double Level { get; init; }

    public static FeedQuestion Of(BatchFileReading reading, Age? until, Age? at, double level)
    {
        (BatchFlock flock, BatchWeights weights, BatchFeeding feeding) = (reading.Flock!, reading.Weights!, reading.Feeding!);
        return new()
        {
            Title = (flock.Name ?? reading.File) + ", " + Numbers.Whole(flock.HeadCount.Placed) + " birds placed",
            Placed = flock.Placed,
            HeadCount = flock.HeadCount,
            Table = weights.Table,
            Projection = weights.Table is not null ? null
                : weights.WeighIns?.Series is { } series ? Projection.Of(series, weights.Prior!)
                : Projection.Of(weights.Prior!),
            Suspicions = weights.Suspicions,
            Plan = feeding.Plan,
            Conditions = feeding.Conditions,
            Record = feeding.Record,
            Until = until ?? flock.Until ?? UsualEnd,
            At = at,
            Level = level,
        };
    }
}
