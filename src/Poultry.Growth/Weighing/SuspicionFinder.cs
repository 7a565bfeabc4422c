using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>Asks every check in turn. Cockerels, pullets and mixed birds are held against their own kind.</summary>
internal static class SuspicionFinder
{
    /// <summary>
    /// The spread between birds where the weigh-ins show none: 10 % of the mean, the upper end of what is common in a well-run flock of one
    /// sex (8-10 % at 6-8 weeks; common practice, no source).
    /// </summary>
    private const double UsualCoefficientOfVariation = 0.10;

    public static IReadOnlyList<Suspicion> In(WeighInSeries series)
    {
        List<Suspicion> found = [];
        foreach (IGrouping<Sex, WeighIn> sex in series.GroupBy(weighIn => weighIn.Sex))
        {
            found.AddRange(FellowCheck.In(sex));
            found.AddRange(AgesCheck.In(sex));
        }

        // What is already in question is no witness against others; nor does it say how much birds vary, and so how far a mean may fall by luck.
        IReadOnlyList<WeighIn> rest = Without(found, series);
        Suspicion[] wide = [.. SpreadCheck.In(rest)];
        double variation = Spread.PooledVariation(Without(wide, rest)) ?? UsualCoefficientOfVariation;
        found.AddRange(rest.GroupBy(weighIn => weighIn.Sex).SelectMany(sex => MeanFallsCheck.In(sex, variation)));
        found.AddRange(wide);
        return [.. found.OrderBy(suspicion => suspicion.WeighIn.Age)];
    }

    private static IReadOnlyList<WeighIn> Without(IEnumerable<Suspicion> suspicions, IReadOnlyList<WeighIn> weighIns)
    {
        HashSet<WeighIn> suspected = [.. suspicions.Select(suspicion => suspicion.WeighIn)];
        return [.. weighIns.Where(weighIn => !suspected.Contains(weighIn))];
    }
}
