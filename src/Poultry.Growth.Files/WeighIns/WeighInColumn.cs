using System.Collections.Immutable;

namespace Poultry.Growth.Files;

/// <summary>What a column of a weigh-in file holds.</summary>
internal enum WeighInRole
{
    Age,
    Date,
    Weight,
    MeanWeight,
    TotalWeight,
    Birds,
    StandardDeviation,
    Sex,
    Note,
}

/// <summary>A column in use: what it holds, under which name, and in which unit.</summary>
internal sealed record WeighInColumn(WeighInRole Role, string Name, int Index, WeightUnit WeightUnit, AgeUnit AgeUnit)
{
    /// <summary>Every name that needs no option.</summary>
    public const string KnownNames =
        "age_d, age_wk or date; weight_<unit>, or mean_weight_<unit> with birds and sd_<unit>, or total_weight_<unit> with birds; sex; note; <unit> is g, kg, lb, oz or lb_oz";

    private const string AgeNames = "age_d or age_wk";

    private static readonly ImmutableArray<(string Name, WeighInRole Role, AgeUnit Unit)> Plain =
    [
        ("age_d", WeighInRole.Age, AgeUnit.Day), ("age_wk", WeighInRole.Age, AgeUnit.Week), ("date", WeighInRole.Date, default),
        ("birds", WeighInRole.Birds, default), ("sex", WeighInRole.Sex, default), ("note", WeighInRole.Note, default),
    ];

    private static readonly ImmutableArray<(string Stem, WeighInRole Role)> Weighed =
    [
        ("weight", WeighInRole.Weight), ("mean_weight", WeighInRole.MeanWeight), ("total_weight", WeighInRole.TotalWeight),
        ("sd", WeighInRole.StandardDeviation),
    ];

    public bool IsWeight => Role is WeighInRole.Weight or WeighInRole.MeanWeight or WeighInRole.TotalWeight;

    /// <summary>What the cells are to hold, as the end of a message.</summary>
    public string Expected => Role switch
    {
        WeighInRole.Age => "an age of 0 or more in " + (AgeUnit == AgeUnit.Day ? "d" : "wk"),
        WeighInRole.Date => "a date as year, month and day, as in 2027-04-12",
        WeighInRole.Weight => "a weight above 0 in " + Symbol,
        WeighInRole.MeanWeight => "a mean weight above 0 in " + Symbol,
        WeighInRole.TotalWeight => "a total weight above 0 in " + Symbol,
        WeighInRole.StandardDeviation => "a standard deviation above 0 in " + Symbol + ", or nothing where it is not known",
        WeighInRole.Birds => "a whole number of birds, 1 to 1000000",
        WeighInRole.Sex => "male, female, mixed or nothing",
        _ => "text",
    };

    private string Symbol => WeightUnit switch
    {
        WeightUnit.Gram => "g",
        WeightUnit.Kilogram => "kg",
        WeightUnit.Pound => "lb",
        WeightUnit.Ounce => "oz",
        _ => "pounds:ounces, as in 5:11",
    };

    /// <summary>The column of this name, or what is wrong with the name as the end of a message and what was expected.</summary>
    public static (WeighInColumn? Column, string Fault, string Expected) Named(string name, int index)
    {
        foreach ((string known, WeighInRole role, AgeUnit unit) in Plain)
        {
            if (name.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                return (new(role, name, index, default, unit), "", "");
            }
        }

        foreach ((string stem, WeighInRole role) in Weighed)
        {
            string units = stem + "_g, " + stem + "_kg, " + stem + "_lb, " + stem + "_oz or " + stem + "_lb_oz";
            if (name.Equals(stem, StringComparison.OrdinalIgnoreCase))
            {
                return (null, "has no unit", units);
            }

            if (name.StartsWith(stem + "_", StringComparison.OrdinalIgnoreCase))
            {
                return QuantityText.TryWeightUnit(name.AsSpan(stem.Length + 1), out WeightUnit unit, out _)
                    ? (new(role, name, index, unit, default), "", "")
                    : (null, "has an unknown unit", units);
            }
        }

        return name.Equals("age", StringComparison.OrdinalIgnoreCase) ? (null, "has no unit", AgeNames)
            : name.StartsWith("age_", StringComparison.OrdinalIgnoreCase) ? (null, "has an unknown unit", AgeNames)
            : (null, "is no known column", KnownNames);
    }
}
