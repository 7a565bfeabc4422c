using System.Globalization;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>A fixture: comma-separated figures, with their source in # lines above the header.</summary>
internal sealed class Table
{
    private readonly string[] header;

    private Table(string[] header) => this.header = header;

    public List<Row> Rows { get; } = [];

    /// <summary>Reads a fixture.</summary>
    /// <param name="name">From the folder Conformance.</param>
    public static Table Read(string name)
    {
        string path = Repository.PathOf("tests/Poultry.Growth.Tests/Conformance/" + name);
        string[][] lines = [.. File.ReadLines(path).Where(line => !line.StartsWith('#')).Select(line => line.Split(','))];
        Table table = new(lines[0]);
        table.Rows.AddRange(lines.Skip(1).Select(cells => new Row(table, cells)));
        return table;
    }

    internal sealed class Row(Table table, string[] cells)
    {
        public string Text(string column) => cells[Array.IndexOf(table.header, column)];

        public override string ToString() => string.Join(", ", table.header.Zip(cells, (column, cell) => column + " " + cell));

        public double Number(string column) => double.Parse(Text(column), CultureInfo.InvariantCulture);

        /// <summary>The number, or null where the fixture has none: empty, NA, or an open bound.</summary>
        public double? NumberOrNull(string column) => Text(column) is "" or "NA" or "open" ? null : Number(column);
    }
}
