namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>One batch, inspected.</summary>
internal sealed record InspectionNode(string Batch, DateOnly? Killed, int BirdsOpened, int BirdsFound, double DetectionPercent);
