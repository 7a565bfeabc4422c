using UnitsNet;

namespace Poultry.Growth.Calculators.Printing;

/// <summary>The units of tables and charts.</summary>
internal sealed class Units
{
    private readonly Func<Mass, double> measure;

    private Units(string weight, Func<Mass, double> measure) => (Weight, this.measure) = (weight, measure);

    public static Units Metric { get; } = new("kg", weight => weight.Kilograms);

    public static Units Us { get; } = new("lb", weight => weight.Pounds);

    /// <summary>Symbol of the unit of weight.</summary>
    public string Weight { get; }

    public double Of(Mass weight) => measure(weight);

    /// <summary>A weight without its symbol; a dash where there is none.</summary>
    public string Text(Mass? weight, int decimals) => weight is { } known ? Numbers.Fixed(Of(known), decimals) : "-";

    /// <summary>A figure in kg in this unit.</summary>
    public double OfKilograms(double kilograms) => measure(Mass.FromKilograms(kilograms));
}
