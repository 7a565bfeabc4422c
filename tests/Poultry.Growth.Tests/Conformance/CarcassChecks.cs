using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Carcass, cuts and condemnation against the figures of their sources. Ratios of printed means differ from printed means of ratios by 0.1 to 0.2 points.</summary>
internal static class CarcassChecks
{
    private const string Kokoszynski = "Kokoszynski and Bernacki 2008, J. Cent. Eur. Agric. 9(1):11-16, abstract";
    private const string Biesiada = "Biesiada-Drzazga et al. 2011, Acta Sci. Pol. Zootech. 10(3):11-20, abstract";
    private const string Kiepper = "Kiepper, University of Georgia, in another's account";
    private const string Gous = "Gous et al. 1990, Br. Poult. Sci. 31:495-505, abstract";
    private const string Slow = "Animals 2022, 12(18):2422, Table 3";
    private const string Nass = "USDA NASS, Poultry Slaughter";
    private const string Rudn = "RUDN Journal of Agronomy and Animal Industries, December 2018, abstract";
    private const string Arithmetic = "own arithmetic";

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        Derived("C-A1a", "1406.9 g with neck of 1892.5 g live, Ross 308", Kokoszynski, "%", 74.34, 0.01, () => Dressed(1892.5, 1406.9)),
        Derived("C-A1b", "1288.2 g with neck of 1753.3 g live, JV", Kokoszynski, "%", 73.47, 0.01, () => Dressed(1753.3, 1288.2)),
        Derived("C-A1c", "the ratio shipped for Ross 308 against that of the means (printed 74.5)", Kokoszynski, "%", 74.34, 0.2, () => Shipped("ross308-2008")),
        Derived("C-A1d", "the ratio shipped for JV against that of the means (printed 73.3)", Kokoszynski, "%", 73.47, 0.2, () => Shipped("jv-2008")),
        Derived("C-A2", "1697 g of 2229.9 g live, Ross 308 at 42 d", Biesiada, "%", 76.10, 0.01, () => Shipped("ross308-2011")),
        new("C-A3a", "103.3 units live at 72 %, ready to cook", Kiepper, HowKnown.Secondary, "-", 74.4, 0.05, () => Yield(103.3).Carcass.Weight.Kilograms),
        new("C-A3b", "the same, by-product", Kiepper, HowKnown.Secondary, "-", 28.9, 0.05, () => Yield(103.3).Lines.Single(line => line.Kind == BalanceKind.ByDifference).Weight.Likely.Kilograms),
        Derived("C-A4a", "abdominal fat of a male of 2.43 kg, 10.8 g/kg at 56 d", Gous, "g", 26.2, 0.05, () => Fat(Sex.Male, 56, 2.43)),
        Derived("C-A4b", "abdominal fat of a female of 1.60 kg, 15.7 g/kg at 42 d", Gous, "g", 25.1, 0.05, () => Fat(Sex.Female, 42, 1.60)),
        Derived("C-A5a", "breast 18.01 and leg 23.56 % together, 90 d", Slow, "%", 41.57, 0.005, () => Lean(CutSets.SlowLocal90Days)),
        Derived("C-A5b", "breast 18.84 and leg 24.84 % together, 100 d", Slow, "%", 43.68, 0.005, () => Lean(CutSets.SlowLocal100Days)),
        Read("C-A6a", "March 2019, 12.6 of 5200 M lb live", Nass, "%", 0.24, 0.005, () => AnteMortem(12.6, 5200)),
        Read("C-A6b", "March 2019, 34.4 M lb condemned beside 3940 passed", Nass, "%", 0.87, 0.005, () => PostMortem(34.4, 3940)),
        Read("C-A7a", "November 2015, 11.6 of 4800 M lb live", Nass, "%", 0.24, 0.005, () => AnteMortem(11.6, 4800)),
        Read("C-A7b", "November 2015, 38.6 M lb beside 3640 passed (of the passed alone: 1.06)", Nass, "%", 1.05, 0.005, () => PostMortem(38.6, 3640)),
        Read("C-A8a", "February 2012, 9.56 of 4600 M lb live", Nass, "%", 0.21, 0.005, () => AnteMortem(9.56, 4600)),
        Read("C-A8b", "February 2012, 34.4 M lb beside 3470 passed (of the passed alone: 0.99)", Nass, "%", 0.98, 0.005, () => PostMortem(34.4, 3470)),
        Read("C-A8c", "September 2015, 13.3 of 5270 M lb live", Nass, "%", 0.25, 0.005, () => AnteMortem(13.3, 5270)),
        Read("C-A8d", "September 2015, 39.9 M lb beside 3990 passed (of the passed alone: 1.00)", Nass, "%", 0.99, 0.005, () => PostMortem(39.9, 3990)),
        Derived("C-A9a", "1,700 g before and 1,768 g after chilling, of the weight before", Arithmetic, "%", 4.00, 0.01, () => Chilled.PercentRetainedOfHot),
        Derived("C-A9b", "the same, of the weight after", Arithmetic, "%", 3.85, 0.01, () => Chilled.PercentRetainedOfChilled),
        .. Set("C-B1", CutSets.Rudn42Days, (36.23, "breast"), (17.09, "thigh"), (14.20, "drumstick"), (10.68, "wing"), (21.80, "frame")),
        Derived("C-B1f", "breast, thigh, drumstick and wing together, 42 d", Rudn, "%", 78.20, 0.005, () => 100 - Share(CutSets.Rudn42Days, "frame")),
        .. Set("C-B3", CutSets.Rudn33Days, (35.95, "breast"), (17.15, "thigh"), (14.38, "drumstick"), (11.15, "wing"), (21.37, "frame")),
        Read("C-B4a", "dressing, males at 33 d", Rudn, "%", 71.83, 0.005, () => Shipped("rudn-33d")),
        Read("C-B4b", "dressing, males at 42 d", Rudn, "%", 73.12, 0.005, () => Shipped("rudn-42d")),
        .. new (double, string)[] { (1.024, "breast"), (0.989, "thigh"), (0.962, "drumstick"), (0.869, "wing"), (1.061, "frame") }.Select((row, at) =>
            Derived("C-B2" + (char)('a' + at), "exponent of " + row.Item2 + " from the ages of 33 and 42 d", Rudn, "-", row.Item1, 0.001, () => CutSets.TwoPointExponents[row.Item2])),
        Read("K6", "loss in 24 h off feed over that in 12 h", "Wabeck 1972, Poult. Sci. 51:1119, abstract: about twice", "-", 2, 0.05, () => Shrink(24) / Shrink(12)),
        Derived("K6b", "carcass of 300 birds of 3 kg at 72 % in 12 h at 0.30 %/h, counted or not", Arithmetic, "kg", 23, 0.5, () => 0.72 * 900 * Shrink(12)),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "Shares of the eight-piece cut with the back on the pieces, and of the keel piece of a nine-piece cut: no set is published; they are asked from the user.",
        "Uptake in the chiller and drip: no absolute figure was to be had; they are asked from the user or the plant.",
        "Shares of giblets, feet, head, feathers and blood: only recalled figures, so none is shipped.",
        "Published exponents of pieces: the equations are named in abstracts without their figures; those shipped come from two ages of one strain.",
        "Boneless shares of legs and the split of breast meat into tender and fillet by age: not obtained.",
    ];

    private static ChillWater Chilled => ChillWater.Weighed(Mass.FromGrams(1700), Mass.FromGrams(1768));

    private static IEnumerable<OutsideCheck> Set(string id, CutSet set, params (double Percent, string Piece)[] rows) => rows.Select((row, at) => new OutsideCheck(
        id + (char)('a' + at),
        "share of " + row.Piece + ", " + set.Age,
        Rudn,
        row.Piece == "frame" ? HowKnown.Derived : HowKnown.ReadInSource,
        "%",
        row.Percent,
        0.005,
        () => Share(set, row.Piece)));

    private static double Share(CutSet set, string piece) => set.Pieces.Single(known => known.Name == piece).Share.Percent;

    private static double Lean(CutSet set) => Share(set, "breast muscle") + Share(set, "leg muscle");

    private static double Shipped(string name) => Dressings.Named(name)!.Ratio.Likely.Percent;

    private static double Dressed(double liveGrams, double carcassGrams) => PastDressing.Weighed(
        [(LiveWeight.FullFed(Mass.FromGrams(liveGrams)), CarcassWeight.Of(Mass.FromGrams(carcassGrams), CarcassBasis.NotStated))]).MeanPercent;

    private static CarcassBalance Yield(double live) => CarcassBalance.Of(
        LiveWeight.FullFed(Mass.FromKilograms(live)),
        new PlantConditions { Dressing = Dressings.Named("kiepper-edible")!, AtKilling = LiveState.FullFed, Condemned = Condemnation.None });

    private static double Fat(Sex sex, double ageDays, double kilograms) =>
        NamedPart.AbdominalFat.Single(fat => fat.Sex == sex && fat.Age == Age.FromDays(ageDays)).Part.Of(Mass.FromKilograms(kilograms)).Grams;

    private static double AnteMortem(double condemned, double live) => Condemnation.ShareOfLive(Mass.FromPounds(condemned), Mass.FromPounds(live)).Percent;

    private static double PostMortem(double condemned, double passed) => Condemnation.ShareOfCarcass(Mass.FromPounds(condemned), Mass.FromPounds(passed)).Percent;

    private static double Shrink(double hours) => FeedWithdrawal.Usual.ShareLost(Duration.FromHours(hours)).Likely.Fraction;
}
