using System.Globalization;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>An earlier batch of the farm: what was weighed, and what kind of batch it was.</summary>
public sealed class PastBatch
{
    private PastBatch(string name, WeighInSeries weighIns, BatchKind kind) => (Name, WeighIns, Kind) = (name, weighIns, kind);

    /// <summary>The farm's own name for it.</summary>
    public string Name { get; }

    /// <summary>What was weighed. One weigh-in is enough to count.</summary>
    public WeighInSeries WeighIns { get; }

    /// <summary>Strain, system and sex.</summary>
    public BatchKind Kind { get; }

    /// <summary>An earlier batch.</summary>
    /// <param name="name">The farm's own name for it, as in <c>2027 spring</c>.</param>
    /// <param name="weighIns">What was weighed.</param>
    /// <param name="kind">Strain, system and sex.</param>
    /// <exception cref="ArgumentException">The name is empty, or a weigh-in is of the other sex.</exception>
    public static PastBatch Of(string name, WeighInSeries weighIns, BatchKind kind)
    {
        Require.Text(name);
        ArgumentNullException.ThrowIfNull(weighIns);
        ArgumentNullException.ThrowIfNull(kind);
        WeighIn? stranger = kind.Sex == Sex.Mixed ? null : weighIns.FirstOrDefault(weighIn => weighIn.Sex != kind.Sex && weighIn.Sex != Sex.Mixed);
        return stranger is null
            ? new PastBatch(name.Trim(), weighIns, kind)
            : throw new ArgumentException(
                $"The weigh-in at {stranger.Age} is of {stranger.Sex} birds, the batch of {kind.Sex} birds; expected weigh-ins of the batch's sex.", nameof(weighIns));
    }

    /// <summary>Name, kind and weigh-ins in one line and in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name} ({Kind}): {WeighIns}");

    /// <summary>
    /// What was measured on the logarithmic scale, as a projection takes it: means on the curve of the flock, from 7 d on, and the variance that the catch of n
    /// birds gives them. Nothing merged: every weigh-in has an error of its own.
    /// </summary>
    internal static MixedGroup GroupOf(IEnumerable<WeighIn> weighIns, FlockSpread spread)
    {
        WeighIn[] used = [.. weighIns.Where(weighIn => weighIn.AgeDays >= ProjectionData.YoungestDays)];
        return new(
            [.. used.Select(weighIn => weighIn.AgeDays)],
            [.. used.Select(spread.LogCurve)],
            [.. used.Select(weighIn => ProjectionData.Variance(spread, weighIn.Sex, weighIn.AgeDays, weighIn.BirdsWeighed, weighInError: 0))]);
    }
}
