namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A conversion moved to a reference weight; the range is that for which the rule is stated, null where it states none.</summary>
internal sealed record WeightCorrectedNode(string Rule, double ReferenceKg, double Value, string? Range, bool Fits);
