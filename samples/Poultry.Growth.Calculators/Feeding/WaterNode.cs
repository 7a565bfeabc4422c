namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Water by one source; low and high are the range of the source.</summary>
internal sealed record WaterNode(
    string Model, double GPerBirdPerDay, double LowGPerBirdPerDay, double HighGPerBirdPerDay, double LitresPerDay, double LowLitresPerDay, double HighLitresPerDay);
