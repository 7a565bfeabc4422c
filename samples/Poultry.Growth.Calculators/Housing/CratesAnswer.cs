using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Everything that tables and JSON show of crates.</summary>
internal sealed class CratesAnswer(CrateLoading loading, int? flock, int? cratesPerLoad, Length? height, HeatRule? rule, Temperature? outside, Keeping keeping)
{
    public CrateLoading Loading => loading;

    public Keeping Keeping => keeping;

    public int? Flock => flock;

    public Length? Height => height;

    public HeatRule? Rule => rule;

    /// <summary>As advised, fewer where your rule for hot days holds.</summary>
    public int BirdsPerCrate { get; } = rule is not null && outside is { } air ? loading.BirdsInHeat(rule, air) : loading.Birds;

    public int? Crates => flock is { } birds && BirdsPerCrate > 0 ? CrateLoading.Crates(birds, BirdsPerCrate) : null;

    public int? Loads => Crates is { } crates && cratesPerLoad is { } most ? CrateLoading.Crates(crates, most) : null;

    /// <summary>Whether the crate is as high as the text asks; null where either is not said.</summary>
    public bool? HeightMet => height is { } inside && loading.HeightNeeded is { } needed ? inside >= needed : null;

    public IReadOnlyList<LimitVerdict> Limits { get; } = keeping.Measured.Count == 0 && keeping.Place is null ? [] : LimitVerdict.Of(
        LimitBook.On(LimitSubject.JourneyTime, LimitSubject.TimeWithoutWater, LimitSubject.TimeWithoutFeed, LimitSubject.OutsideTemperature), keeping);

    public IReadOnlyList<Caution> Cautions =>
        [.. LimitsTable.Cautions(Limits).Take(1), .. loading.Standard.IsUnverified || Limits.Any(verdict => verdict.Limit.IsUnverified) ? [LimitsTable.Unverified] : Array.Empty<Caution>(), .. loading.Cautions];

    public IReadOnlyList<Citation> Sources => [.. LimitsTable.Sources(Limits, keeping).Prepend(loading.Standard.Source).DistinctBy(source => source.Key)];
}
