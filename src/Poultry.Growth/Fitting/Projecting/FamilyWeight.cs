using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>How much one kind of curve counts in a projection.</summary>
public sealed class FamilyWeight
{
    internal FamilyWeight(double shape, bool followsPrior, double before, double after)
    {
        (Shape, FollowsPrior) = (shape, followsPrior);
        (Before, After) = (Probability.FromFraction(Math.Min(before, 1)), Probability.FromFraction(Math.Min(after, 1)));
    }

    /// <summary>Shape v of the Richards curve; 0 is Gompertz.</summary>
    public double Shape { get; }

    /// <summary>Whether it is the Gompertz curve that follows the growth prior; else a curve of this shape that is only loosely held.</summary>
    public bool FollowsPrior { get; }

    /// <summary>Its chance before the weigh-ins.</summary>
    public Probability Before { get; }

    /// <summary>Its chance after them.</summary>
    public Probability After { get; }

    /// <summary>Shape and chances in one line and in every culture.</summary>
    public override string ToString()
    {
        string kind = FollowsPrior ? "Gompertz by the prior" : string.Create(CultureInfo.InvariantCulture, $"shape {Shape:0.##}");
        return kind + ": " + Before + " before, " + After + " after";
    }
}
