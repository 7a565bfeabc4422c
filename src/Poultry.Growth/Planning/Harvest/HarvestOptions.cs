using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>How days of killing are compared.</summary>
public sealed class HarvestOptions
{
    /// <summary>How many fates of the batch are tried, 100 to 1,000,000.</summary>
    /// <value>4000: means are then known within 2 % of the spread.</value>
    /// <exception cref="ArgumentOutOfRangeException">Outside these.</exception>
    public int Draws { get; init => field = (int)Require.Between(value, 100, 1_000_000, "", nameof(Draws)); } = 4000;

    /// <summary>Of all random numbers: the same seed gives the same answer.</summary>
    public long Seed { get; init; } = 1;

    /// <summary>The chance that intervals claim, between 0 and 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 1.</exception>
    public double Level { get; init => field = Require.Share(value, nameof(Level)); } = GrowthFit.DefaultLevel;

    /// <summary>On how many threads, 1 or more; the answer is the same on any number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public int Threads { get; init => field = Require.AtLeast(value, 1, nameof(Threads)); } = Environment.ProcessorCount;

    /// <summary>Told which part of a calculation is done, from 0 to 1, on whichever thread; null where nobody waits.</summary>
    public IProgress<double>? Progress { get; init; }
}
