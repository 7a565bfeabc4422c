using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Space, brooding, pasture, crates, air and tiers: values worked out by hand from the texts named. Counts are exact; the rest to half the last digit.</summary>
internal static class HousingChecks
{
    private const string Directive = "Directive 2007/43/EC";
    private const string GermanLaw = "TierSchNutztV s. 18";
    private const string Ventilation = "Br. Poult. Sci. 1981, 22:493-498, abstract";
    private const string Clauer = "Clauer, table of space, weeks 5-8";
    private const string Patterson = "Patterson et al. 1998, J. Appl. Poult. Res. 7:247-252, abstract; diet of 20 % protein assumed";
    private const double Exact = 1e-9;

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. Mortality(("a", 35, 3.10), ("b", 38, 3.28), ("c", 49, 3.94), ("d", 81, 5.86)),
        Derived("H-C2a", "birds of 2 kg on 600 m2 at 33 kg/m2", Directive, "birds", 9900, 0, () => MostAt(600, 33, 2)),
        Derived("H-C2b", "chicks to place for them at 5 % lost", Directive + "; division by 1 - m is ours", "birds", 10421, 0, () => ChicksToPlace.For(9900, Probability.FromPercent(5)).AsExpected),
        .. Crossings(("a", 13, 27.5, 2.115, HowKnown.Memory), ("b", 15, 25, 1.667, HowKnown.Derived), ("c", 10, 21, 2.100, HowKnown.Derived), ("d", 16, 30, 1.875, HowKnown.Derived)),
        Derived("H-C4", "birds of 2.2 kg in a mobile house of 150 m2 at 30 kg/m2", "Regulation 889/2008 Annex III", "birds", 2045, 0, () => MostAt(150, 30, 2.2)),
        Derived("H-C5", "pop-holes of a house of 200 m2", "Regulation 2020/464 Art. 15", "m", 8, Exact, () => ShippedValue(LimitSubject.PopHoleLength, "Implementing Regulation 2020/464") * 200 / 100),
        Derived("H-C6a", "6 lb/ft2", "definition of the pound and the foot", "kg/m2", 29.29, 0.01, () => StockingDensity.FromPoundsPerSquareFoot(6).KilogramsPerSquareMeter),
        Derived("H-C6b", "30 kg/m2", "definition of the pound and the foot", "lb/ft2", 6.14, 0.01, () => StockingDensity.FromKilogramsPerSquareMeter(30).PoundsPerSquareFoot),
        Derived("H-C6c", "6.5 lb/ft2", "definition of the pound and the foot", "kg/m2", 31.7, 0.05, () => StockingDensity.FromPoundsPerSquareFoot(6.5).KilogramsPerSquareMeter),
        Derived("H-C6d", "9.0 lb/ft2", "definition of the pound and the foot", "kg/m2", 43.9, 0.05, () => StockingDensity.FromPoundsPerSquareFoot(9).KilogramsPerSquareMeter),
        Derived("H-C7a", "pen of 10 x 12 ft, 80 birds", "arithmetic", "ft2/bird", 1.50, 0.05, () => Pen.AreaPerBird!.Value.SquareFeet),
        Derived("H-C7b", "the same", "arithmetic", "m2/bird", 0.139, 0.0005, () => Pen.AreaPerBird!.Value.SquareMeters),
        Derived("H-C7c", "the same, birds of 5 lb", "arithmetic", "lb/ft2", 3.33, 0.05, () => Pen.At(Mass.FromPounds(5)).PoundsPerSquareFoot),
        Derived("H-C7d", "the same", "arithmetic", "kg/m2", 16.3, 0.05, () => Pen.At(Mass.FromPounds(5)).KilogramsPerSquareMeter),
        Derived("H-C8a", "28 pen-days, 1.5 ft2 a bird, a move a day: ground a bird", "arithmetic", "ft2", 42, 0.01, () => Moved.GroundPerBird.SquareFeet),
        Derived("H-C8b", "the same", "arithmetic", "m2", 3.90, 0.01, () => Moved.GroundPerBird.SquareMeters),
        Derived("H-C8c", "the same, 1,000 birds", "arithmetic; agrees with up to 1,000 birds an acre, common practice", "ac", 0.96, 0.01, () => Moved.GroundPerBatch.Acres),
        Derived("H-C9a", "500 birds of 2 kg: round drinkers", GermanLaw, "cm", 660, Exact, () => Need(LimitSubject.RoundDrinkerPerWeight).Edge!.Value.Centimeters),
        Derived("H-C9b", "the same: nipples", GermanLaw, "-", 34, 0, () => Need(LimitSubject.BirdsPerNipple).Pieces!.Value),
        Derived("H-C9c", "the same: trough", GermanLaw, "cm", 1500, Exact, () => Need(LimitSubject.TroughDrinkerPerWeight).Edge!.Value.Centimeters),
        Derived("H-C9d", "the same: air that can be moved", GermanLaw, "m3/h", 4500, Exact, () => Need(LimitSubject.AirCapacity).AirCapacity!.Value.CubicMetersPerHour),
        Derived("H-C10a", "100 birds of 6 weeks: floor", Clauer, "ft2", 100, 0.01, () => 100 * WeekSix.FloorPerBird!.Value.Least.SquareFeet),
        Derived("H-C10b", "the same", Clauer, "m2", 9.29, 0.01, () => 100 * WeekSix.FloorPerBird!.Value.Least.SquareMeters),
        Derived("H-C10c", "the same: feeder", Clauer, "cm", 508, 0.01, () => 100 * WeekSix.FeederPerBird!.Value.Least.Centimeters),
        Derived("H-C10d", "the same: drinker", Clauer, "cm", 190.5, 0.01, () => 100 * WeekSix.DrinkerPerBird!.Value.Least.Centimeters),
        Derived("H-C11a", "250 chicks in week 1: floor", "Clauer, week 1", "ft2", 62.5, Exact, () => 250 * Stage(3).FloorPerBird!.Value.Least.SquareFeet),
        Derived("H-C11b", "250 chicks in week 2: floor", "Clauer, weeks 2-3", "ft2", 125, Exact, () => 250 * Stage(10).FloorPerBird!.Value.Least.SquareFeet),
        Practice("H-C11c", "lamps for 250 chicks at 75 a lamp", "-", 4, () => HeatLamps.For(250).Fewest),
        Practice("H-C11d", "lamps for 250 chicks at 50 a lamp", "-", 5, () => HeatLamps.For(250).Most),
        .. Air((0.5, 0.321), (1, 0.540), (2, 0.908), (2.5, 1.074), (3, 1.231)),
        Derived("H-C12f", "1,000 birds of 2 kg", Ventilation, "m3/h", 908, 1, () => 1000 * PerBird(2)),
        Derived("H-C12g", "150 g of feed a day", Ventilation, "m3/h", 1.08, 0.01, () => MinimumVentilation.FromFeed(MassFlow.FromGramsPerDay(150)).CubicMetersPerHour),
        Recalled("H-C13a", "crate floor of a bird of 2 kg", "EFSA J. 20(9):7441, recalled", "cm2", 460.3, 0.1, () => CrateStandard.Efsa2022.AreaPerBird(Kilograms(2)).SquareCentimeters),
        Recalled("H-C13b", "the same for a kg", "EFSA J. 20(9):7441, recalled", "cm2/kg", 230.2, 0.1, () => CrateStandard.Efsa2022.AreaPerBird(Kilograms(2)).SquareCentimeters / 2),
        Derived("H-C14a", "birds a year at 41 g of nitrogen and 170 kg/ha", "arrete 19 Dec 2011 Annex II-C; 91/676/EEC", "birds/ha", 4146, 0, () => FrenchHeavy.BirdsPerHectareAndYear(KilogramsPerHectare(170))),
        Derived("H-C14b", "the same", "arithmetic", "m2/bird", 2.41, 0.01, () => 10_000.0 / FrenchHeavy.BirdsPerHectareAndYear(KilogramsPerHectare(170))),
        Recalled("H-C15a", "one pass: 1.104 g of nitrogen a bird and day on 1.5 ft2", "ASAE D384.2 Table 1, recalled", "kg/ha", 79, 1, () => PassOf(1.5)),
        Recalled("H-C15b", "the same on 2 ft2", "ASAE D384.2 Table 1, recalled", "kg/ha", 59, 1, () => PassOf(2)),
        Assumed("H-C16a", "nitrogen in 3.82 kg of feed", Patterson, "g", 122, 0.5, () => NitrogenBalance.Of(Kilograms(3.82), Probability.FromPercent(20), Kilograms(2.01)).Eaten.Grams),
        Assumed("H-C16b", "of it excreted, 49 %", Patterson, "g", 60, 0.5, () => FeedNutrients.NitrogenExcreted(Kilograms(3.82), Probability.FromPercent(20)).Grams),
        Assumed("H-C16c", "of it in litter, 31 %", Patterson, "g", 38, 0.5, () => FeedNutrients.NitrogenInLitterOf(Kilograms(3.82), Probability.FromPercent(20)).Grams),
        .. Tiers(("a", 999, 2), ("b", 1000, 2), ("c", 1001, 1), ("d", 20_001, 0)),
        Tier("H-C17e", "United Kingdom", 9999, 1),
        Tier("H-C17f", "United Kingdom", 10_000, 0),
        Recalled("H-C18a", "hours to chill a carcass of 4.5 lb by the old table", "9 CFR 381.66(b) before 2014, recalled", "h", 6, 0, ChillingHours),
        Derived("H-C18b", "40 F", "definition of the degree", "C", 4.44, 0.01, () => LimitBook.On(LimitSubject.CarcassTemperature).First(limit => limit.Printed == "40 F").Value!.Value),
        Derived("H-C18c", "limits of 4 C that 40 F meets", "Regulation 853/2004, P-29 r.1", "-", 0, 0, () => Cold.Count(verdict => verdict.Limit.Printed == "4 C" && verdict.Met == true)),
        Derived("H-C20a", "brooding temperature of 95 F", "definition of the degree", "C", 35.0, 0.05, () => BroodingGuide.Missouri.At(Age.FromDays(1))!.Temperature!.Value.High.DegreesCelsius),
        Derived("H-C20b", "brooding temperature of 70 F", "definition of the degree", "C", 21.1, 0.05, () => BroodingGuide.Missouri.At(Age.FromWeeks(6))!.Temperature!.Value.High.DegreesCelsius),
        Derived("H-12a", "8 bell drinkers of 40 cm: rim", "trade advice against " + GermanLaw, "cm", 1005, 0.5, () => Bells),
        Derived("H-12b", "the live weight that they serve", GermanLaw, "kg", 1523, 0.5, () => Bells / ShippedValue(LimitSubject.RoundDrinkerPerWeight, "TierSchNutztV")),
        Known("H-12c", "fresh manure of 3.82 kg of feed, 75 % water", "Ritz and Merka, told by others", HowKnown.Secondary, "kg", 1.9, 0.05, () => FreshManure.RitzMerka.From(Kilograms(3.82)).Kilograms),
        Derived("H-12d", "the same, 115 % of dry feed", "Ohio State Extension, bulletin 804", "kg", 4.4, 0.05, () => FreshManure.OhioState.From(Kilograms(3.82)).Kilograms),
        Known("H-12e", "the same, 80 % water", "a handbook of 1988, told by others", HowKnown.Secondary, "kg", 3.8, 0.05, () => FreshManure.Handbook1988.From(Kilograms(3.82)).Kilograms),
        Recalled("V4a", "air of 1,000 birds of 2 kg at 3000 ppm inside, 400 ppm outside", "heat by CIGR as recalled, 185 L/h per 1000 W", "m3/h", 1271, 0.5, () => CarbonDioxideBalance.Ventilation(
            CarbonDioxide.OfBirds.With(1000 * BirdHeat.Cigr2002.Total(Kilograms(2))), Ppm(3000), Ppm(400)).CubicMetersPerHour),
        Recalled("V4b", "least air of a bird of 2 kg by 1.56e-4 m3/s", "a rule of handbooks, recalled", "m3/h", 0.94, 0.005, () => MinimumVentilation.Recalled.PerBird(Kilograms(2)).CubicMetersPerHour),
        .. Litter(("a", 500, 33.69), ("b", 1000, 19.54), ("c", 2000, 11.33)),
        Known("V6", "air of 25,000 chicks", "University of Georgia, told by others", HowKnown.Secondary, "ft3/min", 20.75, 0.005, () => PublishedAirRules.Chicks(25_000).CubicFeetPerMinute),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "The legal texts themselves: figures were read once, some on unofficial copies; each row of the table of standards says how.",
        "Not obtained: EU 1/2005 container table, 543/2008 Annex V, 7 CFR 205.241, NFACC Appendix C, footnote 1 of the Swiss table, a published nitrogen load of a pass with a moved pen.",
    ];

    private static BirdDensity Pen => BirdDensity.Of(80, Area.FromSquareFeet(10 * 12));

    private static PasturePlan Moved => PasturePlan.Of(Area.FromSquareFeet(1500), 1, 1000, MoveSchedule.Steady(1), Age.FromDays(21), Age.FromDays(49));

    private static BroodingStage WeekSix => Stage(40);

    private static SpreadableNitrogen FrenchHeavy => SpreadableNitrogen.All.Single(kind => kind.Production == "standard, heavy");

    private static double Bells => 8 * Math.PI * 40;

    private static IReadOnlyList<LimitVerdict> Cold => LimitVerdict.Of(
        LimitBook.On(LimitSubject.CarcassTemperature), new Keeping().With(Measured.Carcass(Mass.FromPounds(4.5), Temperature.FromDegreesFahrenheit(40), Duration.FromHours(6))));

    private static IEnumerable<OutsideCheck> Mortality(params (string Id, double Days, double Percent)[] rows) => rows.Select(row => Derived(
        "H-C1" + row.Id, FormattableString.Invariant($"limit of the cumulative daily mortality rate at {row.Days} d"), Directive + " Annex V", "%", row.Percent, 1e-9, () => CumulativeMortality.LimitPercent(Age.FromDays(row.Days))));

    private static IEnumerable<OutsideCheck> Crossings(params (string Id, double Birds, double Density, double Kilograms, HowKnown Known)[] rows) => rows.Select(row => Known(
        "H-C3" + row.Id, FormattableString.Invariant($"weight at which {row.Birds} birds/m2 and {row.Density} kg/m2 cross"), "arithmetic from the two limits", row.Known, "kg", row.Kilograms, 0.001,
        () => StockingVerdict.CrossingWeight(StockingDensity.FromKilogramsPerSquareMeter(row.Density), BirdDensity.FromBirdsPerSquareMeter(row.Birds)).Kilograms));

    private static IEnumerable<OutsideCheck> Air(params (double Kilograms, double CubicMeters)[] rows) => rows.Select((row, at) => Derived(
        "H-C12" + (char)('a' + at), FormattableString.Invariant($"least air of a bird of {row.Kilograms} kg"), Ventilation, "m3/h", row.CubicMeters, 0.001, () => PerBird(row.Kilograms)));

    private static IEnumerable<OutsideCheck> Tiers(params (string Id, int Birds, int Inside)[] rows) => rows.Select(row => Tier("H-C17" + row.Id, "USA", row.Birds, row.Inside));

    private static OutsideCheck Tier(string id, string place, int birds, int inside) => Derived(
        id, FormattableString.Invariant($"small-producer tiers that {birds} birds a year keep, {place}"), "PPIA exemptions; UK agencies' reading", "-", inside, 0,
        () => LimitVerdict.Of(LimitBook.On(LimitSubject.BirdsPerYear), new Keeping { Place = place, Measured = [Measured.BirdsPerYear(birds)] })
            .Count(verdict => verdict is { Applies: Applicability.Yes, Met: true }));

    private static IEnumerable<OutsideCheck> Litter(params (string Id, double Ppm, double CubicMeters)[] rows) => rows.Select(row => Derived(
        "V5" + row.Id, FormattableString.Invariant($"air of a litter house {row.Ppm} ppm above outside"), "Xin et al., abstract", "m3/s", row.CubicMeters, 0.005,
        () => PublishedAirRules.LitterHouse(Ppm(row.Ppm)).CubicMetersPerSecond));

    private static double ChillingHours() => LimitVerdict.Of(
        LimitBook.On(LimitSubject.ChillingTime),
        new Keeping { Place = "USA", Meets = ["former-table-chosen"] }.With(Measured.Carcass(Mass.FromPounds(4.5), Temperature.FromDegreesFahrenheit(40), Duration.FromHours(5))))
        .Single(verdict => verdict.Applies == Applicability.Yes).Limit.Value!.Value;

    private static double MostAt(double squareMeters, double kilogramsPerSquareMeter, double kilograms)
    {
        Limit limit = new()
        {
            Instrument = new("general", "a limit", "2027", InstrumentKind.Law),
            Scope = "",
            Quantity = "stocking density",
            Printed = FormattableString.Invariant($"{kilogramsPerSquareMeter} kg/m2"),
            Comparison = LimitComparison.AtMost,
            Subject = LimitSubject.StockingDensity,
            Value = kilogramsPerSquareMeter,
            HowKnown = HowKnown.ReadInSource,
        };
        return StockingVerdict.Of(Area.FromSquareMeters(squareMeters), 500, Kilograms(kilograms), new Keeping { Place = "anywhere" }, [limit]).BirdsAtLimit!.Value;
    }

    private static EquipmentNeed Need(LimitSubject subject) => EquipmentNeed.For(500, Kilograms(2), new Keeping { Place = "Germany", System = RearingSystem.Indoor })
        .Single(need => need.Verdict.Limit.Subject == subject && need.Verdict.Applies == Applicability.Yes);

    private static double ShippedValue(LimitSubject subject, string instrument) => LimitBook.On(subject).First(limit => limit.Instrument.Name == instrument).Value!.Value;

    private static BroodingStage Stage(double days) => BroodingGuide.Clauer.At(Age.FromDays(days))!;

    private static double PerBird(double kilograms) => MinimumVentilation.BritishPoultryScience1981.PerBird(Kilograms(kilograms)).CubicMetersPerHour;

    private static double PassOf(double squareFeet) => NitrogenBalance.LoadOfPass(ManureTable.Asae2005.NitrogenPerDay, Area.FromSquareFeet(squareFeet)).KilogramsPerSquareMeter * 10_000;

    private static AreaDensity KilogramsPerHectare(double load) => AreaDensity.FromKilogramsPerSquareMeter(load / 10_000);

    private static VolumeConcentration Ppm(double content) => VolumeConcentration.FromPartsPerMillion(content);

    private static Mass Kilograms(double kilograms) => Mass.FromKilograms(kilograms);

    private static OutsideCheck Assumed(string id, string what, string source, string unit, double expected, double tolerance, Func<double> computed) =>
        new(id, what, source, HowKnown.Assumption, unit, expected, tolerance, computed);

    private static OutsideCheck Practice(string id, string what, string unit, double expected, Func<double> computed) =>
        new(id, what, "one lamp of 250 W for 50 to 75 chicks", HowKnown.CommonPractice, unit, expected, 0, computed);

    private static OutsideCheck Known(string id, string what, string source, HowKnown known, string unit, double expected, double tolerance, Func<double> computed) =>
        new(id, what, source, known, unit, expected, tolerance, computed);
}
