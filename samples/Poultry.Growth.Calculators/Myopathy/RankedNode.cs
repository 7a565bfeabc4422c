namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>A logged disturbance with what it may have made.</summary>
internal sealed record RankedNode(string What, DateOnly Date, int DaysBefore, double Probability, double ExpectedBirds, bool ExplainsAll);
