using System.Globalization;

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

    /// <summary>As in <c>Logistic growth curve: AICc 3.2 above the best, 12 % of the evidence</c>, in every culture.</summary>
    public override string ToString() => AiccDifference is { } difference && Weight is { } weight
        ? Fit.Family.Model.Name + string.Create(CultureInfo.InvariantCulture, $": AICc {difference:0.0} above the best, {100 * weight:0.#} % of the evidence")
        : Fit.ToString();
}
