using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>A weigh-in far from what the other ages say, by interpolation of the logarithm of weight.</summary>
/// <remarks>
/// <para>
/// Over age itself, log weight bends so much (a chick quadruples in its first week and takes six weeks to do it again) that interpolation errs by 30 %
/// between weekly weigh-ins and by a factor of 3 between hatch and eight weeks. Over x = exp(-0.04 age/d) it runs nearly straight for every meat
/// bird: the handbook tables of NRC 1984, Poultry CRC, a breeder's 2012 objectives, Havenstein 1994/2003 and four slow strains have slopes
/// -d ln W/dx between 2 and 6.5, but for a few beyond eight weeks, where little x is left. Inside the series a weigh-in is held against its neighbours' line; at an end, against the line of the two
/// next to it, its slope kept within those bounds.
/// </para>
/// <para>
/// Threshold: ln 1.72 = 0.54, which is 2.2046 less 22 %, plus a quarter of the x that an end reaches over. The largest distances in all those tables, in R's 50
/// ChickWeight chicks and in its diet means are 0.23 inside and 0.49 at an end: nothing is flagged. With one weigh-in of each of those series in turn set off
/// by 2.2, 10, 16, 28.35, 453.6 or 1000, up or down, that one and no other is flagged in 99.6 % of 8,952 cases.
/// </para>
/// <para>
/// One wrong weigh-in makes its neighbours look wrong too: of those beyond the threshold, the one without which the rest agrees best is flagged
/// and set aside, and the rest is asked again.
/// </para>
/// </remarks>
internal static class AgesCheck
{
    private const double AxisRatePerDay = 0.04;
    private const double LeastSlope = 2, UsualSlope = 4.3, HighestSlope = 6.5;
    private const double Threshold = 0.54, ThresholdPerReach = 0.25;

    public static IReadOnlyList<Suspicion> In(IEnumerable<WeighIn> oneSex)
    {
        List<Suspicion> found = [];
        List<Witness> witnesses = [.. oneSex.GroupBy(weighIn => weighIn.AgeDays).SelectMany(Witnesses)];
        while (Worst(witnesses) is var (worst, away))
        {
            found.AddRange(worst.WeighIns.Select(weighIn => Suspect(weighIn, worst.LogKilograms, away)));
            witnesses.Remove(worst);
        }

        return found;
    }

    private static Suspicion Suspect(WeighIn weighIn, double logKilograms, double away)
    {
        string text = "The " + Words.Whose(weighIn.Sex) + " at " + weighIn.Age + ", " + WeightText.Of(Math.Exp(logKilograms))
            + " on average, do not go with the other ages; expected about " + WeightText.Of(Math.Exp(logKilograms - away))
            + ConfusedUnits.Guess(away) + ".";
        return new Suspicion(Suspicion.UnlikeOtherAges, text, weighIn);
    }

    /// <summary>Birds weighed singly at one age speak with one voice, their middle bird; a mean or a group speaks for itself.</summary>
    private static IEnumerable<Witness> Witnesses(IGrouping<double, WeighIn> day)
    {
        double x = Math.Exp(-AxisRatePerDay * day.Key);
        WeighIn[] singly = [.. day.Where(weighIn => weighIn.Kind == WeighInKind.Birds)];
        if (singly.Length > 0)
        {
            yield return new Witness(x, Math.Log(Spread.Median(singly.SelectMany(weighIn => weighIn.Kilograms.ToArray()))), singly);
        }

        foreach (WeighIn weighIn in day.Where(weighIn => weighIn.Kind != WeighInKind.Birds))
        {
            yield return new Witness(x, Math.Log(weighIn.MeanKilograms), [weighIn]);
        }
    }

    private static (Witness Witness, double Away)? Worst(List<Witness> witnesses)
    {
        (double Away, double Limit)[] distances = Distances(witnesses);
        int[] beyond = [.. Enumerable.Range(0, witnesses.Count).Where(at => Math.Abs(distances[at].Away) > distances[at].Limit)];
        if (beyond.Length == 0)
        {
            return null;
        }

        // Of two that only contradict each other the later one is asked about: the younger birds are the easier to weigh.
        int worst = beyond.Length == 1 ? beyond[0] : beyond.Reverse().MinBy(at => Math.Round(Disagreement(witnesses, at), 9));
        return (witnesses[worst], distances[worst].Away);
    }

    /// <summary>The largest distance that is left without this witness.</summary>
    private static double Disagreement(List<Witness> witnesses, int without)
    {
        List<Witness> rest = [.. witnesses];
        rest.RemoveAt(without);
        return Distances(rest).Max(distance => Math.Abs(distance.Away));
    }

    /// <summary>How far each witness lies from what the other ages say, as a natural logarithm, and how far it may.</summary>
    private static (double Away, double Limit)[] Distances(List<Witness> witnesses)
    {
        Level[] levels =
            [.. witnesses.GroupBy(witness => witness.X).Select(age => new Level(age.Key, Spread.Median(age.Select(witness => witness.LogKilograms))))];
        (double Away, double Limit)[] distances = new (double, double)[witnesses.Count];
        int at = 0;
        for (int i = 0; i < distances.Length; i++)
        {
            at = levels[at].X.Equals(witnesses[i].X) ? at : at + 1;
            distances[i] = Distance(levels, at, witnesses[i].LogKilograms);
        }

        return distances;
    }

    private static (double Away, double Limit) Distance(Level[] levels, int at, double logKilograms)
    {
        if (levels.Length < 2)
        {
            return (0, Threshold);
        }

        double x = levels[at].X;
        if (at > 0 && at < levels.Length - 1)
        {
            Level before = levels[at - 1], after = levels[at + 1];
            double share = (x - before.X) / (after.X - before.X);
            return (logKilograms - before.LogKilograms - (share * (after.LogKilograms - before.LogKilograms)), Threshold);
        }

        int inward = at == 0 ? 1 : -1;
        Level near = levels[at + inward];
        double slope = UsualSlope;
        if (levels.Length > 2)
        {
            Level next = levels[at + (2 * inward)];
            slope = Math.Clamp(-(near.LogKilograms - next.LogKilograms) / (near.X - next.X), LeastSlope, HighestSlope);
        }

        double expected = near.LogKilograms - (slope * (x - near.X));
        return (logKilograms - expected, Threshold + (ThresholdPerReach * Math.Abs(x - near.X)));
    }

    /// <summary>What weigh-ins of one age say: the natural logarithm of their weight in kg, at x = exp(-0.04 age/d).</summary>
    private sealed record Witness(double X, double LogKilograms, WeighIn[] WeighIns);

    private readonly record struct Level(double X, double LogKilograms);
}
