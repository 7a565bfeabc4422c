using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>What happens to the birds between the farm and the pack.</summary>
public sealed class PlantConditions
{
    /// <summary>What part of a live bird the carcass is.</summary>
    public required DressingRatio Dressing { get; init; }

    /// <summary>The state of the birds at killing.</summary>
    /// <value>Null: the state in which they were weighed. Needed where they were weighed full-fed and the ratio does not say on which live weight it was measured.</value>
    public LiveState? AtKilling { get; init; }

    /// <summary>What birds lose off feed.</summary>
    /// <value>The trade's usual.</value>
    public FeedWithdrawal Withdrawal { get; init; } = FeedWithdrawal.Usual;

    /// <summary>What the inspector takes out; of no account where the dressing ratio includes it.</summary>
    /// <value>The rates of the United States.</value>
    public Condemnation Condemned { get; init; } = Condemnation.UnitedStates;

    /// <summary>Trimmed off the carcasses passed, as a share of them, 0 to 50 %; of no account where the dressing ratio includes it.</summary>
    /// <value>0: no figure is published.</value>
    public Probability Trim { get; init; }

    /// <summary>Lost in cutting (scraps, bone dust, drip on the table), as a share of the carcass that is cut, 0 to 50 %.</summary>
    /// <value>0: no figure is published; weigh it.</value>
    public Probability CuttingLoss { get; init; }

    /// <summary>Water taken up in chilling, to bring a hot ratio to packed weights.</summary>
    /// <value>Null: weights stay on the basis of the ratio. It is refused for a ratio that is not hot: there the water is in it.</value>
    public ChillWater? Water { get; init; }

    /// <summary>Parts beside the carcass that are known; the rest is "other, by difference".</summary>
    /// <value>None.</value>
    public IReadOnlyList<NamedPart> OtherParts { get; init; } = [];

    /// <summary>The basis of the weights that come back.</summary>
    public CarcassBasis Basis => Water is null ? Dressing.Basis : Dressing.Basis.In(CarcassCondition.Packed);

    /// <summary>The dressing ratio and, where it counts, what chilling adds.</summary>
    public override string ToString() => Dressing + (Water is null ? "" : "; chilled: " + Water);
}
