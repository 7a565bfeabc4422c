namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The answer with one figure at either end of its range.</summary>
internal sealed record SensitivityNode(string Code, string Name, double From, double To, SpreadNode AtFrom, SpreadNode AtTo);
