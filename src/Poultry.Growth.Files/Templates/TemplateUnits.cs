namespace Poultry.Growth.Files;

/// <summary>The units in which templates are written. Every reader takes both.</summary>
public enum TemplateUnits
{
    /// <summary>Kilograms, square metres, degrees Celsius.</summary>
    Metric,

    /// <summary>Pounds, square feet, degrees Fahrenheit.</summary>
    UnitedStates,
}
