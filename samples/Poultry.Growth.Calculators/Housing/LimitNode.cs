using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>A limit and its verdict for programs: the figure in the one unit of its subject and as printed. unverified is true where the figure is recalled.</summary>
internal sealed record LimitNode
{
    public required string Jurisdiction { get; init; }

    public required string Instrument { get; init; }

    public required string Edition { get; init; }

    public required string Kind { get; init; }

    public required string Scope { get; init; }

    public required string Subject { get; init; }

    public required string HowKnown { get; init; }

    public required bool Unverified { get; init; }

    /// <summary>yes, no or unknown.</summary>
    public required string Applies { get; init; }

    public required string Why { get; init; }

    public required bool Binds { get; init; }

    public required string Comparison { get; init; }

    public required double? Limit { get; init; }

    public required string Unit { get; init; }

    public required string Printed { get; init; }

    /// <summary>The keeping's own figure; null where unknown.</summary>
    public required double? Here { get; init; }

    public required bool? Met { get; init; }

    /// <summary>The verdict in sentences.</summary>
    public required string Verdict { get; init; }

    public static LimitNode Of(LimitVerdict verdict) => new()
    {
        Jurisdiction = verdict.Limit.Instrument.Jurisdiction,
        Instrument = verdict.Limit.Instrument.Name,
        Edition = verdict.Limit.Instrument.Edition,
        Kind = Codes.Of(verdict.Limit.Instrument.Kind),
        Scope = verdict.Limit.Scope,
        Subject = Codes.Of(verdict.Limit.Subject),
        HowKnown = verdict.Limit.IsUnverified ? "memory, unverified" : Codes.Of(verdict.Limit.HowKnown),
        Unverified = verdict.Limit.IsUnverified,
        Applies = Codes.Of(verdict.Applies),
        Why = verdict.Why,
        Binds = verdict.Binds,
        Comparison = Codes.Of(verdict.Limit.Comparison),
        Limit = verdict.Limit.Value,
        Unit = LimitUnits.Of(verdict.Limit.Subject),
        Printed = verdict.Limit.Printed,
        Here = verdict.Value,
        Met = verdict.Met,
        Verdict = verdict.Text,
    };

    public static IReadOnlyList<LimitNode> Of(IEnumerable<LimitVerdict> verdicts) => [.. verdicts.Select(Of)];
}
