using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What was known beforehand: whose growth, the Gompertz curve in its middle, what it tells of weighing, and the name of the wider prior behind it.</summary>
internal sealed record PriorNode(
    string Id, string Name, string Sex, double MatureWeightKg, double RatePerDay, double InflectionAgeDays, double? CvPercent, double? WeighInErrorPercent, string? Wider)
{
    public static PriorNode Of(GrowthPrior prior)
    {
        GompertzCurve centre = prior.Centre;
        return new(
            prior.Model.Id,
            prior.Name,
            Codes.Of(prior.Sex),
            centre.MatureWeight!.Value.Kilograms,
            centre.Rate.PerDay,
            prior.Means[2],
            100 * prior.CoefficientOfVariation,
            100 * prior.WeighInError,
            prior.Fallback?.Name);
    }
}
