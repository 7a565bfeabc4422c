using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>The published dressing ratios, each with its basis, source and birds. None states in which state the live birds were weighed.</summary>
public static class Dressings
{
    private static readonly CarcassBasis WithNeck = CarcassBasis.Of(CarcassCondition.NotStated, neck: Inclusion.With);
    private static readonly CarcassBasis WithoutGiblets = CarcassBasis.Of(CarcassCondition.NotStated, giblets: Inclusion.Without);
    private static readonly CarcassBasis Packed = CarcassBasis.Of(CarcassCondition.Packed);

    /// <summary>Ready to cook in the United States: giblets and neck in, water retained, so chilled.</summary>
    private static readonly CarcassBasis ReadyToCook = CarcassBasis.Of(CarcassCondition.Chilled, neck: Inclusion.With, giblets: Inclusion.With);

    /// <summary>All of them, those for planning first.</summary>
    public static IReadOnlyList<DressingRatio> All { get; } =
    [
        DressingRatio.Published("planning-fast", DressingSources.Planning, (70, 72.5, 75), type: BirdType.Fast),
        DressingRatio.Published("planning-slow", DressingSources.Planning, (65, 67.5, 70), type: BirdType.Slow),
        DressingRatio.Published("planning-heritage", DressingSources.Planning, (62, 64, 66), type: BirdType.Heritage),
        DressingRatio.Published("packaged-outdoor", DressingSources.Planning, (67, 71, 75), Packed),
        OneTrial("ross308-2008", DressingSources.Kokoszynski2008, 74.5, WithNeck, BirdType.Fast, liveGrams: 1892.5),
        OneTrial("jv-2008", DressingSources.Kokoszynski2008, 73.3, WithNeck, BirdType.Fast, liveGrams: 1753.3),
        OneTrial("rudn-33d", DressingSources.Rudn2018, 71.83, null, BirdType.Fast, Sex.Male, 33),
        OneTrial("rudn-42d", DressingSources.Rudn2018, 73.12, null, BirdType.Fast, Sex.Male, 42),
        OneTrial("ross308-2011", DressingSources.Biesiada2011, 100 * 1697 / 2229.9, null, BirdType.Fast, Sex.Mixed, 42, 2229.9),
        OneTrial("raji-males", DressingSources.Raji, 74.5, null, BirdType.Fast, Sex.Male, 42, 2040),
        OneTrial("raji-females", DressingSources.Raji, 74.34, null, BirdType.Fast, Sex.Female, 42, 1910),
        OneTrial("slow-local-90d", DressingSources.SlowLocal2022, 67.72, null, BirdType.Slow, Sex.Mixed, 90, 1942.5),
        OneTrial("slow-local-100d", DressingSources.SlowLocal2022, 67.80, null, BirdType.Slow, Sex.Mixed, 100, 2254.5),
        OneTrial("wannan-0-range-days", DressingSources.Wannan2019, 70.89, null, BirdType.Slow),
        OneTrial("wannan-14-range-days", DressingSources.Wannan2019, 72.12, null, BirdType.Slow),
        OneTrial("wannan-28-range-days", DressingSources.Wannan2019, 70.84, null, BirdType.Slow),
        OneTrial("wannan-42-range-days", DressingSources.Wannan2019, 69.46, null, BirdType.Slow),
        DressingRatio.Published("maine-slow-outdoor", DressingSources.MaineExtension, (67, 68, 69), type: BirdType.Slow),
        OneTrial("extension-broiler", DressingSources.ExtensionReply, 70, WithoutGiblets, BirdType.Fast),
        OneTrial("extension-game-hen", DressingSources.ExtensionReply, 65, WithoutGiblets, BirdType.Fast),
        OneTrial("mercia-fryer", DressingSources.Mercia, 75),
        OneTrial("mercia-roaster", DressingSources.Mercia, 76),
        OneTrial("mercia-light-hen", DressingSources.Mercia, 68),
        OneTrial("mercia-heavy-hen", DressingSources.Mercia, 70),
        OneTrial("kiepper-edible", DressingSources.Kiepper, 72, null, BirdType.Fast),
        DressingRatio.Published("nass-ready-to-cook", DressingSources.Nass, (75.43, 75.69, 75.83), ReadyToCook, includesCondemned: true),
    ];

    /// <summary>The ratio for planning with a kind of bird, until the farm has its own.</summary>
    public static DressingRatio For(BirdType type) => All.First(ratio => ratio.Type == Require.Named(type));

    /// <summary>The published ratio of a name; null where there is none.</summary>
    public static DressingRatio? Named(string name) => All.FirstOrDefault(ratio => ratio.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The figure as printed; another batch may lie as far from it as batches of one place lie apart.</summary>
    private static DressingRatio OneTrial(
        string name, ModelInfo model, double percent, CarcassBasis? basis = null, BirdType? type = null, Sex sex = Sex.Mixed, double? ageDays = null, double? liveGrams = null)
    {
        LikelyRange<Probability> range = DressingPool.Around(percent, DressingPool.UsualDeviation);
        return DressingRatio.Published(name, model, (range.Low.Percent, percent, range.High.Percent), basis, type, sex, ageDays, liveGrams);
    }
}
