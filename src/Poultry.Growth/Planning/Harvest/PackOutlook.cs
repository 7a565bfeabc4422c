using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Planning;

/// <summary>How many packs of a kind will sell at their price, and how many will be left.</summary>
public sealed class PackOutlook
{
    internal PackOutlook(PackOffer offer, Estimate<double> sold, Estimate<double> left) => (Offer, Sold, Left) = (offer, sold, left);

    /// <summary>The kind of pack.</summary>
    public PackOffer Offer { get; }

    /// <summary>Packs sold at their price.</summary>
    public Estimate<double> Sold { get; }

    /// <summary>Packs left; the freezer takes some of them.</summary>
    public Estimate<double> Left { get; }

    /// <summary>As in <c>2 breast: 60 (90 %: 52 to 66) packs sold, 4 (90 %: 0 to 11) left</c>, in every culture.</summary>
    public override string ToString() => Offer + ": " + Sold + " packs sold, " + Left + " left";
}
