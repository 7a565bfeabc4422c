using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.CommandLine;

/// <content>Quantities, each with its unit; null where none is given, and where it is wrong, and told.</content>
internal sealed partial class OptionWords
{
    private delegate bool TryRead<T>(ReadOnlySpan<char> text, out T value, [NotNullWhen(false)] out string? problem);

    /// <summary>A weight above 0.</summary>
    public Mass? Weight(Option<string?> option) => Read<Mass>(option, QuantityText.TryMass) is { } weight && Holds(weight.Kilograms > 0, option, "a weight above 0")
        ? weight
        : null;

    /// <summary>A weight within bounds.</summary>
    public Mass? Weight(Option<string?> option, double leastGrams, double mostGrams, string expected) =>
        Read<Mass>(option, QuantityText.TryMass) is { } weight && Holds(weight.Grams >= leastGrams && weight.Grams <= mostGrams, option, expected) ? weight : null;

    public Age? Age(Option<string?> option) => Read<Age>(option, QuantityText.TryAge);

    public DateOnly? Date(Option<string?> option) => Read<DateOnly>(option, QuantityText.TryDate);

    public WeightUnit? WeightUnit(Option<string?> option) => Read<WeightUnit>(option, QuantityText.TryWeightUnit);

    public Temperature? Temperature(Option<string?> option) => Read<Temperature>(option, QuantityText.TryTemperature);

    public Duration? Duration(Option<string?> option) => Read<Duration>(option, QuantityText.TryDuration);

    public Length? Length(Option<string?> option) => Read<Length>(option, QuantityText.TryLength);

    /// <summary>An area above 0.</summary>
    public Area? Area(Option<string?> option) =>
        Read<Area>(option, QuantityText.TryArea) is { } area && Holds(area.SquareMeters > 0, option, "an area above 0") ? area : null;

    public StockingDensity? FloorLoad(Option<string?> option) => Read<StockingDensity>(option, QuantityText.TryFloorLoad);

    public AreaDensity? FieldLoad(Option<string?> option) => Read<AreaDensity>(option, QuantityText.TryFieldLoad);

    public MassFlow? DailyWeight(Option<string?> option) => Read<MassFlow>(option, QuantityText.TryDailyWeight);

    public Speed? AirSpeed(Option<string?> option) => Read<Speed>(option, QuantityText.TryAirSpeed);

    public VolumeConcentration? GasContent(Option<string?> option) => Read<VolumeConcentration>(option, QuantityText.TryGasContent);

    public Money? Money(Option<string?> option) => Read<Money>(option, QuantityText.TryMoney);

    /// <summary>A temperature that birds live in.</summary>
    public Temperature? BirdTemperature(Option<string?> option) =>
        Temperature(option) is { } air && Holds(air.DegreesCelsius is >= -20 and <= 50, option, "-20C to 50C (-4F to 122F)") ? air : null;

    /// <summary>Energy that a feed has.</summary>
    public SpecificEnergy? FeedEnergy(Option<string?> option) =>
        Read<SpecificEnergy>(option, QuantityText.TryFeedEnergy) is { } energy && Holds(energy.KilojoulesPerKilogram is >= 4184 and <= 20920, option, "1000kcal/kg to 5000kcal/kg") ? energy : null;

    /// <summary>A share as a fraction, within bounds given in percent.</summary>
    public double? Percent(Option<string?> option, double low, double high)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"{low} % to {high} %");
        return Read<double>(option, QuantityText.TryPercent) is { } share && Holds(100 * share >= low && 100 * share <= high, option, expected) ? share : null;
    }

    private T? Read<T>(Option<string?> option, TryRead<T> read)
        where T : struct => parsed.GetValue(option) is not { } text ? null : read(text, out T value, out string? problem) ? value : Nothing<T>(option, problem);
}
