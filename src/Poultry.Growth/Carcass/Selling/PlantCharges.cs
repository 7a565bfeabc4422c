using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>What cutting and packing cost beyond killing.</summary>
public sealed class PlantCharges
{
    private PlantCharges(Money cutting, Money pack) => (CuttingPerBird, PerPack) = (cutting, pack);

    /// <summary>Nothing is charged.</summary>
    public static PlantCharges None { get; } = new(Money.Zero, Money.Zero);

    /// <summary>For each bird that is cut.</summary>
    public Money CuttingPerBird { get; }

    /// <summary>For each pack, whole birds too.</summary>
    public Money PerPack { get; }

    /// <summary>Charges.</summary>
    /// <param name="cuttingPerBird">For each bird that is cut, 0 or more.</param>
    /// <param name="perPack">For each pack, whole birds too; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A charge is negative.</exception>
    public static PlantCharges Of(Money cuttingPerBird, Money perPack)
    {
        Require.NotNegative(cuttingPerBird.Amount, "", nameof(cuttingPerBird));
        Require.NotNegative(perPack.Amount, "", nameof(perPack));
        return new(cuttingPerBird, perPack);
    }

    /// <summary>As in <c>1.50 a bird cut, 0.30 a pack</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{CuttingPerBird} a bird cut, {PerPack} a pack");
}
