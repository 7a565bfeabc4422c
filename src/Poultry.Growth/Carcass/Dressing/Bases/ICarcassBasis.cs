namespace Poultry.Growth.Carcass;

/// <summary>A basis as a type, so that a program which mixes two does not compile.</summary>
public interface ICarcassBasis
{
    /// <summary>The same basis as a value.</summary>
    static abstract CarcassBasis Basis { get; }
}
