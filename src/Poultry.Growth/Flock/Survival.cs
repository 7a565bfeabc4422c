using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Flock;

/// <summary>How a flock's birds die off: a rate for every week of age, and a multiplier of all rates that differs from batch to batch.</summary>
/// <remarks>
/// Alive at age t in a batch with multiplier z: exp(-z H(t)), H the rates summed up. The multiplier is log-normal with median 1: in half of the batches
/// more birds die than the rates say, in half fewer. Birds of one batch die independently, given its multiplier. Rare large losses (a predator, a
/// smothering) are not in it.
/// </remarks>
public sealed class Survival
{
    /// <summary>Multipliers are summed over from -6 to 6 standard deviations, so finely that the sum is the integral to ten digits.</summary>
    private const int Nodes = 121;

    private const double NodeStep = 0.1;

    private readonly double[] hazardPerDay;

    private Survival(double[] hazardPerDay, double logSpread, ModelInfo model) => (this.hazardPerDay, LogSpread, Model) = (hazardPerDay, logSpread, model);

    /// <summary>No bird ever dies: what a safe plan counts on.</summary>
    public static Survival WithoutLoss { get; } = new([0], 0, SurvivalModels.Own);

    /// <summary>
    /// What to count on outdoors before own records exist: 1.5 % in the first week, 1.2 % in each of weeks 2 to 7, 2 % a week after; in nine batches of
    /// ten about 5 to 20 % to eight weeks. An assumption.
    /// </summary>
    public static Survival FastGrowingOutdoor { get; } = new(Hazards([0.015, 0.012, 0.012, 0.012, 0.012, 0.012, 0.012, 0.02]), 0.45, SurvivalModels.Outdoor);

    /// <summary>Standard deviation of the logarithm of a batch's multiplier: 0 where all batches are alike, 0.45 where one in twenty loses twice as much.</summary>
    public double LogSpread { get; }

    /// <summary>Where the rates come from.</summary>
    public ModelInfo Model { get; }

    /// <summary>The farm's own rates.</summary>
    /// <param name="lossByWeek">For each week of age from hatch on, the share of birds alive at its start that die in it; the last holds for all later weeks.</param>
    /// <param name="logSpread">Standard deviation of the logarithm of a batch's multiplier, 0 to 2.</param>
    /// <exception cref="ArgumentException">No week is given, or all birds die in one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spread is out of range.</exception>
    public static Survival ByWeek(IReadOnlyList<Probability> lossByWeek, double logSpread)
    {
        Require.Some(lossByWeek);
        double[] shares = [.. lossByWeek.Select(loss => loss.Fraction)];
        return shares.Contains(1)
            ? throw new ArgumentException("All birds die in one week; expected shares below 100 %.", nameof(lossByWeek))
            : new(Hazards(shares), Require.Between(logSpread, 0, 2, ""), SurvivalModels.Own);
    }

    /// <summary>The share of birds alive at one age that are alive at a later one: the mean over batches.</summary>
    /// <param name="from">The earlier age.</param>
    /// <param name="to">The later age; not before it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The later age is the earlier.</exception>
    public Probability ShareAlive(Age from, Age to)
    {
        double hazard = Hazard(from, to);
        (double sum, double weights) = (0, 0);
        for (int i = 0; i < Nodes; i++)
        {
            (double weight, double multiplier) = Node(i);
            sum += weight * Math.Exp(-multiplier * hazard);
            weights += weight;
        }

        return Probability.FromFraction(Math.Min(1, sum / weights));
    }

    /// <summary>The share of birds alive in one batch, whose multiplier lies so many standard deviations from the usual.</summary>
    /// <param name="from">The earlier age.</param>
    /// <param name="to">The later age.</param>
    /// <param name="standardDeviations">0 for the usual batch, above 0 for a worse one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The later age is the earlier.</exception>
    public Probability ShareAliveInBatch(Age from, Age to, double standardDeviations) =>
        Probability.FromFraction(Math.Exp(-Math.Exp(LogSpread * Require.Finite(standardDeviations, "")) * Hazard(from, to)));

    /// <summary>The chance that at most so many birds are alive.</summary>
    /// <param name="birds">0 or more.</param>
    /// <param name="started">How many there were at the earlier age, 0 or more.</param>
    /// <param name="from">The earlier age.</param>
    /// <param name="to">The later age.</param>
    /// <param name="alive">The share of those that started alive: below 1 for chicks of which some are dead on arrival; 1 where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or the later age is the earlier.</exception>
    public Probability ChanceAtMost(int birds, int started, Age from, Age to, Probability? alive = null)
    {
        Require.AtLeast(birds, 0);
        Require.AtLeast(started, 0);
        double first = alive?.Fraction ?? 1;
        double hazard = Hazard(from, to);
        (double sum, double weights) = (0, 0);
        for (int i = 0; i < Nodes; i++)
        {
            (double weight, double multiplier) = Node(i);
            sum += weight * Distributions.BinomialAtMost(birds, started, first * Math.Exp(-multiplier * hazard));
            weights += weight;
        }

        return Probability.FromFraction(Math.Min(1, sum / weights));
    }

    /// <summary>Source and what it comes to, as in <c>Survival of fast-growing birds outdoors: 88.9 % alive at 8 weeks</c>, in every culture.</summary>
    public override string ToString() => Model.Name + ": " + ShareAlive(Age.Hatch, Age.FromWeeks(8)) + " alive at 8 weeks";

    /// <summary>The same weeks with other rates and another spread between batches: what a farm's own batches make of them.</summary>
    internal Survival Scaled(double factor, double logSpread, ModelInfo model) => new(Array.ConvertAll(hazardPerDay, rate => rate * factor), logSpread, model);

    private static double[] Hazards(double[] lossByWeek) => Array.ConvertAll(lossByWeek, loss => -Math.Log(1 - loss) / 7);

    private (double Weight, double Multiplier) Node(int i)
    {
        double z = (i - (Nodes / 2)) * NodeStep;
        return (Math.Exp(-z * z / 2), Math.Exp(LogSpread * z));
    }

    /// <summary>The rates of the usual batch summed up between two ages.</summary>
    private double Hazard(Age from, Age to) => SinceHatch(Require.Between(to.Days, from.Days, double.MaxValue, "d", nameof(to))) - SinceHatch(from.Days);

    private double SinceHatch(double days)
    {
        double sum = 0;
        for (int week = 0; week < hazardPerDay.Length; week++)
        {
            double end = week == hazardPerDay.Length - 1 ? days : Math.Min(days, 7 * (week + 1));
            sum += hazardPerDay[week] * Math.Max(0, end - (7 * week));
        }

        return sum;
    }
}
