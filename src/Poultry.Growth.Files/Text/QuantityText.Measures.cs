using System.Diagnostics.CodeAnalysis;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <content>Temperatures, times, places, feed, money and air.</content>
public static partial class QuantityText
{
    private const double MetersPerFoot = 0.3048;
    private const double SquareMetersPerHectare = 10_000;
    private const double SquareMetersPerAcre = 43_560 * MetersPerFoot * MetersPerFoot;
    private const double MegajoulesPerKilocalorie = 0.004184;

    private static readonly UnitTable Temperatures = new("a temperature", "21C", [new("C", 1), new("F", 5.0 / 9, 32)], belowZero: true);

    private static readonly UnitTable Times = new("a time", "12h", [new("min", 1.0 / 60), new("h", 1), new("d", 24), new("wk", 168)]);

    private static readonly UnitTable Lengths = new("a length", "97cm", [new("mm", 0.001), new("cm", 0.01), new("m", 1), new("in", MetersPerFoot / 12), new("ft", MetersPerFoot)]);

    private static readonly UnitTable Areas = new("an area", "12m2", [new("cm2", 1e-4), new("m2", 1), new("ft2", MetersPerFoot * MetersPerFoot), new("ha", SquareMetersPerHectare), new("ac", SquareMetersPerAcre)]);

    private static readonly UnitTable FloorLoads = new("a weight on a floor", "33kg/m2", [new("kg/m2", 1), new("lb/ft2", KilogramsPerPound / (MetersPerFoot * MetersPerFoot))]);

    private static readonly UnitTable FieldLoads = new("a weight on a field", "170kg/ha", [new("kg/ha", 1 / SquareMetersPerHectare), new("lb/ac", KilogramsPerPound / SquareMetersPerAcre)]);

    private static readonly UnitTable FeedEnergies = new("the energy of a feed", "3100kcal/kg", [new("kcal/kg", MegajoulesPerKilocalorie), new("kcal/lb", MegajoulesPerKilocalorie / KilogramsPerPound), new("MJ/kg", 1)]);

    private static readonly UnitTable DailyWeights = new("a weight a day", "55g/d", [new("g/d", 0.001), new("kg/d", 1), new("lb/d", KilogramsPerPound), new("oz/d", KilogramsPerOunce)]);

    private static readonly UnitTable Prices = new("a price by weight", "9.50/kg", [new("/kg", 1), new("/lb", 1 / KilogramsPerPound)]);

    private static readonly UnitTable AirSpeeds = new("a speed of air", "0.5m/s", [new("m/s", 1), new("ft/min", MetersPerFoot / 60), new("km/h", 1 / 3.6), new("mph", 5280 * MetersPerFoot / 3600)]);

    private static readonly UnitTable GasContents = new("a content of gas", "3000ppm", [new("ppm", 1)]);

    /// <summary>Reads a temperature: <c>21C</c>, <c>70F</c>, <c>-4.5C</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="temperature">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryTemperature(ReadOnlySpan<char> text, out Temperature temperature, [NotNullWhen(false)] out string? problem) =>
        Temperatures.TryRead(text, number => Temperature.FromDegreesCelsius(number), out temperature, out problem);

    /// <summary>Reads a time: <c>90min</c>, <c>12h</c>, <c>3d</c>, <c>2wk</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="time">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryDuration(ReadOnlySpan<char> text, out Duration time, [NotNullWhen(false)] out string? problem) =>
        Times.TryRead(text, number => Duration.FromHours(number), out time, out problem);

    /// <summary>Reads a length: <c>97cm</c>, <c>25mm</c>, <c>3.5m</c>, <c>8in</c>, <c>3ft</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="length">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryLength(ReadOnlySpan<char> text, out Length length, [NotNullWhen(false)] out string? problem) =>
        Lengths.TryRead(text, number => Length.FromMeters(number), out length, out problem);

    /// <summary>Reads an area: <c>12m2</c>, <c>550cm2</c>, <c>120ft2</c>, <c>0.4ha</c>, <c>1ac</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="area">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryArea(ReadOnlySpan<char> text, out Area area, [NotNullWhen(false)] out string? problem) =>
        Areas.TryRead(text, number => Area.FromSquareMeters(number), out area, out problem);

    /// <summary>Reads a weight of birds on a floor: <c>33kg/m2</c>, <c>6.5lb/ft2</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="density">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryFloorLoad(ReadOnlySpan<char> text, out StockingDensity density, [NotNullWhen(false)] out string? problem) =>
        FloorLoads.TryRead(text, StockingDensity.FromKilogramsPerSquareMeter, out density, out problem);

    /// <summary>Reads a weight on a field: <c>170kg/ha</c>, <c>150lb/ac</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="load">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryFieldLoad(ReadOnlySpan<char> text, out AreaDensity load, [NotNullWhen(false)] out string? problem) =>
        FieldLoads.TryRead(text, number => AreaDensity.FromKilogramsPerSquareMeter(number), out load, out problem);

    /// <summary>Reads the energy of a feed: <c>3100kcal/kg</c>, <c>1400kcal/lb</c>, <c>13MJ/kg</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="energy">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryFeedEnergy(ReadOnlySpan<char> text, out SpecificEnergy energy, [NotNullWhen(false)] out string? problem) =>
        FeedEnergies.TryRead(text, number => SpecificEnergy.FromMegajoulesPerKilogram(number), out energy, out problem);

    /// <summary>Reads a weight a day: <c>55g/d</c>, <c>0.12lb/d</c>, <c>2oz/d</c>, <c>0.05kg/d</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="rate">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryDailyWeight(ReadOnlySpan<char> text, out MassFlow rate, [NotNullWhen(false)] out string? problem) =>
        DailyWeights.TryRead(text, kilograms => MassFlow.FromGramsPerDay(1000 * kilograms), out rate, out problem);

    /// <summary>Reads a price by weight: <c>9.50/kg</c>, <c>4.30/lb</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="price">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryUnitPrice(ReadOnlySpan<char> text, out UnitPrice price, [NotNullWhen(false)] out string? problem) =>
        Prices.TryRead(text, UnitPrice.FromAmountPerKilogram, out price, out problem);

    /// <summary>Reads a speed of air: <c>0.5m/s</c>, <c>100ft/min</c>, <c>5km/h</c>, <c>3mph</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="speed">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryAirSpeed(ReadOnlySpan<char> text, out Speed speed, [NotNullWhen(false)] out string? problem) =>
        AirSpeeds.TryRead(text, number => Speed.FromMetersPerSecond(number), out speed, out problem);

    /// <summary>Reads a content of gas in air: <c>3000ppm</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="content">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryGasContent(ReadOnlySpan<char> text, out VolumeConcentration content, [NotNullWhen(false)] out string? problem) =>
        GasContents.TryRead(text, number => VolumeConcentration.FromPartsPerMillion(number), out content, out problem);

    /// <summary>Reads an amount of money of 0 or more, in the farm's own currency: <c>9.50</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="money">What it says, where it is one.</param>
    /// <param name="problem">What is wrong and what was expected, in one line, where it is not.</param>
    public static bool TryMoney(ReadOnlySpan<char> text, out Money money, [NotNullWhen(false)] out string? problem)
    {
        ReadOnlySpan<char> number = text.Trim();
        string? fault = NumberText.Fault(number, out double amount) ?? (amount < 0 ? "is below 0" : null);
        problem = fault is null ? null : FileProblem.Quoted(text.ToString()) + " " + fault + "; expected an amount of money without a sign for the currency, as in 9.50";
        money = fault is null ? Money.Of(amount) : default;
        return fault is null;
    }
}
