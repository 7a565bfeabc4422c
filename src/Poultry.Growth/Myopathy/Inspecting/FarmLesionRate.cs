using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>What a farm's own inspections teach: its level, how much its batches differ, its rate in the long run, and its next batch. It is renewed with every batch.</summary>
public sealed class FarmLesionRate
{
    private readonly FarmGrid grid;

    private FarmLesionRate(FarmGrid grid, IReadOnlyList<LesionInspection> inspections) => (this.grid, Inspections) = (grid, inspections);

    /// <summary>Equation, figures and sources.</summary>
    public static ModelInfo Model { get; } = new(
        "farm-lesion-rate",
        "A farm's own rate of lesions",
        "x ~ Bin(n, logistic z), z ~ N(a, s^2), a ~ N(mu, s_f^2), ln s ~ N(ln 1.386, l_s^2)",
        [
            new("x", "birds found with a lesion in a batch", "-"),
            new("n", "birds opened", "-"),
            new("z", "logit of the share of the batch", "-"),
            new("a", "the farm's level, a logit", "-"),
            new("s", "between batches of the farm", "-"),
            new("mu", "-6.32, so that the mean of a batch is 0.78 % with s uncertain", "-"),
            new("s_f", "0.9 between farms: 0.8, and 0.42 between studies", "-"),
            new("l_s", "0.25 of ln s; 1.386² = 1.6² - 0.8²", "-"),
        ],
        [LesionSources.Bianchi2006, LesionSources.Kijowski2009, LesionSources.OwnArithmetic, LesionSources.OwnAssumption],
        "Means and limits agree with a four times finer grid within 0.5 % and with Monte Carlo within its error. On simulated farms that follow the model 90 % intervals cover 89 to 94 %; where batches differ more than it allows, 79 to 88 %. On real farms not tested.",
        HowKnown.Assumption);

    /// <summary>The inspections, in the order given.</summary>
    public IReadOnlyList<LesionInspection> Inspections { get; }

    /// <summary>Birds opened in all of them.</summary>
    public int Opened => Inspections.Sum(inspection => inspection.Opened);

    /// <summary>Birds found with a lesion.</summary>
    public int Found => Inspections.Sum(inspection => inspection.Found);

    /// <summary>What to mind: what zeros mean, what teaches more, what stays uncertain.</summary>
    public IReadOnlyList<Caution> Cautions => MyopathyCautions.OfLearning(Inspections.Count, Found, Opened, grid.LevelQuantile(0.95));

    internal LogitDensity NextDensity => grid.Next;

    /// <summary>Learns from inspections, one a batch, in any order.</summary>
    /// <param name="inspections">May be empty: then this is what is known of any farm. Batches must not be chosen because something was seen in them.</param>
    /// <exception cref="ArgumentException">A batch stands there twice.</exception>
    public static FarmLesionRate Learn(params IEnumerable<LesionInspection> inspections)
    {
        ArgumentNullException.ThrowIfNull(inspections);
        LesionInspection[] all = [.. inspections];
        if (all.GroupBy(inspection => inspection.Batch, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Batch \"{twice.Key}\" stands there twice; expected one inspection a batch, its birds added up.", nameof(inspections));
        }

        return new(FarmGrid.Of(all), all);
    }

    /// <summary>The farm's level: half of its batches have less.</summary>
    /// <param name="level">The chance that the range claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Estimate<BirdPrevalence> Level(double level = 0.90) => Shares(grid.LevelQuantile, level);

    /// <summary>How much batches of the farm differ: the standard deviation of the logit of their shares.</summary>
    /// <param name="level">The chance that the range claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Estimate<double> BetweenBatchesLogit(double level = 0.90) => new(
        grid.SpreadQuantile(0.5), Interval<double>.Of(grid.SpreadQuantile((1 - Require.Share(level)) / 2), grid.SpreadQuantile((1 + level) / 2), level), Model, Cautions);

    /// <summary>The farm's rate in the long run: the mean over its batches, which bad ones raise above the level.</summary>
    /// <param name="level">The chance that the range claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Estimate<BirdPrevalence> LongRunRate(double level = 0.90) => Shares(grid.RateQuantile, level);

    /// <summary>The farm's next batch, of birds killed from 45 d.</summary>
    public BatchPrevalence NextBatch => new(grid.Next, 1, [], Model, Cautions);

    /// <summary>As in <c>3 batches, 9 of 1200 birds: level 0.37 % of birds (90 %: 0.13 to 0.97 %)</c>, in every culture.</summary>
    public override string ToString()
    {
        Estimate<BirdPrevalence> level = Level();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{CountText.Batches(Inspections.Count)}, {Found} of {Opened} birds: level {level.Value} (90 %: {level.Interval.Low!.Value.Percent:G2} to {level.Interval.High!.Value.Percent:G2} %)");
    }

    private Estimate<BirdPrevalence> Shares(Func<double, double> quantile, double level)
    {
        BirdPrevalence At(double probability) => BirdPrevalence.Of(Probability.FromFraction(quantile(probability)));
        return new(At(0.5), Interval<BirdPrevalence>.Of(At((1 - Require.Share(level)) / 2), At((1 + level) / 2), level), Model, Cautions);
    }
}
