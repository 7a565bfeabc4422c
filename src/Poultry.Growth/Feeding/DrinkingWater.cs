using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>How much the birds drink: by age in two sources, and by what they eat and how warm it is.</summary>
public static class DrinkingWater
{
    private const double PestiGrams = 5.28, PestiCool = 5.1, PestiWarm = 5.7;
    private const double Ratio = 1.77, RatioLow = 1.6, RatioHigh = 2.0;
    private const double WarmFromCelsius = 21;

    private static ReadOnlySpan<double> CrcLitresPerThousand => [65, 120, 180, 245, 290, 330, 355, 370];

    /// <summary>By age, a straight line (1985).</summary>
    public static ModelInfo ByAgeModel { get; } = new(
        "water-by-age",
        "Water by age, 1985",
        "W = 5.28 t",
        [new ModelSymbol("W", "water a bird", "g/d"), new ModelSymbol("t", "age", "d")],
        [new Citation("Pesti1985", "Pesti G.M., Amato S.V., Minear L.R. 1985. Poult. Sci. 64:803-808", HowKnown.ReadInSource, "abstract: 5.28 g a day of age, 5.1 in the cool and 5.7 in the warm season; 24 flocks, R2 > .99; 1.77 g water a g feed")],
        "Birds of 1985, which ate less than those of today: newer figures are up to half as high again (330 against 222 mL in week 6).",
        HowKnown.ReadInSource,
        [new ValidityRange("age", 0, 56, "d")]);

    /// <summary>By week of life at 20 °C, a table.</summary>
    public static ModelInfo ByWeekModel { get; } = new(
        "water-by-week",
        "Water by week at 20 °C",
        "W = table(n)",
        [new ModelSymbol("W", "water of 1,000 birds: 65, 120, 180, 245, 290, 330, 355, 370", "L/d"), new ModelSymbol("n", "week of life, 1 to 8", "-")],
        [new Citation("PoultryCrcWater", "Poultry CRC, water of meat chickens by week at 20 °C", HowKnown.Secondary, "30 to 50 % more above 32 °C than at 21 °C; 1.5 to 2 g water a g feed")],
        "A rounded table without its flocks; the higher of the two sources by age.",
        HowKnown.Secondary,
        [new ValidityRange("age", 0, 56, "d")]);

    /// <summary>By feed eaten and temperature.</summary>
    public static ModelInfo ByFeedModel { get; } = new(
        "water-by-feed",
        "Water by feed and temperature",
        "W = r F h(T); r = 1.77, 1.6 to 2.0 by source; h = 1 to 21 °C, above it 1 + 0.07 (T - 21), or 1.07^(T - 21), or 1 + 0.4 (T - 21)/11",
        [
            new ModelSymbol("W", "water a bird", "g/d"),
            new ModelSymbol("r", "water for feed", "-"),
            new ModelSymbol("F", "feed eaten", "g/d"),
            new ModelSymbol("h", "more in heat", "-"),
            new ModelSymbol("T", "temperature", "°C"),
        ],
        [
            .. ByAgeModel.Citations,
            .. ByWeekModel.Citations,
            new Citation("BarottPringle", "Barott H.G., Pringle E.M. 1949-50", HowKnown.ReadInSource, "abstract: 1.6 at 9 d, 1.75 at 18 to 32 d"),
            new Citation("Lacy2002", "Lacy M. 2002. Mississippi State University Extension, water-related factors in broiler production", HowKnown.Secondary, "1.8; 7 % more a degree, taken as above 21 °C"),
        ],
        "Ratios of 1.6 to 1.8 in moderate weather, 2.3 in a hot country. The rise a degree is 2.4 to 7 % by source: at 31 °C 1.36, 1.70 or 1.97 times. Nobody says what it is in birds of this age and strain.",
        HowKnown.Secondary,
        [new ValidityRange("temperature", 4, 32, "°C")]);

    /// <summary>Flow that a nipple drinker must give.</summary>
    public static ModelInfo NippleFlowModel { get; } = new(
        "nipple-flow",
        "Flow of a nipple drinker",
        "q = 7 n + 20",
        [new ModelSymbol("q", "flow of a nipple", "mL/min"), new ModelSymbol("n", "age", "wk")],
        [new Citation("Lott2003", "Lott B.D. et al. 2003", HowKnown.Secondary, "7 mL/min a week of age and 20; printed example 76 at 8 weeks")],
        "Advice for nipple lines; the maker's figure for the drinker at hand comes first.",
        HowKnown.Secondary,
        [new ValidityRange("age", 0, 56, "d")]);

    /// <summary>By age, as in 1985: 5.28 g for each day of age, 5.1 in the cool and 5.7 in the warm season.</summary>
    /// <param name="age">Any; beyond the ages measured a caution says so.</param>
    public static WaterAmount ByAge(Age age) => new(
        ByAgeModel, PestiGrams * age.Days, PestiCool * age.Days, PestiWarm * age.Days, Outside(ByAgeModel, age));

    /// <summary>By week of life at 20 °C; low and high are the table itself, which gives no range.</summary>
    /// <param name="age">Any; of hatch itself the first week.</param>
    /// <returns>Null after the eighth week, where the table ends.</returns>
    public static WaterAmount? ByWeek(Age age)
    {
        int week = Math.Max(1, (int)Math.Ceiling(age.Weeks));
        ReadOnlySpan<double> table = CrcLitresPerThousand;
        return week > table.Length ? null : new(ByWeekModel, table[week - 1], table[week - 1], table[week - 1], []);
    }

    /// <summary>By what they eat and how warm it is.</summary>
    /// <param name="feed">Feed a bird a day, 0 or more.</param>
    /// <param name="temperature">Of the air, -20 to 50 °C.</param>
    /// <param name="heat">Which source for heat; the middle one unless told.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public static WaterAmount ByFeed(MassFlow feed, Temperature temperature, WaterInHeat heat = WaterInHeat.SevenPercentOfBase)
    {
        double celsius = Temperatures.Sane(temperature, nameof(temperature));
        double grams = Require.NotNegative(feed.GramsPerDay, "g/d", nameof(feed)) * InHeat(celsius, heat);
        ValidityRange range = ByFeedModel.Ranges[0];
        return new(ByFeedModel, Ratio * grams, RatioLow * grams, RatioHigh * grams, range.Contains(celsius)
            ? []
            : [new("outside-temperature", string.Create(CultureInfo.InvariantCulture, $"Water by feed is known for {range}; {celsius:0.#} °C lies outside."))]);
    }

    /// <summary>Flow that a nipple must give at an age.</summary>
    /// <param name="age">Any: 20 ml/min at hatch and 7 ml/min more each week.</param>
    public static VolumeFlow NippleFlow(Age age) => VolumeFlow.FromMillilitersPerMinute((7 * age.Weeks) + 20);

    internal static double GramsPerDay(double feedGrams, double celsius, WaterInHeat heat) => Ratio * feedGrams * InHeat(celsius, heat);

    internal static double InHeat(double celsius, WaterInHeat heat)
    {
        double degrees = Math.Max(0, celsius - WarmFromCelsius);
        return heat switch
        {
            WaterInHeat.SevenPercentCompounded => Math.Pow(1.07, degrees),
            WaterInHeat.FortyPercentAt32 => 1 + (0.4 * degrees / 11),
            _ => 1 + (0.07 * degrees),
        };
    }

    private static IReadOnlyList<Caution> Outside(ModelInfo model, Age age) => model.Ranges[0].Contains(age.Days)
        ? []
        : [new("outside-age", "Water by age was measured at " + model.Ranges[0] + "; " + age + " lies outside.")];
}
