using System.Diagnostics;

namespace Poultry.Growth.Benchmarks.Ratios;

/// <summary>How many times faster a hot path is than its alternative, and what it allocates: both by turns, of which the best of each counts: what else the machine does comes and goes.</summary>
internal sealed class Measurement
{
    private const int Turns = 20;
    private const double BlockSeconds = 0.02;

    /// <summary>Code compiled in haste is compiled again while it runs: MathNet's fit gets four times as fast within the first second.</summary>
    private const double WarmSeconds = 1.5;

    private readonly HotPath path;
    private readonly int ours;
    private readonly int theirs;

    /// <summary>Runs both until they are compiled for good, and sees how many of each make a block long enough to hold its share of collections.</summary>
    public Measurement(HotPath path)
    {
        this.path = path;
        (ours, theirs) = (BlockLength(path.Ours), BlockLength(path.Theirs));
        long before = GC.GetAllocatedBytesForCurrentThread();
        path.Ours();
        AllocatedBytes = GC.GetAllocatedBytesForCurrentThread() - before;
    }

    public long AllocatedBytes { get; }

    /// <summary>The alternative's best time by ours.</summary>
    public double Ratio()
    {
        (double ourBest, double theirBest) = (double.PositiveInfinity, double.PositiveInfinity);
        for (int turn = 0; turn < Turns; turn++)
        {
            ourBest = Math.Min(ourBest, Seconds(path.Ours, ours) / ours);
            theirBest = Math.Min(theirBest, Seconds(path.Theirs, theirs) / theirs);
        }

        return theirBest / ourBest;
    }

    private static int BlockLength(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(start).TotalSeconds < WarmSeconds)
        {
            work();
        }

        return (int)Math.Clamp(BlockSeconds / (Seconds(work, 3) / 3), 1, 1_000_000);
    }

    private static double Seconds(Action work, int times)
    {
        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < times; i++)
        {
            work();
        }

        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }
}
