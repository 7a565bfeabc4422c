using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>The least air that birds need in the cold, by their weight: c W^0.75. It keeps the air breathable and need not keep litter dry.</summary>
public sealed class MinimumVentilation
{
    private const double SecondsPerHour = 3600;
    private readonly double cubicMetersPerSecond;

    private MinimumVentilation(double cubicMetersPerSecond, ModelInfo model) => (this.cubicMetersPerSecond, Model) = (cubicMetersPerSecond, model);

    /// <summary>1.5e-4 m³/s for kg^0.75 (0.54 m³/h), as read. What to use.</summary>
    public static MinimumVentilation BritishPoultryScience1981 { get; } = new(1.5e-4, Describe(
        "minimum-ventilation-1981",
        "Least ventilation by weight, 1981",
        "V = 1.5e-4 W^0.75; V = 2 F by feed",
        new Citation("BrPoultSci1981", "British Poultry Science 1981, 22:493-498", HowKnown.ReadInSource, "abstract"),
        HowKnown.ReadInSource,
        new ModelSymbol("F", "feed eaten a day", "t/d")));

    /// <summary>1.56e-4 m³/s for kg^0.75 as recalled: for comparison, never a default.</summary>
    public static MinimumVentilation Recalled { get; } = new(1.56e-4, Describe(
        "minimum-ventilation-recalled",
        "Least ventilation by weight, as recalled",
        "V = 1.56e-4 W^0.75",
        new Citation("VentilationRule", "A rule of handbooks, not at hand", HowKnown.Memory, "recalled, unverified"),
        HowKnown.Memory));

    /// <summary>Moisture and ammonia may need more.</summary>
    public static Caution MoistureMayNeedMore { get; } = new(
        "moisture-may-need-more",
        "This is the least air for breathing. Moisture, not oxygen, mostly sets the rate, and after about five weeks ammonia may: go by dry litter, your nose and a gas tube, and raise it.");

    /// <summary>Equation and source.</summary>
    public ModelInfo Model { get; }

    /// <summary>For one bird.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public VolumeFlow PerBird(Mass weight) => VolumeFlow.FromCubicMetersPerHour(
        cubicMetersPerSecond * SecondsPerHour * Math.Pow(Require.Positive(weight.Kilograms, "kg", nameof(weight)), 0.75));

    /// <summary>By the feed that birds eat: 2 m³/s for a tonne a day, the other rule of the same paper.</summary>
    /// <param name="feed">Of all birds, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public static VolumeFlow FromFeed(MassFlow feed) =>
        VolumeFlow.FromCubicMetersPerHour(2 * SecondsPerHour * Require.NotNegative(feed.KilogramsPerDay, "kg/d", nameof(feed)) / 1000);

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Describe(string id, string name, string equation, Citation source, HowKnown howKnown, params ModelSymbol[] more) => new(
        id,
        name,
        equation,
        [new("V", "least ventilation", "m3/s"), new("W", "live weight of a bird", "kg"), .. more],
        [source],
        "The figures of 1981 are for the birds of that day; a modern bird of 1.6 kg gives off about 1.3 times the heat of one of 1968. The carbon dioxide balance follows modern birds.",
        howKnown);
}
