using System.Collections.Immutable;
using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Files;

/// <summary>The rows of a table of limits.</summary>
internal sealed class LimitTable(ProblemList problems)
{
    private const string KnownNames = "jurisdiction, instrument, edition, scope, quantity, operator, value, unit, mark and kind; if wanted source, subject, system, house, when, requires and step";

    private static readonly ImmutableArray<string> Needed = ["jurisdiction", "instrument", "edition", "scope", "quantity", "operator", "value", "unit", "mark", "kind"];
    private static readonly ImmutableArray<string> Optional = ["source", "subject", "system", "house", "when", "requires", "step"];

    private static readonly ImmutableArray<(string Word, HowKnown Value)> Marks =
    [
        ("law", HowKnown.ReadInSource), ("abstract", HowKnown.ReadInSource), ("derived", HowKnown.Derived), ("secondary", HowKnown.Secondary),
        ("memory", HowKnown.Memory), ("practice", HowKnown.CommonPractice), ("assumption", HowKnown.Assumption),
    ];

    private readonly Dictionary<string, int> columns = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<(string, string, string), Instrument> instruments = [];

    /// <summary>The limits; meaningful where no problem was found.</summary>
    public IReadOnlyList<Limit> Read(IReadOnlyList<CsvRow> rows)
    {
        if (rows.Count == 0)
        {
            problems.Add(1, 1, "file", null, "is empty", "a header and at least one row: " + KnownNames);
            return [];
        }

        if (!ReadHeader(rows[0]))
        {
            return [];
        }

        if (rows.Count == 1)
        {
            problems.Add(rows[0].Line, 1, "file", null, "has no rows below the header", "at least one row");
        }

        int width = RowWidth.Of(rows[0]);
        return [.. rows.Skip(1).Where(row => RowWidth.Fits(row, width, problems)).Select(ReadRow).OfType<Limit>()];
    }

    private bool ReadHeader(CsvRow header)
    {
        int before = problems.Count;
        for (int index = 0; index < RowWidth.Of(header); index++)
        {
            CsvCell cell = header.Cells[index];
            if (!Needed.Concat(Optional).Contains(cell.Text, StringComparer.OrdinalIgnoreCase))
            {
                problems.Add(cell, "header", "is no column of limits", KnownNames);
            }
            else if (!columns.TryAdd(cell.Text, index))
            {
                problems.Add(cell, "header", "stands there twice", "every column once");
            }
        }

        foreach (string missing in Needed.Where(name => problems.Count == before && !columns.ContainsKey(name)).ToArray())
        {
            problems.Add(header.Line, 1, missing, null, "is missing from the header", KnownNames);
        }

        return problems.Count == before;
    }

    private Limit? ReadRow(CsvRow row)
    {
        int before = problems.Count;
        Instrument? instrument = ReadInstrument(row);
        string quantity = Text(row, "quantity");
        LimitComparison comparison = Word(row, "operator", LimitWords.Comparisons);
        HowKnown known = Word(row, "mark", Marks);
        LimitSubject subject = Cell(row, "subject").Text.Length == 0 ? LimitSubject.NotJudged : Word(row, "subject", LimitWords.Subjects);
        double? value = ReadValue(row, subject, out string printed);
        (IReadOnlyList<RearingSystem> systems, IReadOnlyList<RearingSystem> unsettled) = LimitWords.Systems(Cell(row, "system"), problems);
        HouseKind? house = Cell(row, "house").Text.Length == 0 ? null : Word(row, "house", LimitWords.Houses);
        IReadOnlyList<LimitClause> when = LimitWords.Clauses(Cell(row, "when"), problems);
        int step = ReadStep(row);
        return problems.Count > before ? null : new Limit
        {
            Instrument = instrument!,
            Scope = Cell(row, "scope").Text,
            Quantity = quantity,
            Printed = printed,
            Comparison = comparison,
            Subject = subject,
            Value = value,
            HowKnown = known,
            Source = NullIfEmpty(Cell(row, "source").Text),
            Systems = systems,
            UnsettledSystems = unsettled,
            House = house,
            When = when,
            Requires = NullIfEmpty(Cell(row, "requires").Text),
            Step = step,
        };
    }

    /// <summary>One object a text, so that its steps find each other.</summary>
    private Instrument? ReadInstrument(CsvRow row)
    {
        (string jurisdiction, string name, string edition) = (Text(row, "jurisdiction"), Text(row, "instrument"), Text(row, "edition"));
        InstrumentKind kind = Word(row, "kind", LimitWords.Kinds);
        if (jurisdiction.Length == 0 || name.Length == 0 || edition.Length == 0)
        {
            return null;
        }

        if (!instruments.TryGetValue((jurisdiction, name, edition), out Instrument? instrument))
        {
            instruments.Add((jurisdiction, name, edition), instrument = new Instrument(jurisdiction, name, edition, kind));
        }
        else if (instrument.Kind != kind)
        {
            problems.Add(Cell(row, "kind"), "kind", "is another than in an earlier row of the same instrument", "one kind an instrument");
        }

        return instrument;
    }

    private double? ReadValue(CsvRow row, LimitSubject subject, out string printed)
    {
        CsvCell value = Cell(row, "value"), unit = Cell(row, "unit");
        printed = value.Text + (unit.Text is "date" or "-" or "" ? "" : " " + unit.Text);
        if (subject == LimitSubject.NotJudged)
        {
            Text(row, "value");
            return null;
        }

        if (NumberText.Fault(value.Text, out double number) is { } fault)
        {
            problems.Add(value, "value", fault, "a number in the unit beside it");
            return null;
        }

        if (LimitMeasures.In(subject, unit.Text) is not { } measure)
        {
            problems.Add(unit, "unit", "is no unit of " + Cell(row, "subject").Text, LimitMeasures.Accepted(subject));
            return null;
        }

        if (number < 0 && !LimitUnits.MayBeNegative(subject))
        {
            problems.Add(value, "value", "is below 0", "0 or more");
            return null;
        }

        return measure.Of(number);
    }

    private int ReadStep(CsvRow row)
    {
        CsvCell cell = Cell(row, "step");
        if (cell.Text.Length > 0 && !(int.TryParse(cell.Text, NumberStyles.None, CultureInfo.InvariantCulture, out int step) && step > 0))
        {
            problems.Add(cell, "step", "is no step", "a whole number from 1 on, or nothing");
            return 0;
        }

        return cell.Text.Length == 0 ? 0 : int.Parse(cell.Text, NumberStyles.None, CultureInfo.InvariantCulture);
    }

    private static string? NullIfEmpty(string text) => text.Length == 0 ? null : text;

    /// <summary>The cell of a column; an empty one where the file has no such column.</summary>
    private CsvCell Cell(CsvRow row, string name) => columns.TryGetValue(name, out int index) ? row.Cells[index] : new("", row.Line, 1);

    private string Text(CsvRow row, string name)
    {
        CsvCell cell = Cell(row, name);
        if (cell.Text.Length == 0)
        {
            problems.Add(cell, name, "is empty", "a text");
        }

        return cell.Text;
    }

    private T Word<T>(CsvRow row, string name, IReadOnlyList<(string Word, T Value)> known) => LimitWords.Read(Cell(row, name), name, known, problems);
}
