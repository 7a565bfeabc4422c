using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>When the flock's mean reaches a weight.</summary>
internal sealed class WeightTarget
{
    private WeightTarget(Mass weight, Estimate<Age>? age, string explanation, IReadOnlyList<Caution> known)
    {
        (Weight, Age, Explanation) = (weight, age, explanation);
        Beyond = ProjectedWeight.BeyondOf(age?.Cautions ?? [], known);
    }

    public Mass Weight { get; }

    /// <summary>Null where the mean never reaches it.</summary>
    public Estimate<Age>? Age { get; }

    /// <summary>The answer in one sentence.</summary>
    public string Explanation { get; }

    /// <summary>The caution that goes with this age and not with the whole answer; null where there is none.</summary>
    public Caution? Beyond { get; }

    public static WeightTarget Of(GrowthFit fit, Mass weight, double level) =>
        new(weight, fit.AgeAt(weight, level), fit.Curve!.AgeAt(weight).Explanation, fit.Cautions);

    public static WeightTarget Of(Projection projection, Mass weight, double level)
    {
        Estimate<Age>? age = projection.AgeAt(weight, level);
        string explanation = age is null ? "Likely never: at no age is the chance that the mean has reached it one half." : "As likely before as after " + age.Value + ".";
        return new(weight, age, explanation, projection.Cautions);
    }
}
