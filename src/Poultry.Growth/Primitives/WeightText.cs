using System.Globalization;

namespace Poultry.Growth.Primitives;

/// <summary>Weights in sentences, metric with pounds or ounces behind: a sentence of the library must serve every grower.</summary>
internal static class WeightText
{
    /// <summary>The pound, exactly.</summary>
    internal const double KilogramsPerPound = 0.45359237;

    /// <summary>
    /// As in <c>2.043 kg (4.5 lb)</c>, below a kilogram <c>148 g (5.22 oz)</c>, from 10 t on <c>12500 kg (27558 lb)</c>, in every culture. From 100 t on it is no weight of birds, and a power of ten says so.
    /// </summary>
    public static string Of(double kilograms)
    {
        double pounds = kilograms / KilogramsPerPound;
        return Math.Abs(kilograms) switch
        {
            < 1 => string.Create(CultureInfo.InvariantCulture, $"{1000 * kilograms:0.#} g ({16 * pounds:0.##} oz)"),
            < 1e4 => string.Create(CultureInfo.InvariantCulture, $"{kilograms:0.###} kg ({pounds:0.##} lb)"),
            < 1e5 => string.Create(CultureInfo.InvariantCulture, $"{kilograms:0} kg ({pounds:0} lb)"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{kilograms:G2} kg ({pounds:G2} lb)"),
        };
    }
}
