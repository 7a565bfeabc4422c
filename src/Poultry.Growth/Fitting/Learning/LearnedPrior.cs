using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What a farm's own batches of one kind say about the next one: a prior in place of the shipped one, and how it came about.</summary>
/// <remarks>
/// Every batch counts, few weigh-ins or many, and what the farm's figures do not say is filled in from the shipped prior: its mean fades with the first
/// batches, its spread counts as four batches. The order of the batches does not matter. Immutable, and safe to share between threads.
/// </remarks>
public sealed class LearnedPrior
{
    private readonly LaplaceEmResult result;

    private LearnedPrior(BatchKind kind, BatchHistory batches, GrowthPrior shipped, int roundLimit)
    {
        (Kind, Shipped) = (kind, shipped);

        FlockSpread ofAll = new(kind.Sex, batches.SelectMany(batch => batch.WeighIns), ProjectionOptions.Default);
        CoefficientOfVariation = ofAll.IsAssumed ? null : ofAll.Variation;
        PastRow[] rows = [.. batches.Select(batch => new PastRow(batch, ofAll.Variation)).Where(row => row.Group.Count > 0)];

        // Sums run in one order, whichever way the batches came.
        int[] order = [.. Enumerable.Range(0, rows.Length).OrderBy(i => rows[i].Group, MixedGroup.ByContent)];
        result = PriorLearning.Run([.. order.Select(i => rows[i].Group)], shipped, roundLimit);
        Status = StatusOf(rows.Length, result, ofAll.Variation);
        Cautions = LearningCautions.Of(this, batches, [.. order.Select(i => rows[i])]);
        if (Status != LearningStatus.Learned)
        {
            (Prior, Batches) = (shipped, []);
            return;
        }

        LearnedBatch[] learned = new LearnedBatch[rows.Length];
        for (int place = 0; place < order.Length; place++)
        {
            double[] theta = result.Modes[place].Coordinates;
            learned[order[place]] = new(rows[order[place]].Batch, CurveFamilies.Gompertz.FromParameters(Math.Exp(theta[0]), Math.Exp(theta[1]), theta[2]));
        }

        Batches = learned;
        Prior = GrowthPrior.FromMoments(ModelOf(kind, learned, shipped), kind.Sex, result.Population.Mean, PriorLearning.NextBatch(result), [.. Cautions])
            .WithFallback(shipped, PriorLearning.FallbackShare)
            .WithScatter(CoefficientOfVariation, WeighInError);
    }

    /// <summary>How learning works, and what it rests on.</summary>
    public static ModelInfo Method => PriorLearning.Method;

    /// <summary>The kind of batches learned from.</summary>
    public BatchKind Kind { get; }

    /// <summary>What was known without them.</summary>
    public GrowthPrior Shipped { get; }

    /// <summary>How learning ended.</summary>
    public LearningStatus Status { get; }

    /// <summary>
    /// The prior of the next batch of this kind: the middle of the farm's batches, their spread, and how far that middle is not known, with the shipped prior as
    /// <see cref="GrowthPrior.Fallback"/>, and with what the batches tell of weighing. The shipped prior itself unless <see cref="Status"/> is <see cref="LearningStatus.Learned"/>.
    /// </summary>
    public GrowthPrior Prior { get; }

    /// <summary>The batches learned from, each with its curve, in the order given; empty unless <see cref="Status"/> is <see cref="LearningStatus.Learned"/>.</summary>
    public IReadOnlyList<LearnedBatch> Batches { get; }

    /// <summary>
    /// Error of a whole weigh-in (scale, place, time of day) as a fraction of the mean, as far as the batches tell; 0.02 where they say nothing.
    /// <see cref="Prior"/> has it with it; for <see cref="ErrorModel.Sampling"/> too.
    /// </summary>
    public double WeighInError => Math.Sqrt(Settled.ErrorVariance);

    /// <summary>Spread between birds of one sex as a fraction of their mean, over all batches; null where no birds were weighed singly or with SD.</summary>
    public double? CoefficientOfVariation { get; }

    /// <summary>Standard deviations of ln A, ln k and t* (d) between batches of this kind.</summary>
    public IReadOnlyList<double> BetweenBatches =>
        [.. Enumerable.Range(0, GrowthPrior.Parameters).Select(i => Math.Sqrt(Settled.Spread[i * (GrowthPrior.Parameters + 1)]))];

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>How many rounds the search took.</summary>
    internal int Rounds => result.Rounds;

    private MixedPopulation Settled => Status is LearningStatus.Learned or LearningStatus.NoBatches
        ? result.Population
        : MixedPopulation.Of(Shipped.Mean, PriorLearning.Split(Shipped).BetweenBatches, result.Population.Random, PriorLearning.WeighInError * PriorLearning.WeighInError)!;

    /// <summary>How much the weights of batches of this kind differ at an age: their standard deviation as a fraction of the mean.</summary>
    /// <param name="age">Any; the spread was learned at ages at which batches were weighed.</param>
    /// <remarks>That of the flock means, not of birds; the error of weigh-ins is not in it.</remarks>
    public double BetweenBatchesAt(Age age)
    {
        Span<double> slopes = stackalloc double[GrowthPrior.Parameters];
        Span<double> log = stackalloc double[1];
        default(LogGompertz).Evaluate(Settled.Mean, [age.Days], log, slopes);
        return Math.Sqrt(SymmetricMatrix.Form(Settled.Spread, slopes));
    }

    /// <summary>Prior and number of batches in one line and in every culture.</summary>
    public override string ToString() => Status == LearningStatus.Learned
        ? string.Create(CultureInfo.InvariantCulture, $"{Prior}; batches differ by {100 * BetweenBatchesAt(Age.FromDays(56)):0.#} % at 56 d")
        : $"{Prior}; {LearningCautions.Reason(Status)}";

    /// <summary>See <see cref="BatchHistory.Learn"/>.</summary>
    /// <param name="kind">The kind of batch.</param>
    /// <param name="batches">Batches of that kind.</param>
    /// <param name="shipped">What is known without them.</param>
    /// <param name="roundLimit">The most rounds.</param>
    internal static LearnedPrior From(BatchKind kind, BatchHistory batches, GrowthPrior shipped, int roundLimit = PriorLearning.RoundLimit)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(shipped);
        return shipped.Sex == kind.Sex
            ? new LearnedPrior(kind, batches, shipped, roundLimit)
            : throw new ArgumentException($"The shipped prior is of {shipped.Sex} birds, the batches of {kind.Sex} birds; expected the same sex.", nameof(shipped));
    }

    private static LearningStatus StatusOf(int batches, LaplaceEmResult result, double variation) =>
        batches == 0 ? LearningStatus.NoBatches
        : !result.Converged ? LearningStatus.NotConverged
        : result.Population.Mean[2] < 0 || variation >= 1 || Math.Sqrt(result.Population.ErrorVariance) > ProjectionOptions.LargestWeighInError ? LearningStatus.Implausible
        : LearningStatus.Learned;

    private static ModelInfo ModelOf(BatchKind kind, LearnedBatch[] batches, GrowthPrior shipped)
    {
        string count = CountText.OwnBatches(batches.Length);
        return new(
            "prior-learned",
            $"{count} of {kind}",
            shipped.Model.Equation,
            shipped.Model.Symbols,
            [
                new Citation("OwnBatches", "Weigh-ins of the farm's own batches: " + string.Join(", ", batches.Select(batch => batch.Batch.Name)), HowKnown.ReadInSource),
                .. Method.Citations,
                .. shipped.Model.Citations,
            ],
            Method.Accuracy,
            HowKnown.Derived);
    }
}
