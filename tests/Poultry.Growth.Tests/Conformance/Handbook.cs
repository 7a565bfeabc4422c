using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Printed tables of weight by age.</summary>
/// <remarks>
/// Sources: NRC 1984, Nutrient Requirements of Poultry, Table 1; Poultry CRC, Table 1 (the male figure of week 5 looks misprinted); a breeder's performance
/// objectives of 2012; Havenstein et al. 1994 and 2003, Poultry Science 73:1785 and 82:1500; Korean Journal of Poultry Science 48(4):277, Table 2, gains
/// summed up from 40 g at hatch (slow strains).
/// </remarks>
internal static class Handbook
{
    private static readonly double[] Weeks1To9 = [7, 14, 21, 28, 35, 42, 49, 56, 63];
    private static readonly double[] Weeks0To9 = [0, .. Weeks1To9];
    private static readonly double[] Weeks0To10 = [.. Weeks0To9, 70];
    private static readonly double[] Havenstein = [21, 42, 56, 70, 84];
    private static readonly double[] Fortnights = [0, 14, 28, 42, 56, 70, 84];

    /// <summary>Ages in days and weights in g, by name.</summary>
    public static IReadOnlyDictionary<string, (double[] Days, double[] Grams)> Tables { get; } = new Dictionary<string, (double[] Days, double[] Grams)>
    {
        ["NRC 1984 male"] = (Weeks1To9, [130, 320, 560, 860, 1250, 1690, 2100, 2520, 2925]),
        ["NRC 1984 female"] = (Weeks1To9, [120, 300, 515, 790, 1110, 1430, 1745, 2060, 2350]),
        ["Poultry CRC male"] = (Weeks0To9, [40, 170, 450, 865, 1410, 2250, 2700, 3350, 3900, 4400]),
        ["Poultry CRC female"] = (Weeks0To9, [40, 165, 420, 780, 1250, 1750, 2300, 2800, 3300, 3700]),
        ["objectives 2012 male"] = (Weeks0To10, [42, 184, 477, 943, 1550, 2246, 2971, 3679, 4338, 4929, 5440]),
        ["objectives 2012 female"] = (Weeks0To10, [42, 183, 463, 882, 1403, 1973, 2550, 3105, 3615, 4057, 4410]),
        ["Havenstein 2003, 1957 strain"] = (Havenstein, [176, 539, 809, 1117, 1430]),
        ["Havenstein 2003, 2001 strain"] = (Havenstein, [743, 2672, 3946, 4808, 5520]),
        ["Havenstein 1994, 1957 strain"] = (Havenstein, [190, 508, 790, 1087, 1400]),
        ["Havenstein 1994, 1991 strain"] = (Havenstein, [700, 2132, 3108, 3812, 4498]),
        ["slow G"] = (Fortnights, [40, 228.5, 611.8, 1035.9, 1492.1, 2068, 2445.2]),
        ["slow V"] = (Fortnights, [40, 234, 622.6, 1159, 1594.9, 2202.3, 2590.3]),
        ["slow S"] = (Fortnights, [40, 180.4, 503, 758.7, 1088.5, 1418.1, 1704.9]),
        ["slow W"] = (Fortnights, [40, 180.6, 566.8, 854.6, 1379.4, 1655, 1951.5]),
    };

    /// <summary>The rows of a table from one age to another as weigh-ins of so many birds.</summary>
    public static WeighInSeries Series(string table, int birds, double fromDays = 0, double toDays = double.MaxValue) => WeighInSeries.Of(
        Tables[table].Days.Zip(Tables[table].Grams)
            .Where(row => row.First >= fromDays && row.First <= toDays)
            .Select(row => WeighIn.Mean(Age.FromDays(row.First), Mass.FromGrams(row.Second), birds)));

    /// <summary>A copy of the NRC's table and a transcription of the objectives were read, of the others the source.</summary>
    public static HowKnown HowKnown(string table) => table.StartsWith("NRC", StringComparison.Ordinal) || table.StartsWith("objectives", StringComparison.Ordinal)
        ? Evidence.HowKnown.Secondary
        : Evidence.HowKnown.ReadInSource;

    /// <summary>The printed weight at an age of the table.</summary>
    public static double GramsAt(string table, double days) => Tables[table].Grams[Array.IndexOf(Tables[table].Days, days)];
}
