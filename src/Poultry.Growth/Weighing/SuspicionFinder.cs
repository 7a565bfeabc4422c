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
        double variation = series.PooledCoefficientOfVariation is > 0 and { } pooled ? pooled : UsualCoefficientOfVariation;
        List<Suspicion> found = [];
        foreach (IGrouping<Sex, WeighIn> sex in series.GroupBy(weighIn => weighIn.Sex))
        {
            IReadOnlyList<Suspicion> fellows = FellowCheck.In(sex);
            IReadOnlyList<Suspicion> ages = AgesCheck.In(sex);
            found.AddRange(fellows);
            found.AddRange(ages);

            // What is already in question is no witness against others.
            HashSet<WeighIn> unlike = [.. fellows.Concat(ages).Select(suspicion => suspicion.WeighIn)];
            WeighIn[] rest = [.. sex.Where(weighIn => !unlike.Contains(weighIn))];
            found.AddRange(MeanFallsCheck.In(rest, variation));
            found.AddRange(SpreadCheck.In(rest));
        }

        return [.. found.OrderBy(suspicion => suspicion.WeighIn.Age)];
    }
}
