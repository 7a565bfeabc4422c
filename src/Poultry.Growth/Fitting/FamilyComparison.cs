using Poultry.Growth.Curves;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>
/// The same weigh-ins fitted by every family, the best first by corrected Akaike criterion. Families that fit the weigh-ins alike can
/// differ much in what they project: look at both.
/// </summary>
public static class FamilyComparison
{
    /// <summary>Compares families.</summary>
    /// <param name="weighIns">What was weighed.</param>
    /// <param name="errors">What is assumed about scatter, the same for all; <see cref="ErrorModel.Proportional"/> where none is named.</param>
    /// <param name="hatchWeight">A weight at hatch that every curve must have, above 0; null leaves it free.</param>
    /// <returns>The families with a curve, best first, then the others.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hatch weight is not above 0.</exception>
    public static IReadOnlyList<ComparedFamily> Of(WeighInSeries weighIns, ErrorModel? errors = null, Mass? hatchWeight = null)
    {
        List<(GrowthFit Fit, double? Aicc)> fits = [];
        foreach (CurveFamily family in CurveFamilies.All)
        {
            GrowthFit fit = GrowthFit.Of(weighIns, family, errors, hatchWeight);
            fits.Add((fit, fit.Curve is null ? null : fit.Aicc));
        }

        double? best = fits.Min(row => row.Aicc);
        double total = fits.Sum(row => Evidence(row.Aicc - best) ?? 0);
        return
        [
            .. fits
                .OrderBy(row => row.Aicc ?? double.PositiveInfinity)
                .ThenBy(row => row.Fit.Curve is null)
                .Select(row => new ComparedFamily(row.Fit, row.Aicc - best, Evidence(row.Aicc - best) / total)),
        ];
    }

    private static double? Evidence(double? difference) => difference is { } d ? Math.Exp(-d / 2) : null;
}
