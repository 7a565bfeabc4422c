using BenchmarkDotNet.Attributes;
using MathNet.Numerics.RootFinding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks;

/// <summary>
/// A batch on its floor by age: 990 chicks on 60 m² in Germany, weekly ages from 7 to 63 d, all shipped limits judged. Beside it the chance of passing the limit over
/// 1,000 drawn curves, each with the chance that so many birds are alive.
/// </summary>
[MemoryDiagnoser]
public class DensityPathCost
{
    private const int Count = 1000;

    private static readonly Age[] Ages = [.. Enumerable.Range(1, 9).Select(week => Age.FromWeeks(week))];

    private static readonly Keeping Barn = new() { Place = "Germany", System = RearingSystem.Indoor, House = HouseKind.Fixed, Meets = ["annex-ii"] };

    private readonly Projection projection = Projection.Of(GrowthPrior.FastGrowingOutdoor(Sex.Mixed));
    private readonly HeadCountPath birds = HeadCountPath.Expected(990, Age.FromDays(1), Survival.FastGrowingOutdoor);
    private readonly CurveDraws draws;
    private readonly DensityPath path;

    /// <summary>The batch.</summary>
    public DensityPathCost()
    {
        draws = projection.Draws(1, Ages);
        path = DensityPath.Of(Area.FromSquareMeters(60), projection.Curve, birds, Barn);
    }

    /// <summary>The draws by themselves.</summary>
    [Benchmark(Baseline = true)]
    public double Draw()
    {
        double[] kilograms = new double[Ages.Length];
        double sum = 0;
        for (int draw = 0; draw < Count; draw++)
        {
            draws.Draw(draw, kilograms);
            sum += kilograms[^1];
        }

        return sum;
    }

    /// <summary>The age at which 33 kg/m² is passed, by MathNet's root search.</summary>
    [Benchmark]
    public double SearchedAge() =>
        Brent.FindRoot(days => (birds.BirdsAt(Age.FromDays(days)) * projection.Curve.WeightAt(Age.FromDays(days)).Kilograms / 60) - 33, 7, 63, 1e-6);

    /// <summary>Every age judged against every limit, at the expected weight.</summary>
    [Benchmark]
    public IReadOnlyList<DensityAtAge> ByAge() => [.. Ages.Select(path.At)];

    /// <summary>The age at which a limit is passed.</summary>
    [Benchmark]
    public LimitReached? FirstOver() => path.FirstOver(Ages[0], Ages[^1]);

    /// <summary>The chance of passing the limits that bind, at every age.</summary>
    [Benchmark]
    public IReadOnlyList<Probability?> ChanceOver() => path.ChanceOver(draws, Count);
}
