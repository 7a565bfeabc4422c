using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Conformance.FeedTables;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Energy, feed, water, heat and figures: values worked out from printed equations to half the last digit. Two kinds have a wider tolerance: measured values beside a
/// printed regression through them (1.5 %, by which the regression misses them) and cumulative feed (0.3 %, by which interpolations between weekly rows part).
/// </summary>
internal static class FeedingChecks
{
    private const string Sakomura = "Sakomura et al. 2005, Poult. Sci. 84:1363, abstract";
    private const string Longo = "Longo et al. 2006, Rev. Bras. Zootec. 35, abstract";
    private const string Critical = "energy by weight and critical temperature, Cobb 500 males, abstract";
    private const string Composition = "composition by sex worked out by another program (bisection)";
    private const string Heat = "recipe of the default model worked out by another program";

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. Maintenance(), .. Fasting(), .. Comparisons(), .. Body(), .. DefaultModel(), .. Figures(), .. DietAndWater(), .. HeatAndTime(), .. Lives(),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "Effective energy of a feed for birds, the weekly table of 1994 and its water table are known from memory only and are not in the library.",
        "No table of feed eaten by fast-growing birds outdoors was to be had; no cost of ranging in meat birds was ever measured.",
        "Breast-meat allometry, parameter tables of several growth models and a citable equation of shrink off feed were not obtained.",
    ];

    private static IEnumerable<OutsideCheck> Maintenance()
    {
        (double Celsius, double Sakomura, double Measured, double Longo, double LongoMeasured)[] rows =
            [(13, 157.15, 157.8, 158.81, 159.36), (23, 112.63, 112.1, 116.25, 116.17), (32, 125.66, 127.2, 127.12, 128.66)];
        const string Unit = "kcal/kg^0.75/d";
        foreach (var row in rows)
        {
            string at = FormattableString.Invariant($"maintenance of 1 kg at {row.Celsius} °C");
            string degrees = FormattableString.Invariant($"{row.Celsius}");
            yield return new("E1-" + degrees, at, Sakomura, HowKnown.Derived, Unit, row.Sakomura, 0.005, () => AtOneKilogram(MaintenanceEnergy.Sakomura2005, row.Celsius));
            yield return new("E1-" + degrees + "m", at + ", measured", Sakomura, HowKnown.ReadInSource, Unit, row.Measured, 0.015 * row.Measured, () => AtOneKilogram(MaintenanceEnergy.Sakomura2005, row.Celsius));
            yield return new("E4-" + degrees, at, Longo, HowKnown.Derived, Unit, row.Longo, 0.005, () => AtOneKilogram(MaintenanceEnergy.Longo2006, row.Celsius));
            yield return new("E4-" + degrees + "m", at + ", measured", Longo, HowKnown.ReadInSource, Unit, row.LongoMeasured, 0.015 * row.LongoMeasured, () => AtOneKilogram(MaintenanceEnergy.Longo2006, row.Celsius));
        }

        yield return new("E2a", "temperature of least need", Sakomura, HowKnown.Derived, "°C", 25.17, 0.005, () => MaintenanceEnergy.Sakomura2005.LeastAt!.Value.DegreesCelsius);
        yield return new("E2b", "least need of 1 kg", Sakomura, HowKnown.Derived, Unit, 111.17, 0.005, () => AtOneKilogram(MaintenanceEnergy.Sakomura2005, 25.17));
        yield return new("E5a", "temperature of least need", Longo, HowKnown.Derived, "°C", 25.40, 0.005, () => MaintenanceEnergy.Longo2006.LeastAt!.Value.DegreesCelsius);
        yield return new("E5b", "least need of 1 kg", Longo, HowKnown.Derived, Unit, 114.59, 0.005, () => AtOneKilogram(MaintenanceEnergy.Longo2006, 25.40));
        foreach ((double celsius, double maintenance, double total) in new[] { (23, 189.43, 578.29), (30, 199.16, 588.02) })
        {
            string at = FormattableString.Invariant($"2 kg, 18 g protein, 12 g fat a day at {celsius} °C");
            string id = FormattableString.Invariant($"E3-{celsius}");
            double Kept() => PerDay(MaintenanceEnergy.Sakomura2005.At(Kilograms(2), Celsius(celsius)));
            yield return new(id + "a", at + ": maintenance", Sakomura, HowKnown.Derived, "kcal/d", maintenance, 0.005, Kept);
            yield return new(id + "b", at + ": all", Sakomura, HowKnown.Derived, "kcal/d", total, 0.005, () => Kept() + FactorialEnergy.Deposition(18, 12));
        }

        foreach ((double celsius, double expected) in new[] { (5, 178.4), (4, 181.0), (35, 138.9), (36, 143.3) })
        {
            yield return new(
                FormattableString.Invariant($"X1-{celsius}"), FormattableString.Invariant($"extension to {celsius} °C"), Sakomura + ", slopes of " + Critical, HowKnown.Derived, Unit, expected, 0.05,
                () => AtOneKilogram(MaintenanceEnergy.Sakomura2005, celsius));
        }

        yield return new("X2-5", "extension to 5 °C", Longo + ", slopes of " + Critical, HowKnown.Derived, Unit, 180.0, 0.05, () => AtOneKilogram(MaintenanceEnergy.Longo2006, 5));
        yield return new("X2-35", "extension to 35 °C", Longo + ", slopes of " + Critical, HowKnown.Derived, Unit, 140.4, 0.05, () => AtOneKilogram(MaintenanceEnergy.Longo2006, 35));
        EnergyNeed Need() => EnergyModel.Longo2006Steps.Need(Sex.Male, Kilograms(1.5), GramsPerDay(70), Celsius(23), Age.FromDays(32));
        yield return new("E6a", "male, 1.5 kg, 70 g/d, 23 °C: maintenance", Longo, HowKnown.Derived, "kcal/d", 157.57, 0.005, () => PerDay(Need().Maintenance));
        yield return new("E6b", "the same: gain", Longo, HowKnown.Derived, "kcal/d", 294.70, 0.005, () => PerDay(Need().Gain));
        yield return new("E6c", "the same: all", Longo, HowKnown.Derived, "kcal/d", 452.27, 0.005, () => PerDay(Need().Total));
        yield return new("E6d", "the same: feed of 3.10 kcal/g", Longo, HowKnown.Derived, "g/d", 145.9, 0.05, () => Need().FeedPerDay(Kilocalories(3100)).Value.Grams);
    }

    private static IEnumerable<OutsideCheck> Fasting()
    {
        (double Kilograms, double Critical, double Least, double At20, double At32)[] rows =
            [(0.2, 34.58, 25.41, 37.0, 27.5), (1, 30.65, 84.98, 113.2, 91.0), (2, 27.47, 142.92, 176.2, 176.5), (3, 25.53, 193.71, 227.1, 258.8)];
        foreach (var row in rows)
        {
            string bird = FormattableString.Invariant($"{row.Kilograms} kg");
            yield return new("E7a-" + bird, "critical temperature of " + bird, Critical, HowKnown.Derived, "°C", row.Critical, 0.005, () => FastingHeat.CriticalTemperature(Kilograms(row.Kilograms)).DegreesCelsius);
            yield return new("E7b-" + bird, "fasting heat of " + bird + " there", Critical, HowKnown.Derived, "kcal/d", row.Least, 0.005, () => PerDay(FastingHeat.At(Kilograms(row.Kilograms), FastingHeat.CriticalTemperature(Kilograms(row.Kilograms)))));
            yield return new("E7c-" + bird, "fasting heat of " + bird + " at 20 °C", Critical, HowKnown.Derived, "kcal/d", row.At20, 0.05, () => PerDay(FastingHeat.At(Kilograms(row.Kilograms), Celsius(20))));
            yield return new("E7d-" + bird, "fasting heat of " + bird + " at 32 °C", Critical, HowKnown.Derived, "kcal/d", row.At32, 0.05, () => PerDay(FastingHeat.At(Kilograms(row.Kilograms), Celsius(32))));
        }
    }

    private static IEnumerable<OutsideCheck> Comparisons()
    {
        const string Emmans = "Emmans 1994, Br. J. Nutr. 71:801, abstract";
        double Effective(double fastingKilojoules, double protein, double fat) =>
            86.4 * (double)EffectiveEnergy.Required(Power.FromWatts(fastingKilojoules / 86.4), GramsPerDay(protein), GramsPerDay(fat)).Watts;
        yield return new("E8", "a gram of fat retained: 16.4 + 39.6", Emmans, HowKnown.Derived, "kJ", 56.0, 0.05, () => Effective(0, 0, 1));
        yield return new("E9a", "maintenance heat from 312.5 kJ fasting", Emmans, HowKnown.Derived, "kJ/d", 300, 0.5, () => Effective(312.5, 0, 0));
        yield return new("E9b", "with 18 g protein, 12 g fat", Emmans, HowKnown.Derived, "kJ/d", 1872, 0.5, () => Effective(312.5, 18, 12));
        yield return new("E10a", "protein deposition in kJ (Emmans 50)", Sakomura, HowKnown.Derived, "kJ/g", 52.7, 0.05, () => 4.184 * FactorialEnergy.Deposition(1, 0));
        yield return new("E10b", "fat deposition in kJ (Emmans 56)", Sakomura, HowKnown.Derived, "kJ/g", 56.6, 0.05, () => 4.184 * FactorialEnergy.Deposition(0, 1));
        yield return Breeder("E11", "pullets, 2 kg, 22 °C, 15 g/d, 9 to 14 weeks", "Sakomura et al. 2003, abstract, first set", HowKnown.Derived, BreederEnergy.Sakomura2003Pullets, 15, 22, 282.26, 0.005);
        yield return Breeder("E12", "2 kg, 15 g/d, no eggs", "Afrouziyeh et al. 2022, abstract", HowKnown.Derived, BreederEnergy.Afrouziyeh2022, 15, 20, 200.47, 0.005);
        yield return Breeder("E13", "2 kg, 15 g/d, no eggs", "van der Klein et al. 2020, abstract", HowKnown.Derived, BreederEnergy.VanDerKlein2020, 15, 20, 208.97, 0.005);
        yield return Breeder("E14", "2 kg, no gain, 65 °F", "Combs 1968, as quoted", HowKnown.Secondary, BreederEnergy.Combs1968, 0, 65.0.FahrenheitAsCelsius(), 207.5, 0.05);
    }

    private static OutsideCheck Breeder(string id, string what, string source, HowKnown known, BreederEnergy model, double gain, double celsius, double expected, double tolerance) =>
        new(id, what, source, known, "kcal/d", expected, tolerance, () => PerDay(model.At(Kilograms(2), GramsPerDay(gain), Celsius(celsius))));

    private static IEnumerable<OutsideCheck> Body()
    {
        const string Cobb = "Br. Poult. Sci. 2024, 65:265, abstract", Parks = "Parks 1982 in PMC7149552, Table 1", Caldas = "Caldas et al. 2019, abstract";
        yield return new("B2a", "potential protein gain of a cockerel at 300 g", Cobb, HowKnown.Derived, "g/d", 19.97, 0.005, () => PotentialGrowth.ProteinOfCockerels.At(Mass.FromGrams(300)).GramsPerDay);
        yield return new("B2b", "of a pullet", Cobb, HowKnown.Derived, "g/d", 16.62, 0.005, () => PotentialGrowth.ProteinOfPullets.At(Mass.FromGrams(300)).GramsPerDay);
        yield return new("B2c", "the highest of a cockerel", Cobb, HowKnown.Derived, "g/d", 22.70, 0.005, () => PotentialGrowth.ProteinOfCockerels.Fastest.GramsPerDay);
        yield return new("B2d", "reached at", Cobb, HowKnown.Derived, "g", 544.5, 0.05, () => PotentialGrowth.ProteinOfCockerels.FastestAt.Grams);
        yield return new("B3a", "highest gain, 1982", Parks, HowKnown.Derived, "g/d", 55.0, 0.05, () => PotentialGrowth.LiveWeightOf1982.Fastest.GramsPerDay);
        yield return new("B3b", "scaled rate", Parks, HowKnown.ReadInSource, "1/d", 0.0425, 0.00005, () => PotentialGrowth.LiveWeightOf1982.ScaledRatePerDay);
        yield return new("B3c", "scaled intake from 0.208 kg/d at 5.6 kg (printed 59.1)", Parks, HowKnown.Derived, "g/d/kg^0.73", 59.14, 0.005, () => 208 / Math.Pow(PotentialGrowth.LiveWeightOf1982.Mature.Kilograms, 0.73));
        yield return new("B4a", "energy of a gram of bird, heavy end", Caldas, HowKnown.Derived, "kcal/g", 1.896, 0.0005, () => EnergyPerGram(4184));
        yield return new("B4b", "light end", Caldas, HowKnown.Derived, "kcal/g", 1.314, 0.0005, () => EnergyPerGram(56));
        yield return new("B5", "cost of a gain of 18 % protein, 12 % fat", Sakomura, HowKnown.Derived, "kcal/g", 3.89, 0.005, () => FactorialEnergy.Deposition(0.18, 0.12));
        double[] weights = [200, 500, 1000, 2000, 3000, 4000];
        foreach (CheckColumn column in CheckColumn.All)
        {
            for (int i = 0; i < weights.Length; i++)
            {
                (double weight, double expected) = (weights[i], column.Expected[i]);
                yield return Recomputed(
                    FormattableString.Invariant($"C{column.Id}-{weight}"), FormattableString.Invariant($"{column.What} at {weight} g"), Composition, column.Unit, expected, column.Tolerance,
                    () => column.Computed(weight));
            }
        }
    }

    private static IEnumerable<OutsideCheck> DefaultModel()
    {
        EnergyNeed At(double kilograms, double gain, double celsius) =>
            EnergyModel.HeatProduction.Need(Sex.Male, Kilograms(kilograms), GramsPerDay(gain), Celsius(celsius), Age.FromDays(35));
        yield return Recomputed("H1", "heat of 2 kg", Heat, "kcal/d", 365.6, 0.05, () => PerDay(At(2, 95, 21).Maintenance));
        yield return Recomputed("H2", "retained, 95 g/d", Heat, "kcal/d", 192.7, 0.05, () => PerDay(At(2, 95, 21).Gain));
        yield return Recomputed("H3", "all, at 21 °C", Heat, "kcal/d", 558.3, 0.05, () => PerDay(At(2, 95, 21).Total));
        foreach ((double celsius, double expected) in new[] { (5, 71.3), (13, 35.7), (32, 4.7), (35, 27.0) })
        {
            yield return Recomputed(FormattableString.Invariant($"H4-{celsius}"), FormattableString.Invariant($"temperature term at {celsius} °C"), Heat, "kcal/d", expected, 0.05, () => PerDay(At(2, 95, celsius).TemperatureTerm));
        }

        yield return Recomputed("H5a", "heat of 1 kg", Heat, "kcal/d", 218.9, 0.05, () => PerDay(At(1, 75, 21).Maintenance));
        yield return Recomputed("H5b", "retained, 75 g/d", Heat, "kcal/d", 143.0, 0.05, () => PerDay(At(1, 75, 21).Gain));
        foreach ((string table, double[] expected) in new[] { ("objectives 2012 male", new double[] { 1198, 4786, 10099 }), ("objectives 2012 female", [1181, 4509, 9350]) })
        {
            for (int i = 0; i < 3; i++)
            {
                int week = 3 * (i + 1);
                double grams = expected[i];
                yield return Recomputed(
                    FormattableString.Invariant($"H6-{table[^6..].Trim()}-{week}"), FormattableString.Invariant($"cumulative feed on the weights of {table}, week {week}"), Heat, "g", grams, 0.003 * grams,
                    () => FeedTable.Named(table).Predicted(FeedTableModel.Default)[week]);
            }
        }
    }

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

    /// <summary>A house held at one temperature all life against the standard one, weights of the male objectives to 56 d.</summary>
    private static IEnumerable<OutsideCheck> Lives()
    {
        (double Celsius, double Heat, double Sakomura)[] rows = [(5, 13.6, 19.5), (10, 9.5, 15.4), (15, 5.5, 8.5), (25, -2.3, -1.5), (30, 0.8, 0.8), (35, 6.8, 7.2)];
        foreach (var row in rows)
        {
            string what = FormattableString.Invariant($"feed to 56 d at {row.Celsius} °C against the standard house");
            string id = FormattableString.Invariant($"X3-{row.Celsius}");
            yield return Recomputed(id + "a", what + ", default model", Heat, "%", row.Heat, 0.05, () => FeedTable.Named("objectives 2012 male").Excess(FeedTableModel.Default, Temperatures.Constant(Celsius(row.Celsius)), 8));
            yield return Recomputed(id + "b", what + ", Sakomura 2005", Heat, "%", row.Sakomura, 0.05, () => FeedTable.Named("objectives 2012 male").Excess(FeedTableModel.Sakomura, Temperatures.Constant(Celsius(row.Celsius)), 8));
        }
    }

    private static double EnergyPerGram(double grams)
    {
        (double protein, double fat) = BodyComposition.Caldas2019.At(grams);
        return HeatProductionEnergy.Retained(protein, fat) / grams;
    }

    private static double AtOneKilogram(MaintenanceEnergy energy, double celsius) => PerDay(energy.At(Kilograms(1), Celsius(celsius)));

    private static double PerDay(Power power) => Calories.PerDay(power);

    private static SpecificEnergy Kilocalories(double perKilogram) => Calories.PerKilogram(perKilogram);

    private static Mass Kilograms(double kilograms) => Mass.FromKilograms(kilograms);

    private static MassFlow GramsPerDay(double grams) => MassFlow.FromGramsPerDay(grams);

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static double FahrenheitAsCelsius(this double fahrenheit) => Temperature.FromDegreesFahrenheit(fahrenheit).DegreesCelsius;

    /// <summary>A column of the check table of body composition, by weight.</summary>
    private sealed record CheckColumn(string Id, string What, string Unit, double Tolerance, double[] Expected, Func<double, double> Computed)
    {
        // Before the columns that use them: static members are made in the order of the text.
        private static BodyComposition Male { get; } = BodyComposition.Cobb700(Sex.Male, Mass.FromGrams(42));

        private static BodyComposition Female { get; } = BodyComposition.Cobb700(Sex.Female, Mass.FromGrams(42));

        public static IReadOnlyList<CheckColumn> All { get; } =
        [
            new("Pm", "protein of a cockerel", "g", 0.05, [32.9, 84.0, 170.6, 345.7, 522.1, 699.4], grams => Male.At(grams).Protein),
            new("Lm", "fat of a cockerel", "g", 0.05, [14.1, 41.2, 92.2, 206.1, 329.7, 459.9], grams => Male.At(grams).Fat),
            new("Pf", "protein of a pullet", "g", 0.05, [33.9, 87.9, 179.9, 365.6, 548.4, 724.8], grams => Female.At(grams).Protein),
            new("Lf", "fat of a pullet", "g", 0.05, [14.8, 44.2, 101.7, 241.4, 416.6, 633.7], grams => Female.At(grams).Fat),
            new("Rm", "energy retained a gram of gain, cockerel", "kcal/g", 0.0005, [1.657, 1.794, 1.907, 2.028, 2.103, 2.158], grams => Gain(EnergyModel.HeatProduction, Sex.Male, grams)),
            new("Rf", "energy retained a gram of gain, pullet", "kcal/g", 0.0005, [1.753, 1.939, 2.116, 2.408, 2.728, 3.086], grams => Gain(EnergyModel.HeatProduction, Sex.Female, grams)),
            new("Dm", "cost of a gram of gain, cockerel", "kcal/g", 0.0005, [3.238, 3.459, 3.639, 3.830, 3.948, 4.033], grams => Gain(EnergyModel.Sakomura2005, Sex.Male, grams)),
            new("Df", "cost of a gram of gain, pullet", "kcal/g", 0.0005, [3.417, 3.723, 4.005, 4.443, 4.906, 5.412], grams => Gain(EnergyModel.Sakomura2005, Sex.Female, grams)),
        ];

        private static double Gain(EnergyModel model, Sex sex, double grams) =>
            PerDay(model.Need(sex, Mass.FromGrams(grams), GramsPerDay(1), Celsius(21), Age.FromDays(35)).Gain);
    }
}
