using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>The point of a growth curve where gain is highest.</summary>
public sealed class Inflection
{
    internal Inflection(double days, double kilograms, double kilogramsPerDay) =>
        (Age, Weight, Gain) = (Age.FromDays(days), Mass.FromKilograms(kilograms), MassFlow.FromKilogramsPerDay(kilogramsPerDay));

    /// <summary>The age of highest gain.</summary>
    public Age Age { get; }

    /// <summary>The live weight at that age.</summary>
    public Mass Weight { get; }

    /// <summary>The highest gain a day.</summary>
    public MassFlow Gain { get; }

    /// <summary>As in <c>39.3 d, 2.683 kg (5.92 lb), 105.8 g (3.73 oz) a day</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Age.Days:0.#} d, {WeightText.Of(Weight.Kilograms)}, {WeightText.Of(Gain.KilogramsPerDay)} a day");
}
