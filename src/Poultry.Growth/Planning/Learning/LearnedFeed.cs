using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>By how much a farm's birds eat, or spill, more or less than the model says, and how much its batches differ in that.</summary>
/// <remarks>A batch whose own record corrects its forecast does not need it: the record goes before the farm's past.</remarks>
public sealed class LearnedFeed
{
    /// <summary>The part of the model's error that lies between batches of one farm; the rest lies between farms.</summary>
    private const double WithinFarm = 0.5;

    /// <summary>How many batches the spread between batches is taken to be known from.</summary>
    private const int SpreadBatches = 4;

    private LearnedFeed(IReadOnlyList<PastFeed> batches, double logMean, double logSpread) => (Batches, LogMean, LogSpread) = (batches, logMean, logSpread);

    /// <summary>Equations and the figures chosen.</summary>
    public static ModelInfo Method { get; } = new(
        "feed-learned",
        "Feed learned from a farm's own batches",
        "r = ln(eaten/expected) ~ N(a, s^2), a ~ N(0, b^2), s^2 = (4 w^2 + S)/(4 + n - 1); m = (n x/s^2)/(1/b^2 + n/s^2); next batch: r ~ N(m, 1/(1/b^2 + n/s^2) + s^2)",
        [
            new("r", "logarithm of feed eaten over what the model says for the batch's own growth and head", "-"),
            new("a", "the farm's level", "-"),
            new("b", "of a between farms: half of the variance of the model's error", "-"),
            new("w", "between batches of a farm: the other half; counts as four batches", "-"),
            new("s", "between batches of this farm", "-"),
            new("n", "own batches", "-"),
            new("x", "their mean of r", "-"),
            new("S", "squared deviations of r from x", "-"),
            new("m", "the farm's factor, a logarithm", "-"),
        ],
        [
            new Citation("OwnFeed", "Feed records of the farm's own batches", HowKnown.ReadInSource),
            new Citation("FeedPseudoCounts", "Half of the model's error between farms, half within; the shipped factor of 1 counts as one batch, the spread as four", HowKnown.Assumption),
        ],
        "The error of the model is its standard error of feed to an age, on printed tables; that half of it belongs to the farm is an assumption.",
        HowKnown.Assumption);

    /// <summary>The batches learned from.</summary>
    public IReadOnlyList<PastFeed> Batches { get; }

    /// <summary>The factor of the farm's usual batch: above 1 its birds eat, or spill, more than the model says.</summary>
    public double Ratio => Math.Exp(LogMean);

    /// <summary>Standard deviation of the logarithm of the next batch's factor.</summary>
    public double LogSpread { get; }

    internal double LogMean { get; }

    /// <summary>Learns from batches of one kind.</summary>
    /// <param name="batches">Those of other models are passed over.</param>
    /// <param name="model">The model of the next batch's forecast.</param>
    /// <returns>Null where no batch can teach it.</returns>
    public static LearnedFeed? From(IReadOnlyList<PastFeed> batches, EnergyModel model)
    {
        ArgumentNullException.ThrowIfNull(batches);
        ArgumentNullException.ThrowIfNull(model);
        PastFeed[] used = [.. batches.Where(batch => batch.Model == model.Model.Id)];
        if (used.Length == 0)
        {
            return null;
        }

        double[] ratios = [.. used.Select(batch => Math.Log(batch.Ratio))];
        double variance = model.CumulativeError * model.CumulativeError, within = WithinFarm * variance, mean = ratios.Average();
        double between = ((SpreadBatches * within) + ratios.Sum(ratio => (ratio - mean) * (ratio - mean))) / (SpreadBatches + ratios.Length - 1);
        (double pooled, double doubt) = DressingPool.Pooled(0, variance - within, mean, between, ratios.Length);
        return new(used, pooled, Math.Sqrt(doubt + between));
    }

    /// <summary>As in <c>3 own batches: 1.05 times the model's feed</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{CountText.OwnBatches(Batches.Count)}: {Ratio:0.00} times the model's feed");
}
