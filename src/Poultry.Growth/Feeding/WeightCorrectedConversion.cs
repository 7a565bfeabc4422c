using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Feeding;

/// <summary>A feed conversion moved to a reference weight: no <see cref="FeedConversion"/>, since no bird ever converted so.</summary>
public sealed class WeightCorrectedConversion
{
    internal WeightCorrectedConversion(WeightCorrection rule, FeedConversion from, double ratio, Caution? caution) =>
        (Rule, From, Ratio, Caution) = (rule, from, ratio, caution);

    /// <summary>The rule, with its reference weight.</summary>
    public WeightCorrection Rule { get; }

    /// <summary>The conversion as it was.</summary>
    public FeedConversion From { get; }

    /// <summary>Corrected, a pure number on the basis of <see cref="From"/>.</summary>
    public double Ratio { get; }

    /// <summary>Says that the rule does not fit birds of this weight; null where it does.</summary>
    public Caution? Caution { get; }

    /// <summary>As in <c>1.500 at 2.5 kg</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Ratio:0.000} at {Rule.Reference.Kilograms:0.0} kg");
}
