using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>The text that sets limits: a law, a code, a scheme, or somebody's advice, in one edition.</summary>
public sealed record Instrument
{
    /// <summary>Names a text.</summary>
    /// <param name="jurisdiction">Where it holds, as in <c>EU</c>, <c>Germany</c>; <c>general</c> where it is advice for everywhere.</param>
    /// <param name="name">As the text is cited.</param>
    /// <param name="edition">Date or edition, as far as known.</param>
    /// <param name="kind">Whom it binds.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public Instrument(string jurisdiction, string name, string edition, InstrumentKind kind) =>
        (Jurisdiction, Name, Edition, Kind) = (Require.Text(jurisdiction), Require.Text(name), Require.Text(edition), kind);

    /// <summary>Where it holds.</summary>
    public string Jurisdiction { get; }

    /// <summary>As the text is cited.</summary>
    public string Name { get; }

    /// <summary>Date or edition, as far as known.</summary>
    public string Edition { get; }

    /// <summary>Whom it binds.</summary>
    public InstrumentKind Kind { get; }

    /// <summary>As in <c>EU: Council Directive 2007/43/EC (28 Jun 2007; consolidated 14 Dec 2019)</c>.</summary>
    public override string ToString() => Jurisdiction + ": " + Name + " (" + Edition + ")";
}
