using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.FeedingUnits;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Energy, feed, water, heat and figures: values worked out from printed equations to half the last digit. Two kinds have a wider tolerance: measured values beside a
/// printed regression through them (1.5 %, by which the regression misses them) and cumulative feed (0.3 %, by which interpolations between weekly rows part).
/// </summary>
internal static class FeedingChecks
{
    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. EnergyChecks.Maintenance(), .. EnergyChecks.Fasting(), .. EnergyChecks.Comparisons(), .. BodyChecks.All(), .. EnergyChecks.DefaultModel(),
        .. Figures(), .. DietAndWater(), .. HeatAndTime(), .. EnergyChecks.Lives(),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "Effective energy of a feed for birds, the weekly table of 1994 and its water table are known from memory only and are not in the library.",
        "No table of feed eaten by fast-growing birds outdoors was to be had; no cost of ranging in meat birds was ever measured.",
        "Breast-meat allometry, parameter tables of several growth models and a citable equation of shrink off feed were not obtained.",
    ];

    private static IEnumerable<OutsideCheck> Figures()
    {
        const string Shane = "Shane, trade press, worked example", Trade = "custom of the trade, worked by hand", Maertens = "Maertens 2016 (ILVO), as quoted";
        BatchFigures Batch(int placed, int sold, double days, double feed, double live, double dead = 0) => BatchFigures.Of(
            new FinishedBatch(placed, sold, Age.FromDays(days), Kilograms(feed), Kilograms(live)) { DeadWeight = Kilograms(dead), DietEnergy = Kilocalories(3200) });
        yield return new("F1", "production efficiency: 1.85 kg, 95 %, 44 d, 1.88 (printed 212)", Shane, HowKnown.Secondary, "-", 212.46, 0.005, () => Batch(1000, 950, 44, 1.88 * 950 * 1.85, 950 * 1.85).ProductionEfficiencyFactor);
        yield return new("F2", "broiler index: 61 g/d, 96 %, 1.62", Trade, HowKnown.CommonPractice, "-", 361.48, 0.005, () => Batch(100, 96, 40, 1.62 * 96 * 2.44, 96 * 2.44).BroilerIndex);
        double Corrected(WeightCorrection rule, double conversion, double kilograms) => rule.Correct(FeedConversion.Of(conversion, FeedConversionBasis.LiveWeight), Kilograms(kilograms)).Ratio;
        yield return new("F3", "1.46 at 1.7 kg to 1.5 kg", Trade, HowKnown.CommonPractice, "-", 1.38, 0.005, () => Corrected(WeightCorrection.To1500Grams, 1.46, 1.7));
        yield return new("F4a", "1.60 at 3.0 kg to 1.5 kg", Maertens, HowKnown.Secondary, "-", 1.00, 0.005, () => Corrected(WeightCorrection.To1500Grams, 1.60, 3.0));
        yield return new("F4b", "1.60 at 3.0 kg to 2.5 kg", Maertens, HowKnown.Secondary, "-", 1.50, 0.005, () => Corrected(WeightCorrection.To2500Grams, 1.60, 3.0));
        SpecificEnergy Caloric() => Batch(1000, 950, 44, 1.88 * 950 * 1.85, 950 * 1.85).CaloricConversion!.Value;
        yield return new("F5a", "caloric conversion: 1.88 x 3200", Shane, HowKnown.Secondary, "kcal/kg", 6016, 0.5, () => Calories.PerKilogram(Caloric()));
        yield return new("F5b", "the same", Shane, HowKnown.Secondary, "Mcal/lb", 2.729, 0.0005, () => Calories.PerKilogram(Caloric()) * 0.45359237 / 1000);
        yield return new("F8a", "4,000 kg feed, 2,400 kg sold", Trade, HowKnown.CommonPractice, "-", 1.667, 0.0005, () => Batch(1000, 960, 49, 4000, 2400, 32).ByLiveWeight.Ratio);
        yield return new("F8b", "and 32 kg dead", Trade, HowKnown.CommonPractice, "-", 1.645, 0.0005, () => Batch(1000, 960, 49, 4000, 2400, 32).MortalityAdjusted!.Ratio);
    }

    private static IEnumerable<OutsideCheck> DietAndWater()
    {
        const string Crc = "Poultry CRC, weight and feed by sex", Pesti = "Pesti et al. 1985, abstract", Lacy = "Mississippi State Extension, Lacy 2002";
        foreach ((double diet, double grams) in new[] { (2700, 166.7), (3300, 136.4) })
        {
            yield return new(FormattableString.Invariant($"D1-{diet}"), FormattableString.Invariant($"feed for 450 kcal/d at {diet} kcal/kg"), "need over energy of the feed", HowKnown.Derived, "g/d", grams, 0.05,
                () => new EnergyNeed(EnergyModel.HeatProduction, new EnergyParts(450, 0, 0), []).FeedPerDay(Kilocalories(diet)).Value.Grams);
        }

        foreach ((string bird, int week, double feed, double weight, double expected) in new[] { ("male", 6, 4500, 2700, 1.667), ("female", 6, 4020, 2300, 1.748), ("male", 9, 8800, 4400, 2.000), ("female", 9, 8200, 3700, 2.216) })
        {
            yield return new(FormattableString.Invariant($"D3-{bird}-{week}"), FormattableString.Invariant($"conversion of {bird}s, week {week}"), Crc, HowKnown.Derived, "-", expected, 0.0005,
                () => FeedConversion.Of(Mass.FromGrams(feed), Mass.FromGrams(weight), FeedConversionBasis.LiveWeight).Ratio);
        }

        yield return new("W1-28", "water at 28 d", Pesti, HowKnown.Derived, "g/d", 147.8, 0.05, () => DrinkingWater.ByAge(Age.FromDays(28)).PerBird.GramsPerDay);
        yield return new("W1-42", "water at 42 d", Pesti, HowKnown.Derived, "g/d", 221.8, 0.05, () => DrinkingWater.ByAge(Age.FromDays(42)).PerBird.GramsPerDay);
        yield return new("W2", "flow of a nipple at 8 weeks", "Lott et al. 2003, printed example", HowKnown.Secondary, "mL/min", 76, 0.5, () => DrinkingWater.NippleFlow(Age.FromWeeks(8)).MillilitersPerMinute);
        yield return new("W5a", "7 % a degree over 10 °C, compounded", Lacy, HowKnown.Secondary, "-", 1.967, 0.0005, () => DrinkingWater.InHeat(31, WaterInHeat.SevenPercentCompounded));
        yield return new("W5b", "the same, of the amount at 21 °C", Lacy, HowKnown.Secondary, "-", 1.70, 0.005, () => DrinkingWater.InHeat(31, WaterInHeat.SevenPercentOfBase));
        yield return new("P1a", "pasture over 55 d", "Rivera-Ferre et al. 2007, abstract", HowKnown.Derived, "g dry matter", 589, 0.5, () => PastureIntake.RiveraFerre2007.DryMatterOver(Duration.FromDays(55)).Grams);
        yield return new("P1b", "its share beside 130 g feed at 88 %", "Rivera-Ferre et al. 2007, abstract", HowKnown.Derived, "% of dry matter", 8.6, 0.05, () => PastureIntake.RiveraFerre2007.DryMatterShare(GramsPerDay(130), Probability.FromPercent(88)).Percent);
        yield return new("P1c", "its share of energy", "Rivera-Ferre et al. 2007, abstract", HowKnown.ReadInSource, "%", 3, 0.5, () => PastureIntake.RiveraFerre2007.EnergyShare.Percent);
    }

    private static IEnumerable<OutsideCheck> HeatAndTime()
    {
        const string Missouri = "University of Missouri, pastured poultry", Tao = "Tao and Xin 2003, abstract", Purswell = "Purswell et al. 2012, abstract, Twb from humidity";
        double[] brooding = [35.0, 32.2, 29.4, 26.7, 23.9, 21.1];
        for (int i = 0; i < brooding.Length; i++)
        {
            (int week, double celsius) = (i + 1, brooding[i]);
            yield return new(FormattableString.Invariant($"T1-{week}"), FormattableString.Invariant($"brooding, week {week}: 95 °F less 5 a week"), Missouri, HowKnown.Secondary, "°C", celsius, 0.05, () => ComfortSchedule.PastureBrooding.At(Age.FromWeeks(week - 0.5)).DegreesCelsius);
        }

        yield return new("T3a", "gain at a body temperature of 42.13 °C", "Br. Poult. Sci. 1983, 24:489, abstract", HowKnown.ReadInSource, "%/d", 3.11, 0.005, () => BodyTemperatureGrowth.At(Celsius(42.13)).PercentPerDay);
        yield return new("T3b", "at 42.86 °C", "Br. Poult. Sci. 1983, 24:489, abstract", HowKnown.ReadInSource, "%/d", 2.36, 0.005, () => BodyTemperatureGrowth.At(Celsius(42.86)).PercentPerDay);
        foreach ((double speed, double expected) in new[] { (0.2, 36.78), (0.7, 34.20), (1.2, 33.15) })
        {
            yield return new(FormattableString.Invariant($"T4-{speed}"), FormattableString.Invariant($"THVI, 35 and 25 °C, {speed} m/s"), Tao, HowKnown.Derived, "°C", expected, 0.005, () => HeatIndex.Thvi(Celsius(35), Celsius(25), Speed.FromMetersPerSecond(speed))!.Value.DegreesCelsius);
        }

        foreach ((double air, double humidity, double wet, double index) in new[] { (21, 65, 16.56, 20.33), (27, 80, 24.25, 26.59) })
        {
            string at = FormattableString.Invariant($" at {air} °C, {humidity} %");
            Temperature Wet() => WetBulb.At(Celsius(air), Probability.FromPercent(humidity));
            yield return new(FormattableString.Invariant($"T5-{air}a"), "wet bulb" + at, Purswell, HowKnown.Derived, "°C", wet, 0.005, () => Wet().DegreesCelsius);
            yield return new(FormattableString.Invariant($"T5-{air}b"), "THI" + at, Purswell, HowKnown.Derived, "°C", index, 0.005, () => HeatIndex.Thi(Celsius(air), Wet()).DegreesCelsius);
        }

        yield return new("S2", "2.500 kg, 12 h at 0.30 %/h", "rate from a paper not identified", HowKnown.Secondary, "kg", 2.410, 0.0005, () => WithdrawalShrink.Of(Kilograms(2.5), Duration.FromHours(12), Duration.Zero).LiveWeight.Kilograms);
    }
}
