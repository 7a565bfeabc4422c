using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>The rows of the shipped standards: weekly weights in g as printed, and where.</summary>
internal static class GrowthStandardTables
{
    private static readonly Citation Nrc = new(
        "NRC1984", "National Research Council 1984. Nutrient Requirements of Poultry, 8th revised edition. National Academy Press", HowKnown.Secondary, "Table 1, body weights of broilers, copy of the table");

    private static readonly Citation PoultryCrc = new(
        "PoultryCRC", "Poultry CRC, Poultry Hub, Nutrition requirements of meat chickens", HowKnown.ReadInSource, "Table 1, body weight of modern broilers; the page bears no year");

    private static readonly Citation Objectives = new(
        "Objectives2012", "Indian River meat chicken, performance objectives, 2012, weekly weights, as transcribed in an open collection", HowKnown.Secondary, "weights by sex, 0 to 10 weeks");

    private static readonly Caution Old = new(
        "standard-is-old", "Birds of 1984 were much lighter than today's fast-growing ones: far ahead of this table is no praise for them, and slower strains may still lie near it.");

    private static readonly Caution Rounded = new(
        "standard-rounded", "Rounded figures for modern meat chickens in general, without strain or year; the page does not say how they were found.");

    private static readonly Caution Misprint = new(
        "standard-misprint", "The weight at 35 d (2.25 kg, 4.96 lb) looks misprinted: gains of 0.84 kg (1.85 lb) and then 0.45 kg (0.99 lb) a week stand about it. Pass over the differences near that age.");

    public static IReadOnlyList<GrowthStandard> All { get; } =
    [
        Weekly("nrc-1984-male", "NRC 1984, broiler males", 1984, Sex.Male, Nrc, 1, [130, 320, 560, 860, 1250, 1690, 2100, 2520, 2925], Old),
        Weekly("nrc-1984-female", "NRC 1984, broiler females", 1984, Sex.Female, Nrc, 1, [120, 300, 515, 790, 1110, 1430, 1745, 2060, 2350], Old),
        Weekly("objectives-2012-male", "Breeder's objectives 2012, males", 2012, Sex.Male, Objectives, 0, [42, 184, 477, 943, 1550, 2246, 2971, 3679, 4338, 4929, 5440], GrowthStandard.Target),
        Weekly("objectives-2012-female", "Breeder's objectives 2012, females", 2012, Sex.Female, Objectives, 0, [42, 183, 463, 882, 1403, 1973, 2550, 3105, 3615, 4057, 4410], GrowthStandard.Target),
        Weekly("poultry-crc-male", "Poultry CRC, modern broiler males", null, Sex.Male, PoultryCrc, 0, [40, 170, 450, 865, 1410, 2250, 2700, 3350, 3900, 4400], Rounded, Misprint),
        Weekly("poultry-crc-female", "Poultry CRC, modern broiler females", null, Sex.Female, PoultryCrc, 0, [40, 165, 420, 780, 1250, 1750, 2300, 2800, 3300, 3700], Rounded),
    ];

    private static GrowthStandard Weekly(string id, string name, int? year, Sex sex, Citation source, int firstWeek, double[] grams, params Caution[] cautions) => new(
        id, year, sex, TabulatedCurve.Of(name, source, [.. grams.Select((weight, row) => (Age.FromWeeks(firstWeek + row), Mass.FromGrams(weight)))], cautions));
}
