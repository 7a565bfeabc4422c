using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>A single bird far from those weighed singly at the same age, in the same weigh-in or another of that day.</summary>
/// <remarks>
/// Robust z = (ln w - median ln w) / s with s = 1.4826 MAD: neither moves much when the bird in question is a thousand times too heavy.
/// s is at least 0.09, since the MAD of a handful of birds can come out near zero and 8-10 % is the spread of a well-run flock of one sex
/// (common practice, no source). The threshold 5 then means: lighter than 0.64 or heavier than 1.57 times the middle bird at the very least,
/// and more where the birds differ more; a normal flock passes it once in two million birds, while a factor of 2.2 passes it up to a CV of
/// 16 %. The largest z of R's ChickWeight, 578 weights by day or by day and diet, is 3.7.
/// </remarks>
internal static class FellowCheck
{
    private const double LeastLogSpread = 0.09;
    private const double Threshold = 5;

    /// <summary>Two birds have no middle one: they are held against the other ages only.</summary>
    private const int FewestFellows = 3;

    public static IReadOnlyList<Suspicion> In(IEnumerable<WeighIn> oneSex)
    {
        List<Suspicion> found = [];
        foreach (IGrouping<double, WeighIn> day in oneSex.Where(weighIn => weighIn.Kind == WeighInKind.Birds).GroupBy(weighIn => weighIn.AgeDays))
        {
            List<double> logs = [];
            foreach (WeighIn weighIn in day)
            {
                foreach (double kilograms in weighIn.Kilograms)
                {
                    logs.Add(Math.Log(kilograms));
                }
            }

            if (logs.Count >= FewestFellows)
            {
                double middle = Spread.Median(logs);
                double spread = Math.Max(LeastLogSpread, 1.4826 * Spread.Median(logs.Select(log => Math.Abs(log - middle))));
                found.AddRange(day.SelectMany(weighIn => Far(weighIn, middle, Threshold * spread)));
            }
        }

        return found;
    }

    private static IEnumerable<Suspicion> Far(WeighIn weighIn, double middle, double reach)
    {
        for (int bird = 0; bird < weighIn.BirdsWeighed; bird++)
        {
            double kilograms = weighIn.Kilograms[bird], away = Math.Log(kilograms) - middle;
            if (Math.Abs(away) > reach)
            {
                string text = "A bird of " + WeightText.Of(kilograms) + " at " + weighIn.Age + " is far from its fellows; expected near "
                    + WeightText.Of(Math.Exp(middle)) + ", the middle bird" + ConfusedUnits.Guess(away) + ".";
                yield return new Suspicion(Suspicion.UnlikeFellows, text, weighIn, bird);
            }
        }
    }
}
