using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What a farm's own batches say of the losses of the next one: the shipped rates times the farm's own level, with the farm's own spread.</summary>
/// <remarks>The order of the batches does not matter but for the last digits. Without batches it is what is shipped.</remarks>
public sealed class LearnedSurvival
{
    /// <summary>The part of the shipped variance of ln z that lies between batches of one farm; the rest lies between farms.</summary>
    internal const double WithinFarm = 0.5;

    /// <summary>How far ln s is not known: as if from four batches, 1/sqrt(2 x 4).</summary>
    internal const double LogSpreadDeviation = 0.35;

    private LearnedSurvival(Survival shipped, IReadOnlyList<PastLosses> batches, double level, double logSpread, IReadOnlyList<PastLosses> large)
    {
        (Shipped, Batches, LevelRatio, LogSpread, LargeLosses) = (shipped, batches, Math.Exp(level), logSpread, large);
        Survival = batches.Count == 0 ? shipped : shipped.Scaled(LevelRatio, logSpread, ModelOf(batches.Count, shipped));
    }

    /// <summary>Equations and the figures chosen.</summary>
    public static ModelInfo Method { get; } = new(
        "survival-learned",
        "Losses learned from a farm's own batches",
        "x ~ Bin(n, 1 - exp(-z H)), ln z ~ N(a, s^2), a ~ N(0, b^2), ln s ~ N(ln w - l^2, l^2); with chance c a share q is lost besides; next batch: ln z ~ N(E a, Var a + E s^2)",
        [
            new("x", "birds dead, culled or missing", "birds"),
            new("n", "birds placed", "birds"),
            new("H", "shipped rates summed up from placement to killing", "-"),
            new("z", "multiplier of a batch", "-"),
            new("a", "the farm's level", "-"),
            new("s", "standard deviation of ln z between batches of the farm", "-"),
            new("b", "of a between farms: half of the shipped variance of ln z, 0.32", "-"),
            new("w", "shipped s: the other half; known as if from four batches, l = 0.35", "-"),
            new("l", "how far ln s is not known", "-"),
            new("c", "chance of a large loss, one batch in thirty", "-"),
            new("q", "share lost in it, 10 to 60 %, likely 25", "-"),
        ],
        [
            new Citation("OwnLosses", "Losses of the farm's own batches", HowKnown.ReadInSource),
            new Citation("LossPseudoCounts", "Half of the spread between farms, half within; the shipped level counts as one batch, its spread as four; tried on simulated farms", HowKnown.Assumption),
        ],
        "On simulated farms that follow the model the next batch's 90 % interval holds 90 to 92 in 100 after 1, 3 or 10 batches; on farms that lose twice as much 73, 85 and 89 (57 without learning); where batches differ 1.6 times as much 79, 78 and 82 (docs/studies/farm-past.md). On real farms not tested. The split over weeks stays the shipped one.",
        HowKnown.Assumption);

    /// <summary>What is known without own batches.</summary>
    public Survival Shipped { get; }

    /// <summary>The batches learned from.</summary>
    public IReadOnlyList<PastLosses> Batches { get; }

    /// <summary>The farm's usual rates over those shipped: above 1 more birds are lost.</summary>
    public double LevelRatio { get; }

    /// <summary>Standard deviation of the logarithm of the next batch's multiplier: what batches differ by, and what is not known of the level.</summary>
    public double LogSpread { get; }

    /// <summary>How the next batch dies off.</summary>
    public Survival Survival { get; }

    /// <summary>Batches that more likely than not had one of the rare large losses: they say little about the usual ones.</summary>
    public IReadOnlyList<PastLosses> LargeLosses { get; }

    /// <summary>Learns from batches of one kind.</summary>
    /// <param name="shipped">What is known without them.</param>
    /// <param name="batches">May be empty.</param>
    /// <param name="large">Rare large losses; one batch in thirty where null.</param>
    public static LearnedSurvival From(Survival shipped, IReadOnlyList<PastLosses> batches, LargeLoss? large = null)
    {
        ArgumentNullException.ThrowIfNull(shipped);
        ArgumentNullException.ThrowIfNull(batches);
        if (batches.Count == 0 || shipped.LogSpread == 0)
        {
            return new(shipped, [], 0, shipped.LogSpread, []);
        }

        SurvivalGrid grid = new(shipped.LogSpread, large ?? LargeLoss.OneBatchInThirty);
        List<PastLosses> struck = [];
        foreach (PastLosses batch in batches)
        {
            if (grid.Weigh(batch, shipped) > 0.5)
            {
                struck.Add(batch);
            }
        }

        (double mean, double variance) = grid.Next();
        return new(shipped, [.. batches], mean, Math.Sqrt(variance), struck);
    }

    /// <summary>As in <c>3 own batches: 1.42 times the shipped losses</c>, in every culture.</summary>
    public override string ToString() => Batches.Count == 0
        ? Survival.Model.Name
        : string.Create(CultureInfo.InvariantCulture, $"{CountText.OwnBatches(Batches.Count)}: {LevelRatio:0.00} times the shipped losses");

    private static ModelInfo ModelOf(int batches, Survival shipped) => new(
        Method.Id, "Losses of " + CountText.OwnBatches(batches) + ", and what is shipped", Method.Equation, Method.Symbols, [.. Method.Citations, .. shipped.Model.Citations], Method.Accuracy, HowKnown.Derived);
}
