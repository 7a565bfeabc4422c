using System.Diagnostics;
using System.Globalization;
using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks;

/// <summary>
/// Ten thousand batches projected, and a hundred thousand fitted, on one thread and on two: they share nothing, so that two threads take about half the time. In one go, and in blocks, one thread and
/// two by turns, of which the best of each counts: what else the machine does comes and goes.
/// </summary>
internal static class ManyBatches
{
    private const int Different = 40;

    public static void Run(TextWriter output)
    {
        WeighInSeries[] batches = [.. Enumerable.Range(0, Different).Select(batch => WeighInSeries.Of(SimulatedBatch.Draw(StudyRows.All[1], 20270701, batch).WeighIns))];
        WeighInSeries[] young = [.. batches.Select(batch => WeighInSeries.Of(batch.Take(4)))];
        Run(output, "projected", 10_000, 40, batch => Projection.Of(young[batch % Different], StudyRows.Shipped).MeanAt(Age.FromDays(56)).Interval.Low!.Value.Kilograms);
        Run(output, "fitted", 100_000, 1000, batch => GrowthFit.Of(batches[batch % Different]).LogLikelihood);
    }

    private static void Run(TextWriter output, string done, int batches, int block, Func<int, double> work)
    {
        Seconds(work, batches, 2);
        long before = GC.GetTotalAllocatedBytes();
        (double wholeByOne, double wholeByTwo) = (Seconds(work, batches, 1), Seconds(work, batches, 2));
        long bytes = (GC.GetTotalAllocatedBytes() - before) / 2 / batches;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{batches} batches {done} in one go: {wholeByOne:0.00} s on one thread, {wholeByTwo:0.00} s on two, {wholeByOne / wholeByTwo:0.00} times faster; {bytes} B a batch"));

        (double one, double two) = (double.PositiveInfinity, double.PositiveInfinity);
        int turns = 5 * batches / block;
        for (int turn = 0; turn < turns; turn++)
        {
            one = Math.Min(one, Seconds(work, block, 1));
            two = Math.Min(two, Seconds(work, block, 2));
        }

        double blocks = (double)batches / block;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{batches} batches {done}: {blocks * one:0.00} s on one thread, {blocks * two:0.00} s on two, {one / two:0.00} times faster (best of {turns} blocks of {block})"));
    }

    private static double Seconds(Func<int, double> work, int batches, int threads)
    {
        double[] results = new double[batches];
        long start = Stopwatch.GetTimestamp();
        Parallel.For(0, batches, new ParallelOptions { MaxDegreeOfParallelism = threads }, batch => results[batch] = work(batch));
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }
}
