using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>
/// What a batch will weigh, from what was known beforehand and what was weighed so far: from no weigh-in at all to any number, at any ages, several a
/// day. Its intervals stay honest when the birds follow another kind of curve than the one they are expected to.
/// </summary>
/// <remarks>
/// A mixture of curves weighed by evidence: Gompertz curves that follow the prior, with a bounded discrepancy, and Richards curves of many shapes that are
/// only loosely held. Deterministic; immutable, and safe to share between threads. A sudden slow-down after the last weigh-in cannot be seen by it.
/// </remarks>
public sealed partial class Projection
{
    private readonly NodeFits fits;
    private readonly FlockSpread spread;
    private readonly double weighInError;

    private Projection(WeighInSeries? weighIns, GrowthPrior prior, ProjectionOptions options)
    {
        (WeighIns, Prior) = (weighIns, prior);
        weighInError = options.WeighInError ?? prior.WeighInError ?? ProjectionOptions.UsualWeighInError;
        spread = new FlockSpread(prior.Sex, weighIns, options, prior.CoefficientOfVariation);
        ProjectionData data = new(weighIns, spread, weighInError);
        fits = new NodeFits(new NodePlan(prior, options.ShapeStep), data);
        int room = ProjectionKernel.WorkspaceLength(data.Count);
        ProjectionKernel.Fit(fits, room <= Workspace.StackRoom ? stackalloc double[room] : new double[room]);
        Disagreement = ProjectionCautions.Disagreement(fits, prior);
        Cautions = ProjectionCautions.Of(fits, spread, prior, Disagreement);
    }

    /// <summary>What the method is and where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "projection",
        "Projection by a mixture of curves",
        "ln y = f(t) + d + e; f = ln A - ln(1 + v exp(-k (t - t*)))/v; d: sd σ, correlation (1 + r) exp(-r), r = sqrt(3) |t - s|/10; e: CV²/n + τ²; nodes (v, σ) weighed by Laplace's evidence",
        [
            new ModelSymbol("y", "mean of a weigh-in", "kg"),
            new ModelSymbol("t", "age", "d"),
            new ModelSymbol("s", "age of another weigh-in", "d"),
            new ModelSymbol("A", "mature weight", "kg"),
            new ModelSymbol("k", "rate", "1/d"),
            new ModelSymbol("t*", "inflection age", "d"),
            new ModelSymbol("v", "shape", "-"),
            new ModelSymbol("σ", "discrepancy between curve and birds", "-"),
            new ModelSymbol("CV", "coefficient of variation between birds", "-"),
            new ModelSymbol("n", "birds of a weigh-in", "-"),
            new ModelSymbol("τ", "error of a whole weigh-in", "-"),
        ],
        [new Citation("ProjectionStudy", "Own simulation of batches that follow the prior's curves and others, docs/studies/projection.md", HowKnown.Derived)],
        "Simulated batches, weekly weigh-ins to 28 d, mean at 56 d: median error 4 to 8 % for curves like the prior and like published tables, 18 % for a logistic one; the 90 % interval held 89 % or more of them, and 74 % where growth suddenly slowed down. See docs/studies/projection.md.",
        HowKnown.Assumption,
        [new ValidityRange("age", ProjectionCautions.FirstTestedDays, ProjectionCautions.LastTestedDays, "d")]);

    /// <summary>What was weighed; null where nothing was yet.</summary>
    public WeighInSeries? WeighIns { get; }

    /// <summary>What was known beforehand.</summary>
    public GrowthPrior Prior { get; }

    /// <summary>Spread between birds of one sex, as a fraction of their mean: given, weighed, the prior's or assumed.</summary>
    public double CoefficientOfVariation => spread.Variation;

    /// <summary>Error of a whole weigh-in, as a fraction of the mean: given, the prior's or assumed.</summary>
    public double WeighInError => weighInError;

    /// <summary>What to mind before acting on any of it; answers for untested ages carry more.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Says that weigh-ins and prior disagree; null where they do not.</summary>
    public Caution? Disagreement { get; }

    /// <summary>How much each kind of curve counts: first the Gompertz curves that follow the prior, together, then those of the wider prior behind it, if any, then the others by shape.</summary>
    public IReadOnlyList<FamilyWeight> FamilyWeights => field ??= ProjectionFamilies.Of(fits, Prior);

    /// <summary>
    /// The curve of the medians, for whoever needs one curve: a table by day up to 120 d. Its weights are those of <see cref="MeanAt"/> in whole days; where those fall
    /// it stays level. In the first week it is the extension of later growth, not the hatch weight.
    /// </summary>
    public IGrowthCurve Curve => field ??= ProjectionFamilies.Medians(fits, spread, Prior);

    /// <summary>Projects a batch from its weigh-ins.</summary>
    /// <param name="weighIns">What was weighed. Weigh-ins before 7 d are left out, with a caution.</param>
    /// <param name="prior">What was known beforehand, about birds of the sex of the batch. Outdoors, where nothing better is known: <see cref="GrowthPrior.FastGrowingOutdoor"/>.</param>
    /// <param name="options">Assumptions; the usual ones where none are given.</param>
    /// <exception cref="ArgumentException">A weigh-in is of the other sex than the prior.</exception>
    public static Projection Of(WeighInSeries weighIns, GrowthPrior prior, ProjectionOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(weighIns);
        ArgumentNullException.ThrowIfNull(prior);
        foreach (WeighIn weighIn in weighIns)
        {
            if (weighIn.Sex != prior.Sex && weighIn.Sex != Sex.Mixed && prior.Sex != Sex.Mixed)
            {
                throw new ArgumentException(
                    "The weigh-in at " + weighIn.Age + $" is of {weighIn.Sex} birds, the prior of {prior.Sex} birds; expected the same.", nameof(weighIns));
            }
        }

        return new Projection(weighIns, prior, options ?? ProjectionOptions.Default);
    }

    /// <summary>Projects a batch of which no bird is weighed yet: what the prior says, with a caution.</summary>
    /// <param name="prior">What is known beforehand.</param>
    public static Projection Of(GrowthPrior prior) => Of(prior, ProjectionOptions.Default);

    /// <inheritdoc cref="Of(GrowthPrior)"/>
    /// <param name="prior">What is known beforehand.</param>
    /// <param name="options">Assumptions.</param>
    public static Projection Of(GrowthPrior prior, ProjectionOptions options)
    {
        ArgumentNullException.ThrowIfNull(prior);
        ArgumentNullException.ThrowIfNull(options);
        return new Projection(null, prior, options);
    }

    /// <summary>What it rests on, in one line and in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{WeighIns?.ToString() ?? "No weigh-ins"}; prior: {Prior}");
}
