using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Myopathy;

/// <summary>The coarse rule by which the look of a lesion tells its age.</summary>
public static class LesionStages
{
    /// <summary>Equation, sources and range.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-stages",
        "Age of a lesion by its look",
        "P(stage | t): 0.5-2 d I .8 II .2; 2-4 d I .3 II .6 III .1; 4-7 d II .1 III .7 IV .2; 7-14 d III .5 IV .5; > 14 d III .2 IV .8",
        [
            new("P(stage | t)", "chance of each look; windows are closed below and open above", "-"),
            new("t", "time from event to killing", "d"),
            new("IV", "grey; III green, II pink, I red", "-"),
        ],
        [LesionSources.Kijowski2012, LesionSources.Doustar, LesionSources.Bilgili2008, LesionSources.OwnAssumption],
        "Fitted to one trial: birds killed 1 and 3 d after flapping had stages I and II, those killed 5, 7 and 14 d after had III and IV; the figures within these windows are assumptions. Beyond 14 d there are no data.",
        HowKnown.Assumption,
        [new ValidityRange("time since the event", 1, 14, "d")]);

    /// <summary>Beyond it there is one open class, d.</summary>
    internal const double OldestDays = 14;

    /// <summary>The edges of the windows, d; the last one is open.</summary>
    internal static ReadOnlySpan<double> EdgesDays => [0.5, 2, 4, 7, OldestDays];

    private static ReadOnlySpan<double> Chances =>
    [
        0.8, 0.2, 0, 0,
        0.3, 0.6, 0.1, 0,
        0, 0.1, 0.7, 0.2,
        0, 0, 0.5, 0.5,
        0, 0, 0.2, 0.8,
    ];

    /// <summary>The chance that a lesion looks so, after a time. Before half a day nothing shows: 0 for every stage.</summary>
    /// <param name="stage">How the lesion looks.</param>
    /// <param name="sinceEvent">From the event to killing; before it, below 0, nothing shows either.</param>
    public static Probability Chance(LesionStage stage, Duration sinceEvent) => Probability.FromFraction(ChanceAt(stage, sinceEvent.Days));

    /// <summary>P(stage | t)</summary>
    internal static double ChanceAt(LesionStage stage, double days)
    {
        int window = -1;
        foreach (double edge in EdgesDays)
        {
            window += days >= edge ? 1 : 0;
        }

        return window < 0 ? 0 : Chances[(4 * window) + (int)stage];
    }
}
