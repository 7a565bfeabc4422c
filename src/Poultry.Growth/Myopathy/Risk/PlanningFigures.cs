using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>The figures of the planning model, each with its range and why.</summary>
internal static class PlanningFigures
{
    /// <summary>Mean share of birds: mean logit of the two large surveys (0.84 and 0.73 %); range by the Polish review.</summary>
    public const double Mean = 0.0078, LeastMean = 0.0015, LargestMean = 0.009;

    /// <summary>mu, so that the mean is 0.78 % at sigma 1.6.</summary>
    public const double LogitMean = -6.06;

    /// <summary>Between flocks: 151 flocks with a mean of 0.84 % had a maximum of 16.7 %, which a sigma of 1.2 to 2.0 makes likely.</summary>
    public const double BetweenFlocks = 1.6, LeastBetweenFlocks = 1.2, LargestBetweenFlocks = 2.0;

    /// <summary>Between averages of farms, from 15 farms of mixed sources: a part of what flocks differ by.</summary>
    public const double BetweenFarms = 0.8, LeastBetweenFarms = 0.5, LargestBetweenFarms = 1.2;

    /// <summary>Between flocks of one farm: 1.386² = 1.6² - 0.8².</summary>
    public static readonly double WithinFarm = Math.Sqrt((BetweenFlocks * BetweenFlocks) - (BetweenFarms * BetweenFarms));

    /// <summary>Between countries and studies; doubt only.</summary>
    public const double BetweenStudies = 0.42, LeastBetweenStudies = 0.2, LargestBetweenStudies = 0.9;

    /// <summary>Per <see cref="WeightStepKilograms"/> at equal age: no effect in 116,250 carcasses nor in the trial.</summary>
    private const double LeastWeightSlope = -0.35, LargestWeightSlope = 0.5;
    private const double WeightStepKilograms = 0.4, MiddleWeightKilograms = 2.6;

    /// <summary>Cockerels or pullets from 45 d, on the logit scale either way.</summary>
    private const double SexDoubt = 0.35;

    /// <summary>Odds between the extremes of strain: 3.66 in the survey, 1 to 5 allowed; the square root of it lies between an extreme and the average.</summary>
    private const double StrainExtremes = 5;

    private const string StrainBasis = "one survey of two crosses that are off the market: odds 3.66 apart, perhaps by farm and management; no source allots a current strain";

    public static OddsRatio Thinning { get; } = new(
        "thinning", "thinned 3 to 10 d before", 2, 1, 5, HowKnown.Assumption, "lesions were seen in birds killed 3 to 10 d after thinning, without a denominator");

    public static OddsRatio Outdoor { get; } = new(
        "outdoor", "access to the open", 1, 0.5, 2, HowKnown.Assumption, "no rate outdoors was ever published; startled birds are an opinion");

    public static OddsRatio LamenessOfABird { get; } = new(
        "lameness", "severely lame birds", 1.5, 1, 4, HowKnown.Assumption, "wing-walking can trigger lesions, says a handbook; no rate");

    /// <summary>Every odds ratio that acts for a batch or whose doubt is about it.</summary>
    public static IReadOnlyList<OddsRatio> For(BatchAtRisk batch)
    {
        List<OddsRatio> found = [];
        double edge = Math.Sqrt(StrainExtremes);
        if (batch.Strain != StrainRisk.Average)
        {
            found.Add(batch.Strain == StrainRisk.High
                ? new("strain", "a prone strain", 1.9, 1, edge, HowKnown.Derived, StrainBasis)
                : new("strain", "a less prone strain", 0.52, 1 / edge, 1, HowKnown.Derived, StrainBasis));
        }

        if (batch.IsThinned)
        {
            found.Add(Thinning);
        }

        if (batch.SeverelyLame.Fraction > 0)
        {
            found.Add(LamenessOfABird.With(
                OfFlock(LamenessOfABird.Value, batch.SeverelyLame), OfFlock(LamenessOfABird.Low, batch.SeverelyLame), OfFlock(LamenessOfABird.High, batch.SeverelyLame)));
        }

        if (batch.IsOutdoor)
        {
            found.Add(Outdoor);
        }

        if (batch.LiveWeight is { } weight)
        {
            double steps = (weight.Kilograms - MiddleWeightKilograms) / WeightStepKilograms;
            (double a, double b) = (Math.Exp(LeastWeightSlope * steps), Math.Exp(LargestWeightSlope * steps));
            found.Add(new(
                "weight", "live weight at this age", 1, Math.Min(a, b), Math.Max(a, b), HowKnown.ReadInSource, "no effect of weight in 116,250 carcasses, nor of 0.4 kg in the trial"));
        }

        if (batch.Sex != Sex.Mixed)
        {
            found.Add(new(
                "sex", "sex, from 45 d", 1, Math.Exp(-SexDoubt), Math.Exp(SexDoubt), HowKnown.ReadInSource, "no effect of sex in older birds of the trial; onset by age and sex is apart from this"));
        }

        return found;
    }

    /// <summary>1 + L (OR - 1): affected birds are rare, so a share L of birds at other odds multiplies the odds of the flock.</summary>
    private static double OfFlock(double ofABird, Probability share) => 1 + (share.Fraction * (ofABird - 1));
}
