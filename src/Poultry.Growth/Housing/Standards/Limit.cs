using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>One figure of one text, with the scope in which it holds and how well it is known. Data, not legal advice.</summary>
/// <remarks>
/// Figures come from <see cref="LimitBook.Shipped"/> or from a file of one's own. What the scope names in figures (a flock of 500 birds or more) is in
/// <see cref="When"/>, what it names in words that the keeper alone can vouch for (a ventilation class, a criterion met) is in <see cref="Requires"/>.
/// </remarks>
public sealed class Limit
{
    /// <summary>The text.</summary>
    public required Instrument Instrument { get; init; }

    /// <summary>Article and conditions, in our words.</summary>
    public required string Scope { get; init; }

    /// <summary>What is limited, in our words.</summary>
    public required string Quantity { get; init; }

    /// <summary>The figure as the text prints it, with its unit: <c>6.5 lb/ft2</c>.</summary>
    public required string Printed { get; init; }

    /// <summary>On which side of the figure it holds.</summary>
    public required LimitComparison Comparison { get; init; }

    /// <summary>What the library can hold against it.</summary>
    public LimitSubject Subject { get; init; }

    /// <summary>The figure in the unit of <see cref="Subject"/>; null where nothing is judged.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public double? Value
    {
        get;
        init => field = value is { } figure ? Require.Finite(figure, LimitUnits.Of(Subject), nameof(Value)) : null;
    }

    /// <summary>How the figure is known. <see cref="HowKnown.Memory"/> never binds unless its instrument is chosen by name.</summary>
    public required HowKnown HowKnown { get; init; }

    /// <summary>Where it was read; null where no address is known.</summary>
    public string? Source { get; init; }

    /// <summary>Ways of keeping to which it applies; empty for all.</summary>
    public IReadOnlyList<RearingSystem> Systems { get; init; } = [];

    /// <summary>Ways of keeping for which the scope is not settled.</summary>
    public IReadOnlyList<RearingSystem> UnsettledSystems { get; init; } = [];

    /// <summary>The kind of house to which it applies; null for both.</summary>
    public HouseKind? House { get; init; }

    /// <summary>Conditions of the scope that figures decide, all of which must hold.</summary>
    public IReadOnlyList<LimitClause> When { get; init; } = [];

    /// <summary>A condition that the keeper must vouch for, as a code that <see cref="Scope"/> explains; null where there is none.</summary>
    public string? Requires { get; init; }

    /// <summary>Where a text allows more on further conditions: the step, from 1. Of the steps that apply the highest holds. 0 where there are none.</summary>
    public int Step { get; init; }

    /// <summary>Whether the figure is recalled and nobody has checked it.</summary>
    public bool IsUnverified => HowKnown == HowKnown.Memory;

    /// <summary>The limit as a source.</summary>
    public Citation Citation => new(Instrument.Name, Instrument.ToString(), HowKnown, string.Join("; ", ((string?[])[Scope, Source]).Where(part => !string.IsNullOrEmpty(part))) is { Length: > 0 } place ? place : null);

    /// <summary>As in <c>EU: Council Directive 2007/43/EC (...), Art. 3(2): stocking density &lt;= 33 kg/m2</c>, with the word unverified where it is.</summary>
    public override string ToString() => Instrument + (Scope.Length > 0 ? ", " + Scope : "") + ": " + Quantity + " " + LimitText.Sign(Comparison) + " " + Printed
        + (IsUnverified ? " (from memory, unverified)" : "");
}
