namespace Poultry.Growth.Fitting;

/// <summary>One family in a comparison.</summary>
public sealed class ComparedFamily
{
    internal ComparedFamily(GrowthFit fit, double? difference, double? weight) => (Fit, AiccDifference, Weight) = (fit, difference, weight);

    /// <summary>The fit; its status says whether it takes part.</summary>
    public GrowthFit Fit { get; }

    /// <summary>AICc less that of the best family; null where there is no curve or too few observations. Below 2 the data hardly prefer the best.</summary>
    public double? AiccDifference { get; }

    /// <summary>Share of the evidence among the families compared (Akaike weight), from 0 to 1; null where there is no AICc.</summary>
    public double? Weight { get; }
}
