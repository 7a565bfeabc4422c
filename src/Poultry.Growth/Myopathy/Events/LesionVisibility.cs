using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Myopathy;

/// <summary>Which share of lesions of an age shows when the bird is cut up.</summary>
public static class LesionVisibility
{
    /// <summary>Nothing shows before, d; everything from <see cref="FullDays"/>.</summary>
    internal const double FirstDays = 0.5, FullDays = 2;

    /// <summary>Equation, source and range.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-visibility",
        "Lesions that show at cutting",
        "V(t) = 0 for t < 0.5; (t - 0.5) / 1.5 up to 2; then 1",
        [new("V(t)", "share of lesions that show", "-"), new("t", "time from event to killing", "d")],
        [LesionSources.Doustar, LesionSources.Auburn2013, LesionSources.OwnAssumption],
        "An assumption between two statements: visible at 12 h (a trial), up to 48 h (an account of another). So the final catching does not count.",
        HowKnown.Assumption);

    /// <summary>The share that shows.</summary>
    /// <param name="sinceEvent">From event to killing; below 0, before the event, nothing shows.</param>
    public static Probability Share(Duration sinceEvent) => Probability.FromFraction(At(sinceEvent.Days));

    /// <summary>V(t)</summary>
    internal static double At(double days) => Math.Clamp((days - FirstDays) / (FullDays - FirstDays), 0, 1);
}
