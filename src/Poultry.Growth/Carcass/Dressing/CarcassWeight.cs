using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>
/// The weight of a carcass, or of many, with its basis, as it comes from a file or a plant. Weights on different bases do not add up and are not compared: for that it is put
/// <see cref="On"/> a basis, and then a mistake does not compile.
/// </summary>
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

    /// <summary>The same weight with its basis as a type; there it adds up and is compared.</summary>
    /// <typeparam name="TBasis">The basis it is taken to be on.</typeparam>
    /// <exception cref="ArgumentException">It is on another basis, or leaves open what that one states.</exception>
    public CarcassWeight<TBasis> On<TBasis>()
        where TBasis : ICarcassBasis
    {
        Basis.RequireSame(TBasis.Basis, "The carcass was weighed");
        return new(Kilograms);
    }

    /// <summary>In one line, as in <c>2.1 kg (4.63 lb), hot, with neck, without giblets, without feet</c>, in every culture.</summary>
    public override string ToString() => WeightText.Of(Kilograms) + ", " + Basis;
}
