namespace Poultry.Growth.Calculators.Carcass;

/// <summary>The worth of a share of birds cut, less cutting and packing.</summary>
internal sealed record AdviceShareNode(double CutPercent, double Value);
