namespace Poultry.Growth.Calculators.Feeding;

/// <summary>What one source calls comfortable.</summary>
internal sealed record ComfortNode(string Source, double TemperatureC);
