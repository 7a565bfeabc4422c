using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.FeedingUnits;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>What bodies are made of, and how fast they may grow.</summary>
internal static class BodyChecks
{
    private const string Sakomura = "Sakomura et al. 2005, Poult. Sci. 84:1363, abstract";
    private const string Composition = "composition by sex worked out by another program (bisection)";

    public static IEnumerable<OutsideCheck> All()
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

    private static double EnergyPerGram(double grams)
    {
        (double protein, double fat) = BodyComposition.Caldas2019.At(grams);
        return HeatProductionEnergy.Retained(protein, fat) / grams;
    }

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
