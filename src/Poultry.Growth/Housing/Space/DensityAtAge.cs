using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>A batch on its floor at one age.</summary>
public sealed class DensityAtAge
{
    internal DensityAtAge(Age age, StockingVerdict verdict) => (Age, Verdict) = (age, verdict);

    /// <summary>How old the birds are.</summary>
    public Age Age { get; }

    /// <summary>The birds expected to be there, their density, and the limits on it.</summary>
    public StockingVerdict Verdict { get; }

    /// <summary>One line, as in <c>42 d: 80 birds of 2.2 kg (4.85 lb): 15.8 kg/m2 (3.24 lb/ft2)...</c>, in every culture.</summary>
    public override string ToString() => Age + ": " + Verdict;
}
