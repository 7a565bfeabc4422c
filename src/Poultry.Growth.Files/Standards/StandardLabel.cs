using System.Globalization;

namespace Poultry.Growth.Files;

/// <summary>Whose standard it is: a table of weights without name, year and source is no evidence.</summary>
internal sealed class StandardLabel
{
    private readonly ProblemList problems;
    private readonly Dictionary<string, CsvCell> stated = new(StringComparer.OrdinalIgnoreCase);

    private StandardLabel(IEnumerable<NamedComment> statements, ProblemList problems)
    {
        this.problems = problems;
        foreach (NamedComment statement in statements.Where(statement => statement.Is("name") || statement.Is("year") || statement.Is("source")))
        {
            statement.Once(!stated.TryAdd(statement.Name, statement.Value), problems);
        }

        Name = Text("name", "whose table and of which birds, as in \"# name: Objective, males\"");
        Source = Text("source", "where the table is printed, as in \"# source: Breeder's handbook, page 12\"");
        Year = ReadYear();
    }

    public string Name { get; }

    public string Source { get; }

    public int Year { get; }

    /// <summary>What the lines state; what is missing is a problem.</summary>
    public static StandardLabel Of(IEnumerable<NamedComment> statements, ProblemList problems) => new(statements, problems);

    private string Text(string name, string expected)
    {
        if (!stated.TryGetValue(name, out CsvCell value))
        {
            problems.Add(name, null, "is not stated", "a line with " + expected);
        }
        else if (value.Text.Length == 0)
        {
            problems.Add(value, name, "is empty", expected);
        }

        return value.Text ?? "";
    }

    private int ReadYear()
    {
        string text = Text("year", "the year of its edition, as in \"# year: 2022\"");
        bool isYear = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int year) && year is >= QuantityText.FirstYear and <= QuantityText.LastYear;
        if (!isYear && text.Length > 0)
        {
            problems.Add(stated["year"], "year", "is no year", string.Create(CultureInfo.InvariantCulture, $"a year from {QuantityText.FirstYear} to {QuantityText.LastYear}"));
        }

        return year;
    }
}
