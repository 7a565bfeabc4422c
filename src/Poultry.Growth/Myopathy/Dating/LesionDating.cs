using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// When the harm was done that the lesions show: a chance over the days before killing, each lesion by itself, so that several disturbances may have had a part. Beyond 14 d
/// there is one open class. It never names a single day.
/// </summary>
public sealed class LesionDating
{
    private readonly double[] days;

    private LesionDating(LesionCounts found, DateOnly killed, DatingPrior prior, double[] days, double older, int unexplained, IReadOnlyList<RankedDisturbance> events, IReadOnlyList<Caution> cautions)
    {
        (Found, Prior, this.days, Unexplained, Events, Cautions) = (found, prior, days, unexplained, events, cautions);
        ByDay = IsAnswered ? [.. days.Select((share, i) => new DatedDay(i + 1, killed.AddDays(-i - 1), Share(share)))] : [];
        OlderThan14Days = Share(older);
    }

    /// <summary>The lesions.</summary>
    public LesionCounts Found { get; }

    /// <summary>What was taken to be likely beforehand.</summary>
    public DatingPrior Prior { get; }

    /// <summary>Days 1 to 14 before killing; empty where no lesion can be explained.</summary>
    public IReadOnlyList<DatedDay> ByDay { get; }

    /// <summary>The chance of more than 14 d before killing: one open class.</summary>
    public Probability OlderThan14Days { get; }

    /// <summary>Logged disturbances, the likeliest first; empty without a log.</summary>
    public IReadOnlyList<RankedDisturbance> Events { get; }

    /// <summary>Lesions of a look that no day, or no logged disturbance, can have made by the coarse rule; they count nowhere.</summary>
    public int Unexplained { get; }

    /// <summary>Whether any lesion can be explained.</summary>
    public bool IsAnswered => Unexplained < Found.Total;

    /// <summary>The coarse rule, applied: all that the look itself says.</summary>
    public string CoarseRule => string.Create(
        CultureInfo.InvariantCulture,
        $"{Found.Recent} of {Found.Total} red or pink: from the last four days or so (three to five). {Found.Old} green or grey: five days old or more. No single day can be named.");

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Days before killing between which a lesion was made with a chance; open above where that reaches beyond 14 d. Null where no lesion can be explained.</summary>
    /// <param name="level">The chance, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval<int>? DaysBefore(double level)
    {
        double tail = (1 - Require.Share(level)) / 2;
        return IsAnswered ? Interval<int>.Of(Day(tail), Day(1 - tail), level) : null;
    }

    /// <summary>Dates lesions by their look alone.</summary>
    /// <param name="found">By stage.</param>
    /// <param name="killed">The day the birds were killed.</param>
    /// <param name="hatched">The day they hatched: lesions are not older than the first susceptible age.</param>
    /// <param name="sex">Of the birds; cockerels are susceptible ten days before pullets.</param>
    /// <param name="bySusceptibility">Whether days count by how susceptible the birds were; otherwise they count alike.</param>
    /// <exception cref="ArgumentException">Killed before hatch.</exception>
    public static LesionDating Of(LesionCounts found, DateOnly killed, DateOnly hatched, Sex sex, bool bySusceptibility = false)
    {
        ArgumentNullException.ThrowIfNull(found);
        double killDays = KillDays(killed, hatched);
        DayPrior prior = new(killDays, sex, bySusceptibility);
        double[] shares = new double[(int)LesionStages.OldestDays + 1];
        int unexplained = 0;
        foreach (LesionStage stage in Enum.GetValues<LesionStage>())
        {
            unexplained += Spread(shares, found[stage], prior.Of(stage));
        }

        Normalise(shares, found.Total - unexplained);
        return new(
            found,
            killed,
            bySusceptibility ? DatingPrior.Susceptibility : DatingPrior.Flat,
            shares[..^1],
            shares[^1],
            unexplained,
            [],
            MyopathyCautions.OfDating(found, unexplained, null));
    }

    /// <summary>Dates lesions by their look among logged disturbances, each as likely as the others beforehand.</summary>
    /// <param name="found">By stage.</param>
    /// <param name="killed">The day the birds were killed.</param>
    /// <param name="hatched">The day they hatched.</param>
    /// <param name="log">The disturbances by age; at least one, and none after killing.</param>
    /// <exception cref="ArgumentException">Killed before hatch, an empty log, or a disturbance after killing.</exception>
    public static LesionDating Among(LesionCounts found, DateOnly killed, DateOnly hatched, DisturbanceLog log)
    {
        ArgumentNullException.ThrowIfNull(found);
        Require.Some(log);
        double killDays = KillDays(killed, hatched);
        int[] before = [.. log.Select(disturbance => (int)Math.Round(killDays - disturbance.Age.Days))];
        if (before.Min() < 0)
        {
            throw new ArgumentException("A disturbance lies after killing; expected a day up to that.", nameof(log));
        }

        double[] expected = new double[log.Count];
        int unexplained = 0;
        foreach (LesionStage stage in Enum.GetValues<LesionStage>())
        {
            unexplained += Spread(expected, found[stage], [.. before.Select(days => LesionStages.ChanceAt(stage, days))]);
        }

        int explained = found.Total - unexplained;
        double[] shares = new double[(int)LesionStages.OldestDays + 1];
        for (int i = 0; i < expected.Length; i++)
        {
            int day = Math.Min(before[i], shares.Length);
            shares[Math.Max(day - 1, 0)] += expected[i];
        }

        Normalise(shares, explained);
        RankedDisturbance[] ranked =
        [
            .. log.Select((disturbance, i) => new RankedDisturbance(
                disturbance,
                killed.AddDays(-before[i]),
                before[i],
                Share(explained == 0 ? 0 : expected[i] / explained),
                expected[i],
                Enum.GetValues<LesionStage>().All(stage => found[stage] == 0 || LesionStages.ChanceAt(stage, before[i]) > 0)))
                .OrderByDescending(row => row.ExpectedBirds).ThenBy(row => row.DaysBefore),
        ];
        return new(found, killed, DatingPrior.Log, shares[..^1], shares[^1], unexplained, ranked, MyopathyCautions.OfDating(found, unexplained, ranked));
    }

    /// <summary>The coarse rule, applied: no single day.</summary>
    public override string ToString() => CoarseRule;

    private static double KillDays(DateOnly killed, DateOnly hatched) => killed >= hatched
        ? killed.DayNumber - hatched.DayNumber
        : throw new ArgumentException("The birds were killed before they hatched.", nameof(killed));

    /// <summary>Adds lesions of one look to classes by the weight of each; returns how many no class can explain.</summary>
    private static int Spread(double[] to, int lesions, double[] weights)
    {
        double total = weights.Sum();
        for (int i = 0; total > 0 && i < to.Length; i++)
        {
            to[i] += lesions * weights[i] / total;
        }

        return total > 0 ? 0 : lesions;
    }

    private static void Normalise(double[] shares, int explained)
    {
        for (int i = 0; explained > 0 && i < shares.Length; i++)
        {
            shares[i] /= explained;
        }
    }

    private static Probability Share(double fraction) => Probability.FromFraction(Math.Clamp(fraction, 0, 1));

    /// <summary>The day by which a share is reached; null where that lies in the open class.</summary>
    private int? Day(double share)
    {
        double sum = 0;
        for (int i = 0; i < days.Length; i++)
        {
            sum += days[i];
            if (sum >= share)
            {
                return i + 1;
            }
        }

        return null;
    }
}
