using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Conformance.FeedTables;
using static Poultry.Growth.Tests.Conformance.FeedingUnits;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>The energy that birds need, by the published equations and by the default model.</summary>
internal static class EnergyChecks
{
    private const string Sakomura = "Sakomura et al. 2005, Poult. Sci. 84:1363, abstract";
    private const string Longo = "Longo et al. 2006, Rev. Bras. Zootec. 35, abstract";
    private const string Critical = "energy by weight and critical temperature, Cobb 500 males, abstract";
    private const string Heat = "recipe of the default model worked out by another program";

    public static IEnumerable<OutsideCheck> Maintenance()
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

    public static IEnumerable<OutsideCheck> Fasting()
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

    public static IEnumerable<OutsideCheck> Comparisons()
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

    public static IEnumerable<OutsideCheck> DefaultModel()
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

    /// <summary>A house held at one temperature all life against the standard one, weights of the male objectives to 56 d.</summary>
    public static IEnumerable<OutsideCheck> Lives()
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

    private static double AtOneKilogram(MaintenanceEnergy energy, double celsius) => PerDay(energy.At(Kilograms(1), Celsius(celsius)));
}
