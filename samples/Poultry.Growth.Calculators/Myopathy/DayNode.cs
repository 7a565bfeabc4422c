namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The chance that a lesion was made around one day.</summary>
internal sealed record DayNode(int DaysBefore, DateOnly Date, double Probability);
