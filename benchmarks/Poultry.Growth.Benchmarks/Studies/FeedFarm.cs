using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Numerics;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>A farm whose batches eat more or less than the model says, half of the model's variance between farms and half within, what it learned, and what the next batch ate.</summary>
internal sealed class FeedFarm
{
    private static readonly EnergyModel Model = EnergyModel.DefaultFor(BirdType.Fast);
    private static readonly double Normal90 = Distributions.NormalQuantile(0.95);

    /// <param name="seed">Of the row.</param>
    /// <param name="farm">Its number in the row.</param>
    /// <param name="batches">Past batches, 1 or more.</param>
    public FeedFarm(int seed, int farm, int batches)
    {
        RandomStream random = new(seed, farm, batches);
        double part = Model.CumulativeError * Math.Sqrt(0.5), level = part * random.NextNormal();
        LearnedFeed learned = LearnedFeed.From(
            [.. Enumerable.Range(0, batches).Select(_ => PastFeed.Of(Mass.FromKilograms(1000 * Math.Exp(level + (part * random.NextNormal()))), Mass.FromKilograms(1000), Model.Model.Id))], Model)!;
        Level = learned.Ratio;
        Covered = Math.Abs(level + (part * random.NextNormal()) - Math.Log(learned.Ratio)) <= Normal90 * learned.LogSpread;
    }

    /// <summary>Learned: times the model's feed.</summary>
    public double Level { get; }

    /// <summary>Whether the 90 % interval of the next batch held it.</summary>
    public bool Covered { get; }
}
