using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using Mass = UnitsNet.Mass;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>
/// A farm with past batches and a new one that may follow any kind of curve. Gompertz and matched curves: parameters normal between farms and between batches as in
/// <see cref="SimulatedFarm"/>. Like published tables: the three weights of <see cref="TrueGrowth.PublishedLike"/> with a quarter of their variance between the batches of a farm.
/// Past batches have 4 to 9 weekly means that end at 42 to 63 d, the new one is weighed weekly; 20 to 40 birds, spread 8 to 14 %, and a 2 % error of a whole weigh-in.
/// </summary>
internal sealed class OwnFarm
{
    private readonly WeighIn[] weighed;

    private OwnFarm(BatchHistory history, Func<double, double> kilograms, WeighIn[] weighed) => (History, Kilograms, this.weighed) = (history, kilograms, weighed);

    public BatchHistory History { get; }

    /// <summary>What the new batch really weighs by age in days.</summary>
    public Func<double, double> Kilograms { get; }

    public static OwnFarm Draw(OwnFarmRow row, long seed, int number)
    {
        RandomStream random = new(seed, number, 21);
        bool published = row.Kind == OwnFarmKind.Published;
        double[] farm = published
            ? Near(ref random, TrueGrowth.PublishedCentre, TrueGrowth.PublishedSpread, Math.Sqrt(0.75))
            : Near(ref random, [Math.Log(7.0), Math.Log(0.0395), 38.5], [0.12, 0.06, 2], 1);
        List<PastBatch> past = [];
        for (int batch = 0; batch < row.PastBatches; batch++)
        {
            int lastWeek = 6 + (int)(4 * random.NextUniform());
            int weighIns = Math.Min(4 + (int)(6 * random.NextUniform()), lastWeek);
            Func<double, double> grown = Batch(ref random, row, farm, row.PastShape);
            past.Add(PastBatch.Of("simulated", WeighInSeries.Of(Weigh(ref random, grown, lastWeek - weighIns + 1, weighIns)), SimulatedFarm.Kind));
        }

        double[] changed = row.OtherStrain ? [farm[0] - 0.25, farm[1] - 0.12, farm[2] + 3] : farm;
        Func<double, double> kilograms = Batch(ref random, row, changed, row.Shape);
        kilograms = row.SlowsDown ? TrueGrowth.SlowDown(ref random, kilograms) : kilograms;
        return new(BatchHistory.Of(past), kilograms, Weigh(ref random, kilograms, 1, 6));
    }

    /// <summary>The new batch by a prior when weighing stops at a day; 0 for none.</summary>
    public Projection ProjectedAt(int stop, GrowthPrior prior) => stop == 0
        ? Projection.Of(prior)
        : Projection.Of(WeighInSeries.Of(weighed.Where(weighIn => weighIn.Age.Days <= stop)), prior);

    private static Func<double, double> Batch(ref RandomStream random, OwnFarmRow row, double[] farm, double shape)
    {
        while (true)
        {
            Func<double, double>? drawn = row.Kind == OwnFarmKind.Published
                ? TrueGrowth.ThroughWeights(Near(ref random, farm, TrueGrowth.PublishedSpread, Math.Sqrt(0.25)), shape)
                : Matched(Near(ref random, farm, [0.06, 0.04, 1.2], 1), shape);
            if (drawn is not null)
            {
                return drawn;
            }
        }
    }

    private static Func<double, double>? Matched(double[] gompertz, double shape) => shape == 0 ? TrueGrowth.Weights(0, gompertz) : TrueGrowth.MatchedTo(gompertz, shape);

    private static double[] Near(ref RandomStream random, double[] centre, double[] deviations, double factor)
    {
        double[] near = new double[3];
        for (int i = 0; i < 3; i++)
        {
            near[i] = centre[i] + (factor * deviations[i] * random.NextNormal());
        }

        return near;
    }

    private static WeighIn[] Weigh(ref RandomStream random, Func<double, double> kilograms, int firstWeek, int weeks)
    {
        double spread = 0.08 + (0.06 * random.NextUniform());
        WeighIn[] weighIns = new WeighIn[weeks];
        for (int i = 0; i < weeks; i++)
        {
            double days = 7 * (firstWeek + i);
            double mean = kilograms(days) * Math.Exp(0.02 * random.NextNormal());
            double[] birds = new double[20 + (int)(21 * random.NextUniform())];
            for (int bird = 0; bird < birds.Length; bird++)
            {
                birds[bird] = mean * (1 + (spread * random.NextNormal()));
            }

            double weighedMean = birds.Average();
            double squares = birds.Sum(weight => (weight - weighedMean) * (weight - weighedMean));
            weighIns[i] = WeighIn.Mean(Age.FromDays(days), Mass.FromKilograms(weighedMean), birds.Length, Mass.FromKilograms(Math.Sqrt(squares / (birds.Length - 1))));
        }

        return weighIns;
    }
}
