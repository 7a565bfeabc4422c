using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Heat, moisture and carbon dioxide of birds: values worked out by hand from the printed equations, to half the last digit.</summary>
internal static class FlockChecks
{
    private const string ChepeteXin = "Chepete and Xin 2001, abstract, equation of 1982-2000";
    private const string Cigr = "CIGR 2002, as recalled";
    private const string Pedersen = "Pedersen et al. 2008, abstract: 185 L/h per 1000 W";

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. Heat(BirdHeat.ChepeteXin2001, "V1", ChepeteXin, HowKnown.Derived, (0.1, 1.93), (1, 10.60), (1.6, 15.01), (2, 17.70), (3, 23.90)),
        .. Heat(BirdHeat.Cigr2002, "V2", Cigr, HowKnown.Memory, (0.1, 1.89), (1, 10.62), (1.6, 15.11), (2, 17.86), (3, 24.21)),
        new("V1f", "1968 equation, 1.6 kg", "Chepete and Xin 2001, abstract, equation of 1968", HowKnown.Derived, "W", 11.60, 0.005, () => Watts(BirdHeat.Birds1968.Total(Kilograms(1.6)))),
        new("V1g", "heat of modern over 1968 birds, 1.6 kg", "same; the paper gives 1.21 to 1.44", HowKnown.Derived, "-", 1.294, 0.0005,
            () => Watts(BirdHeat.ChepeteXin2001.Total(Kilograms(1.6))) / Watts(BirdHeat.Birds1968.Total(Kilograms(1.6)))),
        .. At(15, 11.68, 6.58, 5.10, 7.5),
        .. At(20, 10.62, 5.51, 5.11, 7.5),
        .. At(25, 9.56, 4.32, 5.24, 7.7),
        .. At(30, 8.50, 3.00, 5.49, 8.1),
        new("V4", "carbon dioxide of 1,000 birds of 2 kg, heat by CIGR", Pedersen, HowKnown.Derived, "m3/h", 3.304, 0.0005,
            () => CarbonDioxide.OfBirds.With(1000 * BirdHeat.Cigr2002.Total(Kilograms(2))).CubicMetersPerHour),
        OutsideCheck.Recomputed("S1", "chance of at most 282 of 300 alive after a week with 4.96 % lost, no spread between batches", "R 4.2.2, pbinom(282, 300, 0.9504)", "-", 0.236498269409, 1e-12,
            () => Survival.ByWeek([Probability.FromPercent(4.96)], logSpread: 0).ChanceAtMost(282, 300, Age.Hatch, Age.FromDays(7)).Fraction),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "The CIGR report itself (chapters 2 and 3) was not at hand: the split of heat into warmth and moisture is recalled.",
        "No weekly table of losses was to be had: survival by week is an assumption.",
    ];

    private static IEnumerable<OutsideCheck> Heat(BirdHeat model, string id, string source, HowKnown howKnown, params (double Kilograms, double Watts)[] rows) =>
        rows.Select((row, at) => new OutsideCheck(
            id + (char)('a' + at), FormattableString.Invariant($"heat of a bird of {row.Kilograms} kg"), source, howKnown, "W", row.Watts, 0.005, () => Watts(model.Total(Kilograms(row.Kilograms)))));

    private static IEnumerable<OutsideCheck> At(double celsius, double total, double sensible, double latent, double gramsPerHour)
    {
        HeatGivenOff Given() => BirdHeat.Cigr2002.At(Kilograms(1), Temperature.FromDegreesCelsius(celsius));
        string id = FormattableString.Invariant($"V3-{celsius}");
        string bird = FormattableString.Invariant($" of a bird of 1 kg at {celsius} °C");
        yield return new(id + "a", "total heat" + bird, Cigr, HowKnown.Memory, "W", total, 0.005, () => Watts(Given().Total));
        yield return new(id + "b", "sensible heat" + bird, Cigr, HowKnown.Memory, "W", sensible, 0.005, () => Watts(Given().Sensible));
        yield return new(id + "c", "latent heat" + bird, Cigr, HowKnown.Memory, "W", latent, 0.005, () => Watts(Given().Latent));
        yield return new(id + "d", "moisture" + bird, Cigr, HowKnown.Memory, "g/h", gramsPerHour, 0.05, () => Given().Moisture.GramsPerHour);
    }

    private static Mass Kilograms(double kilograms) => Mass.FromKilograms(kilograms);

    private static double Watts(Power power) => (double)power.Watts;
}
