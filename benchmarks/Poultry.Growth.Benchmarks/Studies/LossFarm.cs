using Poultry.Growth.Flock;
using Poultry.Growth.Numerics;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>A farm that loses birds batch after batch, what it learned from the past ones, and what the next one lost: 300 birds each, from 1 to 56 d.</summary>
internal sealed class LossFarm
{
    private const int Birds = 300;
    private static readonly Survival Shipped = Survival.FastGrowingOutdoor;
    private static readonly Age From = Age.FromDays(1), To = Age.FromDays(56);
    private static readonly double Hazard = -Math.Log(Shipped.ShareAliveInBatch(From, To, 0).Fraction);

    /// <param name="seed">Of the row.</param>
    /// <param name="farm">Its number in the row.</param>
    /// <param name="batches">Past batches.</param>
    /// <param name="times">The level of all farms over the shipped one.</param>
    /// <param name="apart">How many times as far as shipped its batches lie apart.</param>
    public LossFarm(int seed, int farm, int batches, double times, double apart)
    {
        RandomStream random = new(seed, farm, batches);
        double part = Shipped.LogSpread * Math.Sqrt(0.5), level = Math.Log(times) + (part * random.NextNormal());
        int Lost() => Birds - Distributions.BinomialQuantile(random.NextUniform(), Birds, Math.Exp(-Hazard * Math.Exp(level + (apart * part * random.NextNormal()))));
        PastLosses[] past = [.. Enumerable.Range(0, batches).Select(_ => PastLosses.Of(Birds, Lost(), From, To))];
        LearnedSurvival learned = LearnedSurvival.From(Shipped, past);
        Level = learned.LevelRatio;
        NextLost = Lost();
        int alive = Birds - NextLost;
        Survival next = learned.Survival;
        Covered = next.ChanceAtMost(alive, Birds, From, To).Fraction > 0.05 && (alive == 0 || next.ChanceAtMost(alive - 1, Birds, From, To).Fraction < 0.95);
    }

    /// <summary>Learned: times the shipped losses.</summary>
    public double Level { get; }

    /// <summary>Birds of the next batch.</summary>
    public int NextLost { get; }

    /// <summary>Whether the 90 % interval of the next batch held them.</summary>
    public bool Covered { get; }
}
