using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>How much lighter pullets are than cockerels of the same age, flock and feed: what ties the two curves of a mixed flock.</summary>
/// <remarks>
/// The mean of three tables, by straight line between whole weeks. From 9 weeks on the ratio of 9 weeks: no table goes further with all three
/// (the objectives of 2012 fall to 0.81 at 10 weeks).
/// </remarks>
public static class SexDimorphism
{
    /// <summary>
    /// Weeks 0 to 9. Objectives of 2012: 1.00 .995 .971 .935 .905 .878 .858 .844 .833 .823; NRC 1984 from week 1: .923 .938 .920 .919 .888 .846 .831 .817
    /// .803; Poultry CRC: 1.00 .971 .933 .902 .887 (week 5 looks misprinted, left out) .852 .836 .846 .841. Means of each week.
    /// </summary>
    private static ReadOnlySpan<double> ByWeek => [1.000, 0.963, 0.947, 0.919, 0.904, 0.883, 0.852, 0.837, 0.832, 0.822];

    /// <summary>What it is and where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "sex-dimorphism",
        "Weight of pullets as a share of the weight of cockerels",
        "W_f/W_m = table(t), mean of three tables, straight lines between weeks",
        [
            new ModelSymbol("W_f", "mean live weight of pullets", "kg"),
            new ModelSymbol("W_m", "mean live weight of cockerels", "kg"),
            new ModelSymbol("t", "age", "d"),
        ],
        [
            new Citation("Objectives2012", "A breeder's performance objectives, 2012, weekly weights, in an open collection; Gompertz fits to 70 d are own arithmetic", HowKnown.Secondary, "weights by sex, 0 to 9 weeks"),
            new Citation("NRC1984", "National Research Council 1984. Nutrient Requirements of Poultry", HowKnown.Secondary, "Table 1, 1 to 9 weeks, copy of the table"),
            new Citation("PoultryCRC", "Poultry CRC, weight and feed by sex", HowKnown.ReadInSource, "0 to 9 weeks; male week 5 left out as a misprint"),
        ],
        "The three tables agree within 0.02 of their mean from week 5 on, within 0.04 before.",
        HowKnown.Derived,
        [new ValidityRange("age", 0, 63, "d")]);

    /// <summary>Mean weight of pullets over that of cockerels at an age.</summary>
    /// <param name="age">Any; after the last week of the table, that of the last.</param>
    /// <returns>A pure number, 1 at hatch and 0.82 from 63 d on.</returns>
    public static double FemaleRatioAt(Age age) => FemaleRatio(age.Days);

    internal static double FemaleRatio(double days)
    {
        ReadOnlySpan<double> table = ByWeek;
        double weeks = days / 7;
        if (weeks >= table.Length - 1)
        {
            return table[^1];
        }

        int week = (int)weeks;
        return table[week] + ((weeks - week) * (table[week + 1] - table[week]));
    }
}
