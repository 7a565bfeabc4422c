using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>A mean below that of the age before, by more than the luck of the catch.</summary>
/// <remarks>
/// Two catches of the same flock differ: ln(m2/m1) has the standard error c sqrt(1/n1 + 1/n2). A meat bird adds at least 1 % a day up to
/// twelve weeks (a 2001 strain still 1.0 % a day from 70 to 84 d: 4808 to 5520 g, Havenstein et al. 2003), so growth is counted for the
/// birds: a fall is flagged when ln(m2/m1) lies below both 0 and 0.01 days - 1.645 SE. For 20 birds a week apart any fall is flagged; for one and
/// the same chick over two days a fall up to 19 % is not (R's ChickWeight has 22 such falls, the deepest 11 %).
/// </remarks>
internal static class MeanFallsCheck
{
    private const double LeastGrowthPerDay = 0.01;
    private const double OneSided95 = 1.645;

    public static IEnumerable<Suspicion> In(IEnumerable<WeighIn> oneSex, double variation)
    {
        Day[] days = [.. oneSex.GroupBy(weighIn => weighIn.AgeDays).Select(day => new Day([.. day]))];
        return days.Zip(days.Skip(1)).SelectMany(pair => Between(pair.First, pair.Second, variation));
    }

    private static IEnumerable<Suspicion> Between(Day before, Day now, double variation)
    {
        double error = variation * Math.Sqrt((1 / before.Birds) + (1 / now.Birds));
        double luck = (LeastGrowthPerDay * (now.Age.Days - before.Age.Days)) - (OneSided95 * error);
        if (Math.Log(now.MeanKilograms / before.MeanKilograms) >= Math.Min(0, luck))
        {
            return [];
        }

        string text = "The mean falls from " + WeightText.Of(before.MeanKilograms) + " at " + before.Age + " to " + WeightText.Of(now.MeanKilograms)
            + " at " + now.Age + "; expected a mean that grows.";

        // Of several weigh-ins of that day only those that lie low themselves.
        return now.WeighIns.Where(weighIn => weighIn.MeanKilograms < before.MeanKilograms)
            .Select(weighIn => new Suspicion(Suspicion.MeanFalls, text, weighIn));
    }

    private sealed class Day(WeighIn[] weighIns)
    {
        public WeighIn[] WeighIns => weighIns;

        public Age Age => weighIns[0].Age;

        public double Birds { get; } = weighIns.Sum(weighIn => (double)weighIn.BirdsWeighed);

        public double MeanKilograms { get; } =
            weighIns.Sum(weighIn => weighIn.BirdsWeighed * weighIn.MeanKilograms) / weighIns.Sum(weighIn => (double)weighIn.BirdsWeighed);
    }
}
