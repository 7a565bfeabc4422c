using System.Diagnostics.CodeAnalysis;

namespace Poultry.Growth.Files;

/// <summary>The columns of a weigh-in file, by what they hold.</summary>
internal sealed class WeighInHeader
{
    private readonly Dictionary<WeighInRole, WeighInColumn> columns = [];
    private readonly List<string> ignored = [];
    private readonly List<string> refused = [];
    private readonly CsvRow row;
    private readonly WeighInFileOptions options;
    private readonly ProblemList problems;

    private WeighInHeader(CsvRow row, WeighInFileOptions options, ProblemList problems)
    {
        (this.row, this.options, this.problems) = (row, options, problems);
        Width = RowWidth.Of(row);
    }

    /// <summary>How many cells a row has.</summary>
    public int Width { get; }

    /// <summary>Columns that the options made useless.</summary>
    public IReadOnlyList<string> Ignored => ignored;

    /// <summary>Columns of weights of single birds, means and groups.</summary>
    public IEnumerable<WeighInColumn> Weights => columns.Values.Where(column => column.IsWeight);

    public static WeighInHeader Of(CsvRow row, WeighInFileOptions options, ProblemList problems)
    {
        WeighInHeader header = new(row, options, problems);
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        for (int index = 0; index < header.Width; index++)
        {
            CsvCell cell = row.Cells[index];
            if (cell.Text.Length == 0)
            {
                problems.Add(cell, "header", "is a column without a name", WeighInColumn.KnownNames);
            }
            else if (!seen.Add(cell.Text))
            {
                problems.Add(cell, "header", "stands there twice", "every column once");
            }
            else
            {
                header.Read(cell, index);
            }
        }

        header.RefuseWhatIsMissing();
        return header;
    }

    public bool Has(WeighInRole role, [NotNullWhen(true)] out WeighInColumn? column) => columns.TryGetValue(role, out column);

    /// <summary>The place of a column by name, used or not; -1 where there is none.</summary>
    public int IndexOf(string name) => row.Cells.Take(Width).ToList().FindIndex(cell => cell.Text.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Where a column is named in the file.</summary>
    public CsvCell NameOf(WeighInColumn column) => row.Cells[column.Index];

    private static bool IsAge(WeighInRole role) => role is WeighInRole.Age or WeighInRole.Date;

    private static bool IsAmount(WeighInRole role) => !IsAge(role) && role is not (WeighInRole.Sex or WeighInRole.Note);

    private void Read(CsvCell cell, int index)
    {
        (WeighInColumn? column, string fault, string expected) = WeighInColumn.Named(cell.Text, index);
        if (cell.Text.Equals(options.AgeColumn, StringComparison.OrdinalIgnoreCase))
        {
            bool weeks = cell.Text.EndsWith("_wk", StringComparison.OrdinalIgnoreCase);
            Use(cell, new(WeighInRole.Age, cell.Text, index, default, options.AgeUnit ?? (weeks ? AgeUnit.Week : AgeUnit.Day)));
        }
        else if (cell.Text.Equals(options.WeightColumn, StringComparison.OrdinalIgnoreCase))
        {
            WeightUnit? unit = options.WeightUnit ?? UnitInName(cell.Text);
            if (unit is null)
            {
                problems.Add(cell, "header", "has no unit", "a name that ends in _g, _kg, _lb, _oz or _lb_oz, or the option weight-unit");
            }

            Use(cell, new(WeighInRole.Weight, cell.Text, index, unit ?? WeightUnit.Gram, default));
        }
        else if (column is not null && !(options.AgeColumn is not null && IsAge(column.Role)) && !(options.WeightColumn is not null && IsAmount(column.Role)))
        {
            Use(cell, column);
        }
        else if (options.AgeColumn is not null || options.WeightColumn is not null)
        {
            ignored.Add(cell.Text);
        }
        else if (!options.Where.Any(condition => condition.Split('=')[0].Trim().Equals(cell.Text, StringComparison.OrdinalIgnoreCase)))
        {
            problems.Add(cell, "header", fault, expected);
            refused.Add(cell.Text);
        }
    }

    private static WeightUnit? UnitInName(string name)
    {
        foreach (string suffix in (ReadOnlySpan<string>)["lb_oz", "g", "kg", "lb", "oz"])
        {
            if (name.EndsWith("_" + suffix, StringComparison.OrdinalIgnoreCase) && QuantityText.TryWeightUnit(suffix, out WeightUnit unit, out _))
            {
                return unit;
            }
        }

        return null;
    }

    private void Use(CsvCell cell, WeighInColumn column)
    {
        if (!columns.TryAdd(column.Role, column))
        {
            problems.Add(cell, "header", "says the same as " + columns[column.Role].Name, "one of the two");
        }
        else if (IsAge(column.Role) && columns.Keys.Count(IsAge) > 1)
        {
            problems.Add(cell, "header", "stands beside another column of age", "either an age or a date");
        }
    }

    private void RefuseWhatIsMissing()
    {
        RefuseMissingOption("age-column", options.AgeColumn, "age-unit", options.AgeUnit is not null);
        RefuseMissingOption("weight-column", options.WeightColumn, "weight-unit", options.WeightUnit is not null);

        // A column refused for its unit is there: it is told once.
        if (options.AgeColumn is null && !columns.Keys.Any(IsAge) && !refused.Exists(name => name.StartsWith("age", StringComparison.OrdinalIgnoreCase)))
        {
            Missing("age", "a column age_d, age_wk or date");
        }

        if (options.WeightColumn is null && !Weights.Any() && !refused.Exists(name => name.Contains("weight", StringComparison.OrdinalIgnoreCase)))
        {
            Missing("weight", "a column weight_<unit>, mean_weight_<unit> or total_weight_<unit>; <unit> is g, kg, lb, oz or lb_oz");
        }

        bool counted = Has(WeighInRole.MeanWeight, out WeighInColumn? one) || Has(WeighInRole.TotalWeight, out one);
        if (counted && !Has(WeighInRole.Birds, out _))
        {
            Missing("birds", "a column birds beside " + one!.Name);
        }

        if (Has(WeighInRole.StandardDeviation, out WeighInColumn? deviation) && !Has(WeighInRole.MeanWeight, out _))
        {
            problems.Add(NameOf(deviation), "header", "has no mean beside it", "a column mean_weight_<unit> too");
        }
    }

    private void RefuseMissingOption(string option, string? name, string unitOption, bool hasUnit)
    {
        if (name is not null && IndexOf(name) < 0)
        {
            problems.Add(row.Line, 1, option, name, "is not in the header", "one of " + string.Join(", ", row.Cells.Take(Width).Select(cell => cell.Text)));
        }
        else if (name is null && hasUnit)
        {
            problems.Add(unitOption, null, "has no column to go with", "the option " + option + " too");
        }
    }

    private void Missing(string what, string expected) => problems.Add(row.Line, 1, what, null, "is missing from the header", expected);
}
