using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>The weight of a carcass, or of many, with its basis. Weights on different bases do not add up and are not compared: that is refused, by name.</summary>
public sealed class CarcassWeight
{
    private CarcassWeight(double kilograms, CarcassBasis basis) => (Kilograms, Basis) = (kilograms, basis);

    /// <summary>The weight.</summary>
    public Mass Weight => Mass.FromKilograms(Kilograms);

    /// <summary>What was on the scale, and when.</summary>
    public CarcassBasis Basis { get; }

    internal double Kilograms { get; }

    /// <summary>A weight on a basis.</summary>
    /// <param name="weight">0 or more.</param>
    /// <param name="basis">What was on the scale, and when.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is negative or not finite.</exception>
    public static CarcassWeight Of(Mass weight, CarcassBasis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        return new(Require.NotNegative(weight.Kilograms, "kg", nameof(weight)), basis);
    }

    /// <summary>Two carcasses together.</summary>
    /// <exception cref="ArgumentException">The bases differ.</exception>
    public CarcassWeight Plus(CarcassWeight other) => new(Kilograms + OnThisBasis(other), Basis);

    /// <summary>Whether this one is heavier.</summary>
    /// <exception cref="ArgumentException">The bases differ.</exception>
    public bool IsHeavierThan(CarcassWeight other) => Kilograms > OnThisBasis(other);

    /// <summary>The same carcasses after chilling: weight x (1 + u), u being what they took up of the weight before.</summary>
    /// <param name="water">Uptake and drip, as the plant or the user weighed them: no general figure is known.</param>
    /// <exception cref="ArgumentException">This weight is not a hot one.</exception>
    public CarcassWeight Chilled(ChillWater water)
    {
        ArgumentNullException.ThrowIfNull(water);
        return After(water.Uptake, CarcassCondition.Chilled);
    }

    /// <summary>The same carcasses in their packs: weight x (1 + u), u being uptake less drip, both of the weight before chilling.</summary>
    /// <inheritdoc cref="Chilled"/>
    public CarcassWeight Packed(ChillWater water)
    {
        ArgumentNullException.ThrowIfNull(water);
        return After(water.NetUptake, CarcassCondition.Packed);
    }

    /// <summary>In one line, as in <c>2.1 kg (4.63 lb), hot, with neck, without giblets, without feet</c>, in every culture.</summary>
    public override string ToString() => WeightText.Of(Kilograms) + ", " + Basis;

    private CarcassWeight After(double uptake, CarcassCondition condition) => Basis.Condition == CarcassCondition.Hot
        ? new(ChillWater.AfterChilling(Kilograms, uptake), Basis.In(condition))
        : throw new ArgumentException(
            "Only a hot carcass takes up chill water; this one is: " + Basis + ". Expected a hot basis.", nameof(condition));

    private double OnThisBasis(CarcassWeight other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Basis.Equals(other.Basis)
            ? other.Kilograms
            : throw new ArgumentException("A carcass weighed " + other.Basis + " is not comparable with one weighed " + Basis + ".", nameof(other));
    }
}
