using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>A row of the table of limits for programs.</summary>
internal sealed record LimitRowNode
{
    public required string Jurisdiction { get; init; }

    public required string Instrument { get; init; }

    public required string Edition { get; init; }

    public required string Kind { get; init; }

    public required string Scope { get; init; }

    public required string Quantity { get; init; }

    public required string Comparison { get; init; }

    public required string Printed { get; init; }

    /// <summary>What the library judges; not-judged where it only shows the row.</summary>
    public required string Subject { get; init; }

    public required double? Value { get; init; }

    public required string Unit { get; init; }

    public required string? Requires { get; init; }

    public required string HowKnown { get; init; }

    public required bool Unverified { get; init; }

    public required string? Source { get; init; }

    public static LimitRowNode Of(Limit limit) => new()
    {
        Jurisdiction = limit.Instrument.Jurisdiction,
        Instrument = limit.Instrument.Name,
        Edition = limit.Instrument.Edition,
        Kind = Codes.Of(limit.Instrument.Kind),
        Scope = limit.Scope,
        Quantity = limit.Quantity,
        Comparison = Codes.Of(limit.Comparison),
        Printed = limit.Printed,
        Subject = Codes.Of(limit.Subject),
        Value = limit.Value,
        Unit = LimitUnits.Of(limit.Subject),
        Requires = limit.Requires,
        HowKnown = limit.IsUnverified ? "memory, unverified" : Codes.Of(limit.HowKnown),
        Unverified = limit.IsUnverified,
        Source = limit.Source,
    };
}
