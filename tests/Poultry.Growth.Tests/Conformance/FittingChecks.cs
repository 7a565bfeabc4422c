using Poultry.Growth.Tests.Conformance.ChickWeight;
using Poultry.Growth.Tests.Conformance.MixedModels;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Fits, learning and projections. How far a family can follow a printed table is asked within 4 %, for fast birds.</summary>
internal static class FittingChecks
{
    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. ChickWeightChecks.All,
        .. MixedModelChecks.All,
        .. ProjectionChecks.All,
        .. Handbook.Tables.Keys.Where(name => !name.StartsWith("slow", StringComparison.Ordinal)).Select(table => new OutsideCheck(
            "H-" + table, table + ": root mean square of (table - curve)/curve by the family that follows it best", "that of [handbooks](handbooks.md)", Handbook.HowKnown(table), "%", 0, 4,
            () => HandbookFit.Of(table).Min(fit => fit.RmsPercent)) { Kind = CheckKind.PublishedTable }),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "How the parameters of growth curves vary together from flock to flock: nothing was to be had.",
    ];
}
