using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>
/// A farm that follows the model: the logit of its level lies about -6.06 with 0.8, its batches about that with a spread of their own, and 200 to 600 birds of each are opened. What is told of
/// its level, its rate in the long run and its next batch, against what is true.
/// </summary>
internal sealed class LesionFarm
{
    private const double Centre = -6.06, BetweenFarms = 0.8;

    private readonly Random random;

    public LesionFarm(int seed, int batches, double betweenBatches)
    {
        random = new Random(seed);
        double level = Centre + (BetweenFarms * Normal());
        FarmLesionRate farm = FarmLesionRate.Learn([.. Enumerable.Range(1, batches).Select(number => Inspection(number, level + (betweenBatches * Normal())))]);
        Level = Told.Of(farm.Level(), level);
        Rate = Told.Of(farm.LongRunRate(), Logit(Mean(level, betweenBatches)));
        Interval<BirdPrevalence> next = farm.NextBatch.IntervalAt(0.90);
        Next = Told.Of(new(farm.NextBatch.Median, next, FarmLesionRate.Model, []), level + (betweenBatches * Normal()));
    }

    public Told Level { get; }

    public Told Rate { get; }

    public Told Next { get; }

    private static double Logit(double share) => Math.Log(share / (1 - share));

    /// <summary>The mean share of batches about a level, by sums over 12 deviations either way.</summary>
    private static double Mean(double level, double spread)
    {
        (double sum, double weights) = (0, 0);
        for (double u = -12; u <= 12; u += 0.05)
        {
            double weight = Math.Exp(-u * u / 2);
            sum += weight / (1 + Math.Exp(-level - (spread * u)));
            weights += weight;
        }

        return sum / weights;
    }

    private LesionInspection Inspection(int number, double logit)
    {
        (int opened, double share) = (random.Next(200, 601), 1 / (1 + Math.Exp(-logit)));
        int found = Enumerable.Range(0, opened).Count(_ => random.NextDouble() < share);
        return LesionInspection.Of(opened, found, FormattableString.Invariant($"batch {number}"));
    }

    /// <summary>Box and Muller.</summary>
    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>A share as told: error of the median and width of the 90 % interval, on the logit scale.</summary>
    internal sealed record Told(double Error, bool Covered, double Width)
    {
        public static Told Of(Evidence.Estimate<BirdPrevalence> told, double truth)
        {
            double At(BirdPrevalence share) => Logit(share.Share.Fraction);
            (double low, double high) = (At(told.Interval.Low!.Value), At(told.Interval.High!.Value));
            return new(Math.Abs(At(told.Value) - truth), low <= truth && truth <= high, high - low);
        }
    }
}
