using System.Collections.Frozen;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Files;

/// <summary>The units in which limits are printed, and what makes them the one unit in which each subject is judged.</summary>
internal static class LimitMeasures
{
    private const double SquareMetersPerSquareFoot = 0.3048 * 0.3048;
    private const double AcresPerHectare = 10_000 / (43_560 * SquareMetersPerSquareFoot);
    private const double FahrenheitDegree = 5.0 / 9;

    /// <summary>By the unit in which a subject is judged: what else may be printed, how much of the judged unit one of it is, and where it counts from.</summary>
    private static readonly FrozenDictionary<string, Measure[]> ByUnit = new Dictionary<string, Measure[]>
    {
        ["kg/m2"] = [new("kg/m2", 1), new("lb/ft2", QuantityText.KilogramsPerPound / SquareMetersPerSquareFoot)],
        ["birds/m2"] = [new("birds/m2", 1), new("birds/ft2", 1 / SquareMetersPerSquareFoot)],
        ["m2/bird"] = [new("m2/bird", 1), new("ft2/bird", SquareMetersPerSquareFoot)],
        ["birds/ha"] = [new("birds/ha", 1), new("birds/acre", AcresPerHectare)],
        ["birds"] = [new("birds", 1)],
        ["birds/yr"] = [new("birds/yr", 1)],
        ["m2"] = [new("m2", 1), new("ft2", SquareMetersPerSquareFoot)],
        ["d"] = [new("d", 1), new("wk", 7)],
        ["kg"] = [new("kg", 1), new("g", 0.001), new("lb", QuantityText.KilogramsPerPound)],
        ["ppm"] = [new("ppm", 1)],
        ["C"] = [new("C", 1), new("F", FahrenheitDegree, 32)],
        ["K"] = [new("C", 1), new("F", FahrenheitDegree)],
        ["%"] = [new("%", 1)],
        ["lux"] = [new("lux", 1)],
        ["m3/h/kg"] = [new("m3/h/kg", 1)],
        ["cm/kg"] = [new("cm/kg", 1), new("in/lb", 2.54 / QuantityText.KilogramsPerPound)],
        ["cm/bird"] = [new("cm/bird", 1), new("in/bird", 2.54)],
        ["m/100 m2"] = [new("m/100 m2", 1)],
        ["cm2/kg"] = [new("cm2/kg", 1), new("in2/lb", 2.54 * 2.54 / QuantityText.KilogramsPerPound)],
        ["cm2/chick"] = [new("cm2/chick", 1), new("in2/chick", 2.54 * 2.54)],
        ["cm"] = [new("cm", 1), new("in", 2.54)],
        ["kg/ha/yr"] = [new("kg/ha/yr", 1), new("kg N/ha/yr", 1), new("lb/ac/yr", QuantityText.KilogramsPerPound * AcresPerHectare)],
        ["h"] = [new("h", 1), new("d", 24)],
    }.ToFrozenDictionary();

    /// <summary>A unit of a subject; null where it is none.</summary>
    public static Measure? In(LimitSubject subject, string unit)
    {
        foreach (Measure measure in ByUnit[LimitUnits.Of(subject)])
        {
            if (measure.Symbol.Equals(unit, StringComparison.OrdinalIgnoreCase))
            {
                return measure;
            }
        }

        return null;
    }

    /// <summary>What a subject may be printed in: <c>kg/m2 or lb/ft2</c>.</summary>
    public static string Accepted(LimitSubject subject) => string.Join(" or ", ByUnit[LimitUnits.Of(subject)].Select(measure => measure.Symbol));

    internal readonly record struct Measure(string Symbol, double Size, double Zero = 0)
    {
        public double Of(double number) => (number - Zero) * Size;
    }
}
