using System.Globalization;
using Poultry.Growth.Curves;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>A parameter of a fitted curve with its standard error.</summary>
public sealed class FittedParameter
{
    internal FittedParameter(CurveParameter parameter, double value, double standardError) =>
        (Parameter, Value, StandardError) = (parameter, value, standardError);

    /// <summary>What it is, with its unit.</summary>
    public CurveParameter Parameter { get; }

    /// <summary>The estimate, in the unit of <see cref="Parameter"/>.</summary>
    public double Value { get; }

    /// <summary>Its standard error, in the same unit: from the curve's slope at the optimum. For limits that hold far from it see <see cref="GrowthFit.ProfileLimits"/>.</summary>
    public double StandardError { get; }

    /// <summary>As in <c>mature weight 7.294 ± 0.031 kg (16.08 ± 0.068 lb)</c>, in every culture.</summary>
    public override string ToString() => Parameter.Name + " " + Figure(Value, StandardError) + Parameter.Unit switch
    {
        "-" => "",
        "kg" => " kg (" + Figure(Mass.FromKilograms(Value).Pounds, Mass.FromKilograms(StandardError).Pounds) + " lb)",
        var unit => " " + unit,
    };

    private static string Figure(double value, double error) => string.Create(CultureInfo.InvariantCulture, $"{value:G4} ± {error:G2}");
}
