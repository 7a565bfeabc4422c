namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>What a change is worth, and when it would show.</summary>
internal sealed record ChangeNode(double OddsRatio, double SparedBirds, double WorthPerBatch, int? BatchesToSee);
