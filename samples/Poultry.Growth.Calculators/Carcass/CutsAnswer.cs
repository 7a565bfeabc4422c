using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>Everything that tables, JSON and chart show of what the plant hands back.</summary>
internal sealed class CutsAnswer
{
    public CutsAnswer(PlantReturn back, CutSet set, CutAdvice? advice, Sex sex, Age? age, bool spreadIsAssumed)
    {
        (Return, Advice) = (back, advice);
        (Light, Heavy) = (back.WithLightCarcasses(), back.WithHeavyCarcasses());
        CutSet[] used = [.. back.Order.Lines.Select(line => line.Set).OfType<CutSet>().Distinct()];
        used = used.Length == 0 && advice is not null ? [set] : used;
        DressingRatio dressing = back.Balance.Plant.Dressing;
        Cautions =
        [
            .. dressing.CautionsFor(sex, age, back.Birds.Weights.Mean),
            .. used.SelectMany(one => one.CautionsFor(sex, age, back.Balance.Carcass.Weight / back.Birds.Birds)),
            .. back.Cautions,
            .. spreadIsAssumed ? [AssumedSpread] : Array.Empty<Caution>(),
            FoodSafety,
        ];
        ModelInfo[] models =
        [
            dressing.Model, CarcassBalance.Model, FeedWithdrawal.Model, .. used.Select(one => one.Model), .. dressing.IncludesCondemned ? Array.Empty<ModelInfo>() : [Condemnation.Model],
        ];
        Sources = [.. models.SelectMany(model => model.Citations).DistinctBy(source => source.Key)];
        Pieces = [.. PieceRow.Of(back)];
    }

    public PlantReturn Return { get; }

    /// <summary>The same with carcasses as light as they may be.</summary>
    public PlantReturn Light { get; }

    /// <summary>And as heavy as they may be.</summary>
    public PlantReturn Heavy { get; }

    /// <summary>How many to cut; null where nothing is priced.</summary>
    public CutAdvice? Advice { get; }

    public IReadOnlyList<PieceRow> Pieces { get; }

    public IReadOnlyList<Caution> Cautions { get; }

    public IReadOnlyList<Citation> Sources { get; }

    private static Caution AssumedSpread => new(
        "spread-assumed", "The spread between birds of one sex is assumed to be 10 %: packs by weight depend on it. Weigh 20 birds singly and give --cv.");

    private static Caution FoodSafety => new(
        "plant-and-code-decide", "Chilling, labels, what is condemned and what may be sold are decided by the inspection service, the plant's rules and your local code, not by these figures.");
}
