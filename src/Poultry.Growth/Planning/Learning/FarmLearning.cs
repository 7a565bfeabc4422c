using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What a farm's finished batches of one kind say of the next one: growth, losses, feed, dressing and dead tenders, each as far as it was written down.</summary>
public sealed class FarmLearning
{
    private readonly string? carcassesPassedOver;

    internal FarmLearning(IReadOnlyList<FarmBatch> batches, BatchKind kind, GrowthPrior growth, Survival survival, EnergyModel model)
    {
        (Kind, Batches) = (kind, batches);
        Growth = BatchHistory.Of(batches.Select(batch => batch.Weights)).Learn(kind, growth);
        Survival = LearnedSurvival.From(survival, [.. batches.Select(batch => batch.Losses).OfType<PastLosses>()]);
        Feed = LearnedFeed.From([.. batches.Select(batch => batch.Feed).OfType<PastFeed>()], model);
        (LiveWeight Live, CarcassWeight Carcass)[] dressed = [.. batches.Select(batch => batch.Dressed).OfType<(LiveWeight, CarcassWeight)>()];

        // Carcasses with the neck and without are never pooled: the latest batch says which are compared.
        (LiveWeight, CarcassWeight Carcass)[] alike = [.. dressed.Where(one => one.Carcass.Basis.Equals(dressed[^1].Carcass.Basis))];
        Dressing = alike.Length > 0 ? PastDressing.Weighed(alike) : null;
        carcassesPassedOver = alike.Length < dressed.Length
            ? string.Create(CultureInfo.InvariantCulture, $"{dressed.Length - alike.Length} of {dressed.Length} batches weighed other carcasses than \"{dressed[^1].Carcass.Basis}\" and do not count for dressing.")
            : null;
        LesionInspection[] inspections = [.. batches.Select(batch => batch.Inspection).OfType<LesionInspection>()];
        Lesions = inspections.Length > 0 ? FarmLesionRate.Learn(inspections) : null;
    }

    /// <summary>Strain, system and sex of the next batch.</summary>
    public BatchKind Kind { get; }

    /// <summary>The batches of this kind.</summary>
    public IReadOnlyList<FarmBatch> Batches { get; }

    /// <summary>How many batches of other kinds were passed over.</summary>
    public int OfOtherKinds { get; internal init; }

    /// <summary>What their weigh-ins teach.</summary>
    public LearnedPrior Growth { get; }

    /// <summary>What their losses teach.</summary>
    public LearnedSurvival Survival { get; }

    /// <summary>What their feed teaches; null where none was written down to the end with the model asked for.</summary>
    public LearnedFeed? Feed { get; }

    /// <summary>What they dressed to; null where none was weighed alive and packed.</summary>
    public PastDressing? Dressing { get; }

    /// <summary>Dead tenders found; null where nobody looked.</summary>
    public FarmLesionRate? Lesions { get; }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions => [.. OwnCautions, .. Growth.Cautions];

    /// <summary>A batch of the history that bears the name of the one forecast; null where none does.</summary>
    internal string? LeftOut { get; init; }

    /// <summary>Those that growth does not carry already.</summary>
    internal IReadOnlyList<Caution> OwnCautions =>
    [
        .. LeftOut is { } name
            ? [new Caution("own-name-in-history", "The history holds a batch called \"" + name + "\": it is taken for this one and teaches it nothing. Give a new batch a name of its own.")]
            : Array.Empty<Caution>(),
        .. OfOtherKinds > 0 && Batches.Count == 0
            ? [new Caution("no-batch-of-this-kind", "The history holds " + CountText.Batches(OfOtherKinds) + ", none of " + Kind + ": nothing is learned across a change of strain, system or sex.")]
            : Array.Empty<Caution>(),
        .. Survival.LargeLosses.Count > 0
            ? [new Caution("large-loss-in-history", "Past batches lost " + string.Join("; ", Survival.LargeLosses) + ": taken for one of the rare large losses, so that they say little about the usual ones.")]
            : Array.Empty<Caution>(),
        .. carcassesPassedOver is { } passed ? [new Caution("carcasses-not-alike", passed)] : Array.Empty<Caution>(),
    ];

    /// <summary>As in <c>3 batches of strain A, movable shelter, both sexes</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{CountText.Batches(Batches.Count)} of {Kind}");
}
