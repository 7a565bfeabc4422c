using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>How much one kind of curve counts in a projection.</summary>
public sealed class FamilyWeight
{
    internal FamilyWeight(double shape, GrowthPrior? prior, double before, double after)
    {
        (Shape, Prior) = (shape, prior);
        (Before, After) = (Probability.FromFraction(Math.Min(before, 1)), Probability.FromFraction(Math.Min(after, 1)));
    }

    /// <summary>Shape v of the Richards curve; 0 is Gompertz.</summary>
    public double Shape { get; }

    /// <summary>The growth prior that its Gompertz curves follow; null for curves of this shape that are only loosely held.</summary>
    public GrowthPrior? Prior { get; }

    /// <summary>Its chance before the weigh-ins.</summary>
    public Probability Before { get; }

    /// <summary>Its chance after them.</summary>
    public Probability After { get; }

    /// <summary>Shape and chances in one line and in every culture.</summary>
    public override string ToString()
    {
        string kind = Prior is { Name: var name } ? "Gompertz by " + name : string.Create(CultureInfo.InvariantCulture, $"shape {Shape:0.###}");
        return kind + ": " + Before + " before, " + After + " after";
    }
}
