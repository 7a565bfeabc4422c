using System.Diagnostics;
using System.Globalization;
using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks;

/// <summary>
/// Ten thousand batches projected, on one thread and on two: they share nothing, so that two threads take about half the time. In one go, and in blocks, one thread and two by turns, of which the best of
/// each counts: what else the machine does comes and goes.
/// </summary>
internal static class ManyBatches
{
    private const int Batches = 10_000;
    private const int Block = 40;

    public static void Run(TextWriter output)
    {
        WeighInSeries[] block = [.. Enumerable.Range(0, Block).Select(batch => WeighInSeries.Of(SimulatedBatch.Draw(StudyRows.All[1], 20270701, batch).WeighIns.Take(4)))];
        WeighInSeries[] all = [.. Enumerable.Range(0, Batches).Select(batch => block[batch % Block])];
        Seconds(all, 2);
        (double wholeByOne, double wholeByTwo) = (Seconds(all, 1), Seconds(all, 2));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{Batches} batches in one go: {wholeByOne:0.00} s on one thread, {wholeByTwo:0.00} s on two, {wholeByOne / wholeByTwo:0.00} times faster"));

        (double one, double two) = (double.PositiveInfinity, double.PositiveInfinity);
        for (int turn = 0; turn < 5 * Batches / Block; turn++)
        {
            one = Math.Min(one, Seconds(block, 1));
            two = Math.Min(two, Seconds(block, 2));
        }

        double blocks = Batches / Block;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{Batches} batches: {blocks * one:0.00} s on one thread, {blocks * two:0.00} s on two, {one / two:0.00} times faster (best of {5 * Batches / Block} blocks of {Block})"));
    }

    private static double Seconds(WeighInSeries[] weighIns, int threads)
    {
        double[] kilograms = new double[weighIns.Length];
        long start = Stopwatch.GetTimestamp();
        Parallel.For(0, weighIns.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, batch =>
            kilograms[batch] = Projection.Of(weighIns[batch], StudyRows.Shipped).MeanAt(Age.FromDays(56)).Interval.Low!.Value.Kilograms);
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }
}
