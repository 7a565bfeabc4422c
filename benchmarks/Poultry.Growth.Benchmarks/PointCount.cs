using BenchmarkDotNet.Attributes;
using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks;

/// <summary>What another weigh-in costs: the time a point must stay the same from a hundred to a hundred thousand.</summary>
[MemoryDiagnoser]
public class PointCount
{
    private WeighInSeries weighIns = NinePoints.Series;

    /// <summary>Number of weigh-ins, spread over 0 to 56 d.</summary>
    [Params(100, 1_000, 10_000, 100_000)]
    public int Points { get; set; }

    /// <summary>Weights on a Gompertz curve with a bounded, repeatable scatter.</summary>
    [GlobalSetup]
    public void Weigh()
    {
        GrowthCurve curve = CurveFamilies.Gompertz.FromParameters(6, 0.042, 39);
        weighIns = WeighInSeries.Of(Enumerable.Range(0, Points).Select(i =>
        {
            Age age = Age.FromDays(56.0 * i / (Points - 1));
            double off = 1 + (0.05 * Math.Sin(12.9898 * i));
            return WeighIn.Mean(age, Mass.FromKilograms(off * curve.WeightAt(age).Kilograms), 1);
        }));
    }

    /// <summary>The public fit.</summary>
    [Benchmark]
    public GrowthFit Fit() => GrowthFit.Of(weighIns, errors: ErrorModel.EqualVariance);
}
