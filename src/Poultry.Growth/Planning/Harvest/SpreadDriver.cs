using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>Something uncertain, and how much of the spread of the margin goes with it.</summary>
public sealed class SpreadDriver
{
    internal SpreadDriver(string name, Probability share) => (Name, Share) = (name, share);

    /// <summary>What is uncertain.</summary>
    public string Name { get; }

    /// <summary>The squared correlation with the margin over the draws; shares of different drivers need not add up to all.</summary>
    public Probability Share { get; }

    /// <summary>As in <c>growth: 62 %</c>, in every culture.</summary>
    public override string ToString() => Name + ": " + Share;
}
