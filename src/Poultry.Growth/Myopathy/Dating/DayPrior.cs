using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>How likely each time before killing is beforehand, and after one lesion of a look was found: integrals over days, exact since everything is straight between its edges.</summary>
internal sealed class DayPrior(double killDays, Sex sex, bool bySusceptibility)
{
    /// <summary>The weight of days 1 to 14 and of everything older, for one look.</summary>
    public double[] Of(LesionStage stage)
    {
        double[] weights = new double[(int)LesionStages.OldestDays + 1];
        double[] edges = Edges();
        for (int i = 1; i < edges.Length; i++)
        {
            double middle = (edges[i - 1] + edges[i]) / 2;
            int day = middle > LesionStages.OldestDays ? weights.Length : (int)Math.Round(middle, MidpointRounding.AwayFromZero);
            weights[day - 1] += (edges[i] - edges[i - 1]) * Height(middle) * LesionStages.ChanceAt(stage, middle);
        }

        return weights;
    }

    /// <summary>Every time at which something bends, in order.</summary>
    private double[] Edges()
    {
        List<double> edges = [.. LesionStages.EdgesDays, killDays - AgeSusceptibility.Full.Days];
        for (int day = 1; day <= LesionStages.OldestDays; day++)
        {
            edges.Add(day - 0.5);
        }

        foreach (Sex one in (Sex[])[Sex.Male, Sex.Female])
        {
            edges.Add(killDays - First(one));
        }

        return [.. edges.Where(edge => edge >= LesionStages.EdgesDays[0]).Order()];
    }

    private double First(Sex one) => (bySusceptibility ? AgeSusceptibility.Published.FirstAge(one) : AgeSusceptibility.FirstLesions(one)).Days;

    private double Height(double daysBefore)
    {
        double days = killDays - daysBefore;
        return bySusceptibility ? AgeSusceptibility.Published.ShareAt(days, sex, 0)
            : sex == Sex.Mixed ? (After(days, Sex.Male) + After(days, Sex.Female)) / 2
            : After(days, sex);
    }

    private double After(double days, Sex one) => days >= First(one) ? 1 : 0;
}
