using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>The plant's or the haulier's own rule for hot days: above a temperature so many fewer birds to a crate. The library brings none, for none was found in a text.</summary>
public sealed class HeatRule
{
    private HeatRule(double celsius, double fewer, string whose) => (Above, Fewer, Whose) = (Temperature.FromDegreesCelsius(celsius), Probability.FromFraction(fewer), whose);

    /// <summary>Above this outside temperature it holds.</summary>
    public Temperature Above { get; }

    /// <summary>The share of the birds left out of each crate.</summary>
    public Probability Fewer { get; }

    /// <summary>Whose rule it is.</summary>
    public string Whose { get; }

    /// <summary>States the rule.</summary>
    /// <param name="above">-20 to 60 °C.</param>
    /// <param name="fewer">The share of the birds left out of each crate, 0 to 99 %.</param>
    /// <param name="whose">As in <c>the plant's</c>.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static HeatRule Of(Temperature above, Probability fewer, string whose) => new(
        Require.Between(above.DegreesCelsius, -20, 60, "°C", nameof(above)), Require.Between(fewer.Fraction, 0, 0.99, "", nameof(fewer)), Require.Text(whose));

    /// <summary>Birds to a crate at a temperature, rounded down.</summary>
    internal int Birds(int birds, Temperature outside) =>
        outside.DegreesCelsius > Above.DegreesCelsius ? (int)Math.Floor(birds * (1 - Fewer.Fraction) * (1 + 1e-12)) : birds;

    /// <summary>One line, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Whose} rule: {Fewer} fewer birds above {Above.DegreesCelsius:0.#} °C ({Above.DegreesFahrenheit:0.#} °F)");
}
