using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>What a guide asks for chicks of one span of age. What it does not say is null.</summary>
public sealed class BroodingStage
{
    internal BroodingStage(Age from, Age? to) => (From, To) = (from, to);

    /// <summary>The youngest age.</summary>
    public Age From { get; }

    /// <summary>The age at which the stage ends; null where it goes on.</summary>
    public Age? To { get; }

    /// <summary>Temperature at the chicks' height, at the edge of the hover.</summary>
    public (Temperature Low, Temperature High)? Temperature { get; internal init; }

    /// <summary>Floor of each bird: at least, and ample.</summary>
    public (Area Least, Area Ample)? FloorPerBird { get; internal init; }

    /// <summary>Feeder edge of each bird: at least, and ample.</summary>
    public (Length Least, Length Ample)? FeederPerBird { get; internal init; }

    /// <summary>Drinker edge of each bird: at least, and ample.</summary>
    public (Length Least, Length Ample)? DrinkerPerBird { get; internal init; }

    /// <summary>As in <c>0 d to 7 d: 33.9 to 35 °C (93 to 95 °F)</c>, in every culture; what the guide does not say is left out.</summary>
    public override string ToString() => From + (To is { } to ? " to " + to : " on") + ":"
        + (Temperature is var (low, high) ? string.Create(CultureInfo.InvariantCulture, $" {low.DegreesCelsius:0.#} to {high.DegreesCelsius:0.#} °C ({low.DegreesFahrenheit:0} to {high.DegreesFahrenheit:0} °F)") : "")
        + (FloorPerBird is var (least, _) ? string.Create(CultureInfo.InvariantCulture, $" {least.SquareMeters:0.###} m2 ({least.SquareFeet:0.##} ft2) a bird or more") : "");

    internal bool Holds(double days) => days >= From.Days && !(To is { } to && days >= to.Days);

    /// <summary>A stage by whole weeks of life, the first being week 1; null ends nowhere.</summary>
    internal static BroodingStage Weeks(
        int first,
        int? last,
        (double Low, double High)? fahrenheit = null,
        (double Least, double Ample)? squareFeet = null,
        (double Least, double Ample)? feederInches = null,
        (double Least, double Ample)? drinkerInches = null) => new(Age.FromWeeks(first - 1), last is { } end ? Age.FromWeeks(end) : null)
        {
            Temperature = fahrenheit is var (cool, warm) ? (UnitsNet.Temperature.FromDegreesFahrenheit(cool), UnitsNet.Temperature.FromDegreesFahrenheit(warm)) : null,
            FloorPerBird = squareFeet is var (floor, more) ? (Area.FromSquareFeet(floor), Area.FromSquareFeet(more)) : null,
            FeederPerBird = feederInches is var (feeder, longer) ? (Length.FromInches(feeder), Length.FromInches(longer)) : null,
            DrinkerPerBird = drinkerInches is var (drinker, wider) ? (Length.FromInches(drinker), Length.FromInches(wider)) : null,
        };
}
