using System.Collections.Immutable;
using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>How much energy a growing meat bird needs a day, from its weight and gain, the temperature and its age: the published ways, each a named model.</summary>
/// <remarks>
/// <see cref="HeatProduction"/> is the default for fast-growing birds, <see cref="Liu2017"/> for slow ones. They were chosen after looking at the tables with
/// which docs/conformance/feed-tables.md compares all of them. Every model speaks of birds that eat as they like and grow near what their type does so.
/// </remarks>
public abstract class EnergyModel
{
    private static readonly Mass UsualHatchWeight = Mass.FromGrams(42);

    private readonly BodyComposition males, females;

    private protected EnergyModel(BodyComposition males, BodyComposition females) => (this.males, this.females) = (males, females);

    /// <summary>Measured heat of fed birds and energy retained: the default for fast-growing birds.</summary>
    public static EnergyModel HeatProduction { get; } = HeatProductionFrom(UsualHatchWeight);

    /// <summary>Maintenance by temperature of 2005, and deposition of protein and fat.</summary>
    public static EnergyModel Sakomura2005 { get; } = FactorialEnergy.Sakomura(UsualHatchWeight);

    /// <summary>Maintenance by temperature of 2006, and energy a gram of gain by sex and age: the steps smoothed, the odd female value replaced.</summary>
    public static EnergyModel Longo2006 { get; } = new GainCostEnergy(GainCost.Smoothed);

    /// <summary>The same, smoothed, with the female value of 43 to 56 d as printed (7.04 kcal/g).</summary>
    public static EnergyModel Longo2006OddFemale { get; } = new GainCostEnergy(GainCost.SmoothedAsPrinted);

    /// <summary>The same in the printed steps: need jumps at 21 and 42 d.</summary>
    public static EnergyModel Longo2006Steps { get; } = new GainCostEnergy(GainCost.Steps);

    /// <summary>Maintenance of 2017 and deposition: the default for slow-growing birds.</summary>
    public static EnergyModel Liu2017 { get; } = FactorialEnergy.Liu(UsualHatchWeight);

    /// <summary>Maintenance of 2004 and deposition: a second opinion for slow-growing birds.</summary>
    public static EnergyModel Fraga2004 { get; } = FactorialEnergy.Fraga(UsualHatchWeight);

    /// <summary>Maintenance by live weight itself and deposition, one composition for both sexes: a second opinion for fast-growing birds.</summary>
    public static EnergyModel DarmaniKuhi2003 { get; } = FactorialEnergy.DarmaniKuhi();

    /// <summary>All of them, the defaults first.</summary>
    public static IReadOnlyList<EnergyModel> All { get; } = ImmutableArray.Create(
        HeatProduction, Liu2017, Sakomura2005, DarmaniKuhi2003, Fraga2004, Longo2006, Longo2006OddFemale, Longo2006Steps);

    /// <summary>What it is, where it comes from, where it fails.</summary>
    public abstract ModelInfo Model { get; }

    /// <summary>Standard error of cumulative feed by this model where its type of bird is fed as it likes, as a fraction; what it rests on stands in docs/feeding.md.</summary>
    internal abstract double CumulativeError { get; }

    /// <summary>The same of a single day or week.</summary>
    internal abstract double DailyError { get; }

    /// <summary>What the model calls the part that is not gain.</summary>
    internal virtual string MaintenanceWord => "maintenance";

    /// <summary>The default model with birds that hatched at another weight than 42 g.</summary>
    /// <param name="hatchWeight">Live weight at hatch, 20 to 80 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is out of range.</exception>
    public static EnergyModel HeatProductionFrom(Mass hatchWeight) => new HeatProductionEnergy(hatchWeight);

    /// <summary>The default for a type of bird.</summary>
    public static EnergyModel DefaultFor(BirdType type) => type == BirdType.Fast ? HeatProduction : Liu2017;

    /// <summary>What a bird needs a day.</summary>
    /// <param name="sex">Of the bird; mixed is the mean of a cockerel and a pullet of this weight and gain.</param>
    /// <param name="weight">Live weight, 10 g to 12 kg with half a day's gain either way.</param>
    /// <param name="gain">Gain a day, finite; a bird that loses weight has a negative one.</param>
    /// <param name="temperature">Of the air around the bird, -20 to 50 °C.</param>
    /// <param name="age">Of the bird, any: the default model compares with the temperature of a standard house at this age, one model has costs by age.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight is outside the range, or the temperature is outside -20 to 50 °C.</exception>
    public EnergyNeed Need(Sex sex, Mass weight, MassFlow gain, Temperature temperature, Age age)
    {
        double grams = weight.Grams;
        double half = Require.Finite(gain.GramsPerDay, "g/d", nameof(gain)) / 2;
        RequireWeight(grams - Math.Abs(half), nameof(weight));
        RequireWeight(grams + Math.Abs(half), nameof(weight));
        BirdDay day = new(true, grams - half, grams, grams + half, Temperatures.Sane(temperature, nameof(temperature)), age.Days);
        EnergyParts parts = sex switch
        {
            Sex.Male => On(day),
            Sex.Female => On(day with { Male = false }),
            _ => EnergyParts.Mean(On(day), On(day with { Male = false })),
        };
        return new EnergyNeed(this, parts, OutsideRanges(grams / 1000, day.Celsius, age.Days));
    }

    /// <summary>The name.</summary>
    public override string ToString() => Model.Name;

    /// <summary>The parts of one day.</summary>
    internal abstract EnergyParts On(in BirdDay day);

    /// <summary>Cautions for what lies outside the ranges in which the model was measured.</summary>
    internal IReadOnlyList<Caution> OutsideRanges(double kilograms, double celsius, double ageDays) =>
    [
        .. Model.Ranges.Select(range => range.Quantity switch
        {
            "live weight" => Outside(range, kilograms),
            "temperature" => Outside(range, celsius),
            _ => Outside(range, ageDays),
        }).OfType<Caution>(),
    ];

    /// <summary>Whether a value of one kind lies outside the range in which the model was measured.</summary>
    internal bool IsOutside(string quantity, double value) => Model.Ranges.Any(range => range.Quantity == quantity && !range.Contains(value));

    /// <summary>Protein and fat put on in a day, g.</summary>
    private protected (double Protein, double Fat) Deposited(in BirdDay day)
    {
        BodyComposition body = day.Male ? males : females;
        (double protein, double fat) = body.At(day.StartGrams);
        (double laterProtein, double laterFat) = body.At(day.EndGrams);
        return (laterProtein - protein, laterFat - fat);
    }

    private static void RequireWeight(double grams, string name) => Require.Between(grams, BodyComposition.LeastGrams, BodyComposition.MostGrams, "g", name);

    private static Caution? Outside(ValidityRange range, double value) => range.Contains(value)
        ? null
        : new("outside-" + range.Quantity.Replace(' ', '-'), string.Create(
            CultureInfo.InvariantCulture, $"The model was measured at {range}; {value:0.##} {range.Unit} lies outside."));
}
