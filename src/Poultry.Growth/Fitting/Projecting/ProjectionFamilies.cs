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

    public static IReadOnlyList<FamilyWeight> Of(NodeFits fits)
    {
        (double before, double after) = (0, 0);
        List<FamilyWeight> others = [];
        for (int q = 0; q < fits.Count; q++)
        {
            NodePlan.Node node = fits.Plan.Nodes[q];
            if (q < fits.Plan.GompertzNodes)
            {
                (before, after) = (before + node.Share, after + fits.Weight(q));
            }
            else
            {
                others.Add(new FamilyWeight(node.Shape, followsPrior: false, node.Share, fits.Weight(q)));
            }
        }

        return [new FamilyWeight(0, followsPrior: true, before, after), .. others.OrderBy(family => family.Shape)];
    }

    /// <summary>The flock's median by day. The discrepancy fades after the last weigh-in, and where growth has all but ended that may show as a fall: there the table ends.</summary>
    public static TabulatedCurve Medians(NodeFits fits, FlockSpread spread, GrowthPrior prior)
    {
        List<(Age, Mass)> rows = [];
        double before = 0;
        for (int days = 0; days <= LastDays; days++)
        {
            double kilograms = ProjectionAnswers.Mean(fits, days, 0, spread.Factor(spread.Sex, days), level: 0.5).Median;
            if (kilograms < before)
            {
                break;
            }

            rows.Add((Age.FromDays(days), Mass.FromKilograms(kilograms)));
            before = kilograms;
        }

        return TabulatedCurve.Of("Projected mean of the flock", new Citation("Projection", "Projection by " + prior.Name, HowKnown.Derived), [.. rows]);
    }
}
