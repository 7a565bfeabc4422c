using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The priors that come with the library, by the names that are typed for them; the first is the default.</summary>
internal static class ShippedPrior
{
    public const string Names = "fast-outdoor (fast-growing birds outdoors), fast-objective (by breeders' objectives), slow (slower-growing birds)";

    public static IReadOnlyList<(string Name, Func<Sex, GrowthPrior> Of)> All { get; } =
    [
        ("fast-outdoor", GrowthPrior.FastGrowingOutdoor),
        ("fast-objective", GrowthPrior.FastGrowingObjective),
        ("slow", GrowthPrior.SlowGrowing),
    ];
}
