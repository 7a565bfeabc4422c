namespace Poultry.Growth.Calculators.Housing;

/// <summary>From one figure to another, as a source has it; the source is null where several are taken together.</summary>
internal sealed record RangeNode(string? Source, string? HowKnown, double Low, double High);
