using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>What the nodes of a projection show of themselves.</summary>
internal static class ProjectionFamilies
{
    /// <summary>The last row of the curve of medians.</summary>
    private const int LastDays = 120;

    public static IReadOnlyList<FamilyWeight> Of(NodeFits fits, GrowthPrior prior)
    {
        List<FamilyWeight> others = [];
        for (int q = fits.Plan.GompertzNodes; q < fits.Count; q++)
        {
            others.Add(new FamilyWeight(fits.Plan.Nodes[q].Shape, null, fits.Plan.Nodes[q].Share, fits.Weight(q)));
        }

        GrowthPrior[] followed = prior.Fallback is { } wider ? [prior, wider] : [prior];
        return [.. followed.Select(one => Together(fits, one)), .. others.OrderBy(family => family.Shape)];
    }

    private static FamilyWeight Together(NodeFits fits, GrowthPrior followed)
    {
        (double before, double after) = (0, 0);
        for (int q = 0; q < fits.Plan.GompertzNodes; q++)
        {
            if (fits.Plan.Nodes[q].Follows == followed)
            {
                (before, after) = (before + fits.Plan.Nodes[q].Share, after + fits.Weight(q));
            }
        }

        return new FamilyWeight(0, followed, before, after);
    }

    /// <summary>
    /// The flock's median by day. It falls where a weigh-in was lighter than the one before, and where growth has all but ended and the discrepancy fades: there the table stays level until the
    /// median is above it again.
    /// </summary>
    public static TabulatedCurve Medians(NodeFits fits, FlockSpread spread, GrowthPrior prior)
    {
        List<(Age, Mass)> rows = [];
        // A microgram: from weights of no birds a median may come that is no number above 0.
        double most = 1e-9;
        for (int days = 0; days <= LastDays; days++)
        {
            most = Math.Max(most, ProjectionAnswers.Mean(fits, days, 0, spread.Factor(spread.Sex, days), level: 0.5).Median);
            if (!double.IsFinite(most))
            {
                break;
            }

            rows.Add((Age.FromDays(days), Mass.FromKilograms(most)));
        }

        return TabulatedCurve.Of("Projected mean of the flock", new Citation("Projection", "Projection by " + prior.Name, HowKnown.Derived), [.. rows]);
    }
}
