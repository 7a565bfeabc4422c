namespace Poultry.Growth.Files;

/// <summary>Which rows are meant: those whose cells equal what was asked for, letter by letter.</summary>
internal sealed class RowFilter
{
    private readonly List<(int Column, string Value)> conditions = [];

    public static RowFilter Of(IReadOnlyList<string> where, WeighInHeader header, ProblemList problems)
    {
        RowFilter filter = new();
        foreach (string condition in where)
        {
            int sign = condition.IndexOf('=', StringComparison.Ordinal);
            int column = sign < 0 ? -1 : header.IndexOf(condition[..sign].Trim());
            if (sign < 0)
            {
                problems.Add("where", condition, "has no equals sign", "column=value, as in Chick=1");
            }
            else if (column < 0)
            {
                problems.Add("where", condition, "names no column of the header", "column=value, as in Chick=1");
            }
            else
            {
                filter.conditions.Add((column, condition[(sign + 1)..].Trim()));
            }
        }

        return filter;
    }

    public bool Fits(CsvRow row) => conditions.TrueForAll(condition => condition.Column >= row.Cells.Count || row.Cells[condition.Column].Text == condition.Value);
}
