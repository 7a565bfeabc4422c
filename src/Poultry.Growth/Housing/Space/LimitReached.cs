using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>When a batch outgrows its floor.</summary>
public sealed class LimitReached
{
    internal LimitReached(Age age, LimitVerdict limit, bool isFromTheStart) => (Age, Limit, IsFromTheStart) = (age, limit, isFromTheStart);

    /// <summary>Up to this age the limit is kept; the first age asked about where it is passed from the start.</summary>
    public Age Age { get; }

    /// <summary>Whether it is passed already at the first age asked about.</summary>
    public bool IsFromTheStart { get; }

    /// <summary>The limit that is passed first.</summary>
    public LimitVerdict Limit { get; }

    /// <summary>One line, as in <c>44.3 d: ...</c>, in every culture.</summary>
    public override string ToString() => Age + ": " + Limit;
}
