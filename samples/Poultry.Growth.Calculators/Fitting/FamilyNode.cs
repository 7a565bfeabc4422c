using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>How much one kind of curve counts, before the weigh-ins and after.</summary>
internal sealed record FamilyNode(double Shape, bool FollowsPrior, string? Prior, double BeforePercent, double AfterPercent)
{
    public static IReadOnlyList<FamilyNode> Of(Projection projection) =>
        [.. projection.FamilyWeights.Select(family => new FamilyNode(family.Shape, family.Prior is not null, family.Prior?.Name, family.Before.Percent, family.After.Percent))];
}
