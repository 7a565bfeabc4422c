namespace Poultry.Growth.Files;

/// <summary>A unit in which weights are written in files and on the command line.</summary>
public enum WeightUnit
{
    /// <summary>g.</summary>
    Gram,

    /// <summary>kg.</summary>
    Kilogram,

    /// <summary>lb, with decimals.</summary>
    Pound,

    /// <summary>oz, with decimals: a sixteenth of a pound.</summary>
    Ounce,

    /// <summary>Pounds and ounces: <c>5lb11oz</c>, or <c>5:11</c> in a column of a file.</summary>
    PoundAndOunce,
}
