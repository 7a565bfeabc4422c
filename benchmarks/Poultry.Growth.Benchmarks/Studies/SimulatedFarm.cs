using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using Mass = UnitsNet.Mass;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>
/// A farm that follows the model exactly: Gompertz, normal between farms (SD 0.12 of ln A, 0.06 of ln k, 2 d of t*) and between its batches (0.06, 0.04, 1.2 d) about
/// 7.0 kg, 0.0395/d, 38.5 d. Past batches have 4 to 9 weekly means that end at 42 to 63 d; the new one is weighed weekly. Each weigh-in has 20 to 40 birds whose
/// spread (8 to 14 % a batch) is known from them alone, and an error of its own.
/// </summary>
internal sealed class SimulatedFarm
{
    private static readonly double[] BetweenBatches = [0.06, 0.04, 1.2];

    private readonly Random random;
    private readonly double[] farm;
    private readonly double weighInError;
    private readonly double[] newBatch;
    private readonly WeighIn[] weighed;

    /// <param name="seed">The same seed is the same farm.</param>
    /// <param name="pastBatches">How many.</param>
    /// <param name="otherStrain">Whether the new batch is another strain: ln A -0.25, ln k -0.12, t* +3 d.</param>
    /// <param name="weighInError">Error of a whole weigh-in, a fraction.</param>
    public SimulatedFarm(int seed, int pastBatches, bool otherStrain, double weighInError)
    {
        random = new Random(seed);
        this.weighInError = weighInError;
        farm = Near([Math.Log(7.0), Math.Log(0.0395), 38.5], [0.12, 0.06, 2]);
        History = BatchHistory.Of([.. Enumerable.Range(1, pastBatches).Select(_ => PastBatch())]);
        newBatch = Near(farm, BetweenBatches);
        if (otherStrain)
        {
            (newBatch[0], newBatch[1], newBatch[2]) = (newBatch[0] - 0.25, newBatch[1] - 0.12, newBatch[2] + 3);
        }

        weighed = Weigh(newBatch, [7, 14, 21, 28, 35]);
    }

    public static BatchKind Kind { get; } = BatchKind.Of("invented", "simulated", Sex.Male);

    public BatchHistory History { get; }

    /// <summary>What nobody can know: the farm's middle and the spread of its batches.</summary>
    public GrowthPrior Truth => StudyRows.Prior("farm-truth", farm, BetweenBatches);

    public double LogKilogramsAt56Days => LogKilograms(newBatch, 56);

    /// <summary>The new batch as weighed up to a day.</summary>
    public WeighInSeries WeighedTo(int days) => WeighInSeries.Of(weighed.Where(weighIn => weighIn.Age.Days <= days));

    /// <summary>The same as learning takes it.</summary>
    public MixedGroup GroupTo(int days) => GroupOf(Fitting.PastBatch.Of("new", WeighedTo(days), Kind));

    /// <summary>A batch as learning takes it.</summary>
    public static MixedGroup GroupOf(PastBatch batch) => new PastRow(batch, ErrorModel.AssumedCoefficientOfVariation).Group;

    private static double LogKilograms(double[] theta, double days) => theta[0] - Math.Exp(-Math.Exp(theta[1]) * (days - theta[2]));

    private PastBatch PastBatch()
    {
        double[] theta = Near(farm, BetweenBatches);
        int lastWeek = random.Next(6, 10);
        int weighIns = Math.Min(random.Next(4, 10), lastWeek);
        return Fitting.PastBatch.Of("simulated", WeighInSeries.Of(Weigh(theta, [.. Enumerable.Range(lastWeek - weighIns + 1, weighIns).Select(week => 7 * week)])), Kind);
    }

    private WeighIn[] Weigh(double[] theta, int[] days)
    {
        double spread = 0.08 + (0.06 * random.NextDouble());
        return [.. days.Select(day => Weigh(theta, day, spread))];
    }

    private WeighIn Weigh(double[] theta, int days, double spread)
    {
        int birds = random.Next(20, 41);
        double mean = Math.Exp(LogKilograms(theta, days) + (weighInError * Normal()));
        double[] kilograms = [.. Enumerable.Range(0, birds).Select(_ => mean * (1 + (spread * Normal())))];
        double weighedMean = kilograms.Average();
        double squares = kilograms.Sum(weight => (weight - weighedMean) * (weight - weighedMean));
        return WeighIn.Mean(
            Age.FromDays(days), Mass.FromKilograms(weighedMean), birds, Mass.FromKilograms(Math.Sqrt(squares / (birds - 1))));
    }

    private double[] Near(double[] centre, double[] deviations) => [.. centre.Zip(deviations, (middle, deviation) => middle + (deviation * Normal()))];

    /// <summary>Box and Muller.</summary>
    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
