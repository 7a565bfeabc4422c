using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What was known beforehand: whose growth, and the Gompertz curve in its middle.</summary>
internal sealed record PriorNode(string Id, string Name, string Sex, double MatureWeightKg, double RatePerDay, double InflectionAgeDays)
{
    public static PriorNode Of(GrowthPrior prior)
    {
        GompertzCurve centre = prior.Centre;
        return new(prior.Model.Id, prior.Name, Codes.Of(prior.Sex), centre.MatureWeight!.Value.Kilograms, centre.Rate.PerDay, prior.Means[2]);
    }
}
