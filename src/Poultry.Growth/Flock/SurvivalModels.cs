using Poultry.Growth.Evidence;

namespace Poultry.Growth.Flock;

/// <summary>Where rates of loss come from.</summary>
internal static class SurvivalModels
{
    private const string Equation = "S(t) = E[exp(-z H(t))], H(t) = sum of h_w over the days to t, ln z ~ N(0, s)";

    private static IReadOnlyList<ModelSymbol> Symbols =>
    [
        new("S", "share of birds alive", "-"),
        new("h_w", "rate of loss in week w of age: -ln(1 - share lost)/7", "1/d"),
        new("H", "rates summed up since hatch", "-"),
        new("z", "multiplier of a batch", "-"),
        new("s", "standard deviation of ln z between batches", "-"),
        new("t", "age", "d"),
    ];

    public static ModelInfo Own { get; } = new(
        "survival-own-rates",
        "Survival by the farm's own weekly losses",
        Equation,
        Symbols,
        [new Citation("OwnRates", "Weekly losses as the farm states them", HowKnown.Assumption)],
        "As good as the rates given: no weekly table of losses was to be had to hold the form against.",
        HowKnown.Assumption);

    public static ModelInfo Outdoor { get; } = new(
        "survival-fast-outdoor",
        "Survival of fast-growing birds outdoors",
        Equation,
        Symbols,
        [
            new Citation("Chou2004", "Chou C.C., Jiang D.D., Hung Y.P. 2004. Br. Poult. Sci.", HowKnown.ReadInSource, "abstract: week 1, 1.22 to 1.65 % in 4,769 flocks"),
            new Citation("Baeza2012", "Baéza E. et al. 2012. J. Anim. Sci. 90:2003-2013", HowKnown.ReadInSource, "abstract: losses of males rise from 49 d"),
            new Citation("FNC09-771", "SARE farmer project FNC09-771, free range", HowKnown.ReadInSource, "abstract: fast-growing 14 %, three hardier hybrids under 5 %; a small trial"),
            new Citation("OutdoorLosses", "Outdoors count on 5 to 20 % in all", HowKnown.CommonPractice),
        ],
        "The split over weeks and the spread between batches are assumptions that add up to the range of common practice; replace them with the farm's own records.",
        HowKnown.Assumption,
        [new ValidityRange("age", 0, 63, "d")]);
}
