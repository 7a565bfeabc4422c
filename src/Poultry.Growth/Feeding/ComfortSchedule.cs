using System.Collections.Immutable;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>At which temperature birds are comfortable, by age, as sources say; by weight see <see cref="FastingHeat.CriticalTemperature"/>.</summary>
/// <remarks>They part by up to ten degrees: the temperature of least heat is not that of best growth. Birds that huddle are cold, birds that pant are hot.</remarks>
public sealed class ComfortSchedule
{
    private readonly double[] celsiusByWeek;

    private ComfortSchedule(ModelInfo model, params double[] celsiusByWeek) => (Model, this.celsiusByWeek) = (model, celsiusByWeek);

    /// <summary>Brooding of birds that go to pasture: 95 °F in the first week, 5 °F less each week, down to 70 °F.</summary>
    public static ComfortSchedule PastureBrooding { get; } = new(
        Info(
            "comfort-pasture-brooding",
            "Brooding temperature of birds for pasture",
            "T = max(70, 95 - 5 (n - 1)) °F, week n",
            new Citation("MissouriPastured", "University of Missouri, guide to pastured poultry", HowKnown.Secondary, "90 to 95 °F, 5 °F less a week, to 70 °F"),
            "Practice of extension. In one trial 28 to 32 °C at the start, falling by 0.3 °C a day, made no difference to 21 d, though the coldest start cost chicks in the first week; an old trial found a sharp best at 94 to 95 °F on day 1, 88 on day 9, 80 on day 18, 66 on day 32.",
            56),
        [.. Enumerable.Range(0, 6).Select(week => Temperature.FromDegreesFahrenheit(Math.Max(70, 95 - (5 * week))).DegreesCelsius)]);

    /// <summary>Lower end of comfort in a respiration chamber: 35 °C in weeks 1 and 2, 30 in 3 to 6, 25 in 7 and 8.</summary>
    public static ComfortSchedule Chamber { get; } = new(
        Info(
            "comfort-chamber",
            "Critical temperature in a respiration chamber",
            "T = 35 in weeks n of 1 and 2, 30 in 3 to 6, 25 in 7 and 8, °C",
            new Citation("RespirationChamber", "Respiration chamber study at 5 to 35 °C, Tetra B birds (authors not identified)", HowKnown.ReadInSource, "abstract"),
            "Heat rises by 20 kJ/kg^0.75 a day for each degree below it at first, 10 to 15 in weeks 6 and 7, 4 to 5 later. Least heat, not best growth: that was at 18.9 °C on day 32 in an old trial, fed maintenance is least at 25 °C at all sizes, and birds over 3.2 kg perform worse above an index of 21 °C.",
            56),
        35, 35, 30, 30, 30, 30, 25, 25);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ComfortSchedule> All { get; } = ImmutableArray.Create(PastureBrooding, Chamber);

    /// <summary>What it is and where it comes from.</summary>
    public ModelInfo Model { get; }

    /// <summary>The temperature in the week of this age; after the last week of the source, that of the last.</summary>
    /// <param name="age">Any.</param>
    public Temperature At(Age age) => Temperature.FromDegreesCelsius(celsiusByWeek[Math.Min(celsiusByWeek.Length - 1, (int)age.Weeks)]);

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Info(string id, string name, string equation, Citation source, string accuracy, double lastDays) => new(
        id,
        name,
        equation,
        [new("T", "temperature at the birds", "as said"), new("n", "week of life", "-")],
        [source],
        accuracy,
        source.HowKnown,
        [new ValidityRange("age", 0, lastDays, "d")]);
}
