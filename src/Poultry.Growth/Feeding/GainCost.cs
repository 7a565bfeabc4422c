using System.Collections.Immutable;

namespace Poultry.Growth.Feeding;

/// <summary>Energy a gram of live gain by sex and age, kcal/g (Longo et al. 2006), and three ways to read the table.</summary>
internal sealed class GainCost
{
    /// <summary>1 to 21, 22 to 42, 43 to 56 d.</summary>
    private static readonly ImmutableArray<double> Males = [3.72, 4.21, 4.51], Females = [3.98, 3.93, 7.04];

    /// <summary>The last female value replaced by 3.93 with the step of the males: 3.93 x 4.51 / 4.21.</summary>
    private static readonly ImmutableArray<double> FemalesEven = [3.98, 3.93, 3.93 * 4.51 / 4.21];

    /// <summary>Middle ages of the classes, d.</summary>
    private static readonly ImmutableArray<double> Middles = [11, 32, 49.5];

    private readonly ImmutableArray<double> females;
    private readonly bool steps;

    private GainCost(string id, string name, ImmutableArray<double> females, bool steps, double cumulativeError) =>
        (Id, Name, this.females, this.steps, CumulativeError) = (id, name, females, steps, cumulativeError);

    public static GainCost Smoothed { get; } = new("energy-longo-2006", "straight lines between the middle ages, last female value 4.21", FemalesEven, steps: false, 0.08);

    public static GainCost SmoothedAsPrinted { get; } = new("energy-longo-2006-odd-female", "straight lines between the middle ages, last female value 7.04 as printed", Females, steps: false, 0.12);

    public static GainCost Steps { get; } = new("energy-longo-2006-steps", "steps as printed", Females, steps: true, 0.1);

    public string Id { get; }

    public string Name { get; }

    /// <summary>Standard error of cumulative feed, as a fraction.</summary>
    public double CumulativeError { get; }

    /// <summary>Cost at an age; flat before the first class and after the last.</summary>
    public double KilocaloriesPerGram(bool male, double ageDays)
    {
        ImmutableArray<double> costs = male ? Males : females;
        if (steps)
        {
            // Taken as whole days of life: the 22nd begins at 21 d. By ages reached it would be a day later, which is worth half a percent of feed.
            return costs[ageDays < 21 ? 0 : ageDays < 42 ? 1 : 2];
        }

        if (ageDays <= Middles[0] || ageDays >= Middles[^1])
        {
            return ageDays <= Middles[0] ? costs[0] : costs[^1];
        }

        int after = ageDays <= Middles[1] ? 1 : 2;
        double share = (ageDays - Middles[after - 1]) / (Middles[after] - Middles[after - 1]);
        return costs[after - 1] + (share * (costs[after] - costs[after - 1]));
    }
}
