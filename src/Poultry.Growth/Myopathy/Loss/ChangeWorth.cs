using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>What a change in how the birds are kept would be worth a batch if it did what is hoped, and how many batches it takes to see whether it does.</summary>
public sealed class ChangeWorth
{
    /// <summary>z of 5 % one-sided and of 80 %: a false alarm in one of twenty, a true change seen four times of five.</summary>
    private const double FalseAlarm = 0.05, Power = 0.80;

    private ChangeWorth(double sparedBirds, Money perBatch, int? batchesToSee) =>
        (SparedBirds, PerBatch, BatchesToSee) = (sparedBirds, perBatch, batchesToSee);

    /// <summary>Equation and sources.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-change",
        "Batches to see a change",
        "m = 2 (z_a + z_b)^2 (s^2 + 1/(n p)) / (ln OR)^2",
        [
            new("m", "batches before the change, and as many after", "-"),
            new("z_a", "1.645: a false alarm in one case of twenty", "-"),
            new("z_b", "0.842: a true change is seen in four of five", "-"),
            new("s", "1.386, between batches of a farm on the logit scale", "-"),
            new("n", "birds opened of a batch", "-"),
            new("p", "mean share of birds", "-"),
            new("OR", "by what the change multiplies the odds", "-"),
        ],
        [LesionSources.OwnArithmetic, LesionSources.OwnAssumption],
        "The usual arithmetic of a comparison of means, with counts taken as normal on the logit scale: for few cases it is a lower bound.",
        HowKnown.Assumption);

    /// <summary>Birds a batch that would have no lesion, on average.</summary>
    public double SparedBirds { get; }

    /// <summary>What that is worth a batch, on average.</summary>
    public Money PerBatch { get; }

    /// <summary>Batches before the change, and as many after, until it shows; null where the change is none, or there are no lesions to spare.</summary>
    public int? BatchesToSee { get; }

    /// <summary>The worth of a change.</summary>
    /// <param name="lesions">The share of birds affected as it is now.</param>
    /// <param name="oddsRatio">By what the change is hoped to multiply the odds, above 0: 0.5 halves. No source gives one for any change.</param>
    /// <param name="birds">Birds of a batch, 1 or more.</param>
    /// <param name="perAffectedBird">What an affected bird costs.</param>
    /// <param name="openedPerBatch">Birds of each batch that are opened, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static ChangeWorth Of(BatchPrevalence lesions, double oddsRatio, int birds, Money perAffectedBird, int openedPerBatch)
    {
        ArgumentNullException.ThrowIfNull(lesions);
        Require.AtLeast(birds, 1);
        Require.AtLeast(openedPerBatch, 1);
        double now = lesions.Mean.Share.Fraction, spared = birds * (now - lesions.WithOdds(oddsRatio).Mean.Share.Fraction);
        double z = Distributions.NormalQuantile(1 - FalseAlarm) + Distributions.NormalQuantile(Power), log = Math.Log(oddsRatio);
        double batches = Math.Ceiling(2 * z * z * ((FarmKernel.SpreadMiddle * FarmKernel.SpreadMiddle) + (1 / (openedPerBatch * now))) / (log * log));
        return new(spared, perAffectedBird * spared, batches < int.MaxValue ? (int)batches : null);
    }

    /// <summary>As in <c>3.4 birds a batch spared, worth 12.00; seen after 20 batches</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{SparedBirds:0.#} birds a batch spared, worth {PerBatch}; ") + (BatchesToSee is { } batches ? string.Create(CultureInfo.InvariantCulture, $"seen after {batches} batches") : "never seen");
}
