using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>The priors that come with the library, each built from published rows with the arithmetic beside it.</summary>
internal static class ShippedPriors
{
    /// <summary>
    /// Half the difference between cockerels and pullets, from Gompertz curves fitted to a breeder's objectives of 2012 to 70 d: males 7.294 kg,
    /// 0.03944/d, 39.25 d; females 5.685 kg, 0.04073/d, 36.46 d. Laid about a middle curve they give pullets 0.83 of the cockerels' weight at 56 d, as
    /// three tables do (<see cref="SexDimorphism"/>).
    /// </summary>
    private static readonly double HalfLogMature = Math.Log(7.294 / 5.685) / 2;
    private static readonly double HalfLogRate = Math.Log(0.03944 / 0.04073) / 2;
    private const double HalfInflectionDays = (39.25 - 36.46) / 2;

    /// <summary>
    /// Spread of the fast type. Between the three published sources: 0.10 to 0.15 of ln A, 0.05 to 0.08 of ln k, 2 to 3 d of t*; widened, for
    /// three sources are few and farms differ more than breeders.
    /// </summary>
    private static ReadOnlySpan<double> ObjectiveDeviations => [0.20, 0.10, 4];

    /// <summary>Outdoors the end weights differ more from farm to farm; how much nobody has published.</summary>
    private static ReadOnlySpan<double> OutdoorDeviations => [0.25, 0.10, 4];

    /// <summary>Twice the upper ends of the spread between the three fast sources: the slow type is known from one.</summary>
    private static ReadOnlySpan<double> SlowDeviations => [0.30, 0.16, 6];

    public static ModelInfo Objective { get; } = Info(
        "prior-fast-objective",
        "Fast-growing birds by published objectives",
        "Centre within 3 % of the geometric means of the sources (A 7.2 kg, k 0.0395/d); 56-d weight 4.2 kg, 40 % above the published end point outdoors. The sources are of different years and are not brought to one: how fast birds change is told two ways in one abstract (Zuidhof et al. 2014: 42-d weight +3.30 % a year over 48 years, which is 4.75 times, beside 'over 400 %'; conversion -2.55 % a year, which is 0.29 times, beside '-50 %').",
        HowKnown.Assumption,
        Vargas,
        CobbFeatherFree,
        Objectives2012);

    public static ModelInfo Outdoor { get; } = Info(
        "prior-fast-outdoor",
        "Fast-growing birds outdoors",
        "The centre says 2.97 kg at 56 d and 4.15 kg at 84 d; the two published end points are about 2.97 and 3.97 kg. Two end points from two places.",
        HowKnown.Assumption,
        Pnw665,
        OrganicCobb,
        Vargas,
        CobbFeatherFree,
        Objectives2012);

    public static ModelInfo Slow { get; } = Info(
        "prior-slow",
        "Slower-growing birds",
        "One strain of one study, whose mature weights may be those at 16 weeks. Mixed birds weigh 2.84 kg at 63 d by it; two hybrids kept outdoors reached 2.92 and 3.25 kg.",
        HowKnown.Assumption,
        Michalczuk,
        FreeRangeHybrids);

    private static Citation Vargas => new(
        "Vargas2020", "Vargas et al. 2020. Br. Poult. Sci., doi 10.1080/00071668.2020.1716300", HowKnown.ReadInSource, "abstract: A 8420 / 6650 g, k 0.0385 / 0.0368 per day, M / F");

    private static Citation CobbFeatherFree => new(
        "BrPoultSci2024", "Br. Poult. Sci. 2024, 65:265-272, doi 10.1080/00071668.2024.2328680", HowKnown.ReadInSource, "abstract: A 8380 / 6940 g, k 0.0417 / 0.0402 per day, M / F");

    private static Citation Objectives2012 => new(
        "Objectives2012", "A breeder's performance objectives, 2012, weekly weights, in an open collection; Gompertz fits to 70 d are own arithmetic", HowKnown.Secondary, "A 7294 / 5685 g, k 0.03944 / 0.04073 per day, t* 39.25 / 36.46 d, M / F");

    private static Citation Pnw665 => new(
        "PNW665", "Pacific Northwest Extension publication PNW 665", HowKnown.ReadInSource, "Table 1: carcass 4.71 lb at 8 weeks, 2.97 kg live at 72 % dressing");

    private static Citation OrganicCobb => new(
        "Athens4125", "Agricultural University of Athens, repository item 4125, organic birds to 12 weeks", HowKnown.ReadInSource, "abstract: 3969 g at 84 d");

    private static Citation Michalczuk => new(
        "Michalczuk2016", "Michalczuk et al. 2016. Ann. Anim. Sci. 16(1):65", HowKnown.ReadInSource, "abstract: A 5900 / 4000 g, maximum gain 69.0 / 50.0 g/d, hence k = e gain / A = 0.0318 / 0.0340 per day, at 47 / 41 d, M / F");

    private static Citation FreeRangeHybrids => new(
        "Aspr2024", "Asian poultry science record, ASPR 2024, 42(2):155-172", HowKnown.ReadInSource, "abstract: free range to 63 d, 2918 and 3254 g");

    /// <summary>
    /// Geometric means over sources and sexes: A (8.42 6.65 8.38 6.94 7.29 5.69)^(1/6) = 7.16 kg, k (.0385 .0368 .0417 .0402 .0394 .0407)^(1/6) =
    /// .0395/d; t* (39.25 + 36.46)/2 = 37.9 d. Rounded to 7.0 kg, .0395/d, 38.5 d, the centre with which the method was measured.
    /// </summary>
    public static GrowthPrior FastGrowingObjective(Sex sex) => Fast(Objective, sex, 7.0, ObjectiveDeviations, BreedersTarget);

    /// <summary>4.9 kg with the same k and t* meets both outdoor end points within 5 %.</summary>
    public static GrowthPrior FastGrowingOutdoor(Sex sex) => Fast(Outdoor, sex, 4.9, OutdoorDeviations, TwoEndPoints);

    /// <summary>As printed for either sex; k = e times the highest gain over A.</summary>
    public static GrowthPrior SlowGrowing(Sex sex)
    {
        (double logMature, double logRate, double inflectionDays) = sex switch
        {
            Sex.Male => (Math.Log(5.9), Math.Log(0.0318), 47),
            Sex.Female => (Math.Log(4.0), Math.Log(0.0340), 41),
            _ => (Math.Log(5.9 * 4.0) / 2, Math.Log(0.0318 * 0.0340) / 2, (47.0 + 41) / 2),
        };
        return GrowthPrior.Independent(Slow, sex, [logMature, logRate, inflectionDays], SlowDeviations, OneStrain);
    }

    private static Caution BreedersTarget => new(
        "breeders-target", "This prior follows what breeders aim at with well-run flocks; birds outdoors are mostly lighter.");

    private static Caution TwoEndPoints => new(
        "two-end-points", "This prior rests on two end weights from two places. Your own past batches are better.");

    private static Caution OneStrain => new(
        "one-strain", "This prior rests on one slower-growing strain; strains differ much. Your own past batches are better.");

    private static GrowthPrior Fast(ModelInfo model, Sex sex, double matureKilograms, ReadOnlySpan<double> deviations, Caution caution)
    {
        double side = sex switch { Sex.Male => 1, Sex.Female => -1, _ => 0 };
        return GrowthPrior.Independent(
            model,
            sex,
            [
                Math.Log(matureKilograms) + (side * HalfLogMature),
                Math.Log(0.0395) + (side * HalfLogRate),
                38.5 + (side * HalfInflectionDays),
            ],
            deviations,
            caution);
    }

    /// <summary>The evidence of a prior.</summary>
    public static ModelInfo Info(string id, string name, string accuracy, HowKnown howKnown, params Citation[] citations) => new(
        id,
        name,
        "W = A exp(-exp(-k (t - t*))), (ln A, ln k, t*) normal",
        [
            new ModelSymbol("W", "live weight, mean of the flock", "kg"),
            new ModelSymbol("t", "age", "d"),
            new ModelSymbol("A", "mature weight", "kg"),
            new ModelSymbol("k", "rate", "1/d"),
            new ModelSymbol("t*", "inflection age", "d"),
        ],
        citations,
        accuracy,
        howKnown);
}
