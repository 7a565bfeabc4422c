using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Limits and their conditions in words, and the one place where a figure is held against another.</summary>
internal static class LimitText
{
    /// <summary>Figures that agree to twelve digits are the same figure: 27 birds on 2.7 m² are 10 birds/m² and not a rounding more.</summary>
    private const double SameFigure = 1e-12;

    public static bool Holds(LimitComparison comparison, double value, double figure)
    {
        double slack = SameFigure * Math.Max(Math.Abs(value), Math.Abs(figure));
        return comparison switch
        {
            LimitComparison.Below => value < figure - slack,
            LimitComparison.AtMost => value <= figure + slack,
            LimitComparison.AtLeast => value >= figure - slack,
            LimitComparison.Above => value > figure + slack,
            _ => Math.Abs(value - figure) <= slack,
        };
    }

    /// <summary>As in <c>500 birds or more</c>.</summary>
    public static string Side(LimitComparison comparison, LimitSubject subject, double figure)
    {
        string amount = Figure(subject, figure);
        return comparison switch
        {
            LimitComparison.Below => "below " + amount,
            LimitComparison.AtMost => amount + " or less",
            LimitComparison.AtLeast => amount + " or more",
            LimitComparison.Above => "above " + amount,
            _ => amount,
        };
    }

    public static string Sign(LimitComparison comparison) => comparison switch
    {
        LimitComparison.Below => "<",
        LimitComparison.AtMost => "<=",
        LimitComparison.AtLeast => ">=",
        LimitComparison.Above => ">",
        _ => "=",
    };

    /// <summary>A figure with its unit; weights and room in both systems: a sentence of the library must serve every grower.</summary>
    public static string Figure(LimitSubject subject, double value) => subject switch
    {
        LimitSubject.StockingDensity or LimitSubject.MeanStockingDensity or LimitSubject.OutdoorStockingDensity => StockingDensity.FromKilogramsPerSquareMeter(value).ToString(),
        LimitSubject.BirdWeight or LimitSubject.CarcassWeight => WeightText.Of(value),
        LimitSubject.FloorAreaPerBird or LimitSubject.OutdoorAreaPerBird => string.Create(
            CultureInfo.InvariantCulture, $"{value:0.###} m2 ({Area.FromSquareMeters(value).SquareFeet:0.##} ft2) a bird"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{value:0.####} {LimitUnits.Of(subject)}"),
    };

    /// <summary>A subject in words: <c>flock size</c>.</summary>
    public static string Words(LimitSubject subject) => Spaced(subject.ToString());

    /// <summary>A way of keeping birds in words: <c>free range</c>.</summary>
    public static string Words(RearingSystem system) => Spaced(system.ToString());

    private static string Spaced(string name) => string.Concat(name.Select((letter, at) =>
        at > 0 && char.IsAsciiLetterUpper(letter) ? " " + char.ToLowerInvariant(letter) : char.ToLowerInvariant(letter).ToString()));
}
