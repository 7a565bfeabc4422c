namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>A number without unit, with its range.</summary>
internal sealed record NumberNode(double Median, double Low, double High);
