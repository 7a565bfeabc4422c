using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks;

/// <summary>The nine points of the comparison: male weights by week, from 0 to 56 d, of a breeder's printed objectives (Indian River, 2012 edition, read in an open collection).</summary>
internal static class NinePoints
{
    public static readonly double[] AgeDays = [0, 7, 14, 21, 28, 35, 42, 49, 56];

    public static readonly double[] Kilograms = [0.042, 0.184, 0.477, 0.943, 1.550, 2.246, 2.971, 3.679, 4.338];

    /// <summary>The one start for everybody: mature weight in kg, rate in 1/d, inflection age in d.</summary>
    public static readonly double[] Start = [6, 0.05, 35];

    /// <summary>The kernel's tolerance.</summary>
    public const double Tolerance = 1e-9;

    public static WeighInSeries Series { get; } = SeriesOf(Kilograms);

    /// <summary>The same start in the coordinates of the kernel: k and the relative gain k E/(1 + v E) at the origin, v = 0.</summary>
    public static double[] KernelStart(double origin) => [Start[1], Start[1] * Math.Exp(Start[1] * (Start[2] - origin))];

    /// <summary>Other weights at the same ages.</summary>
    public static WeighInSeries SeriesOf(double[] kilograms) => WeighInSeries.Of(
        AgeDays.Zip(kilograms, (days, weight) => WeighIn.Mean(Age.FromDays(days), Mass.FromKilograms(weight), 1)));
}
