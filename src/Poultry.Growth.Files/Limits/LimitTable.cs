using System.Collections.Immutable;
using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Files;

/// <summary>The rows of a table of limits.</summary>
internal sealed class LimitTable(ProblemList problems)
{
    private const string Number = "a number in the unit beside it";

    private static readonly ImmutableArray<string> Needed = ["jurisdiction", "instrument", "edition", "scope", "quantity", "operator", "value", "unit", "mark", "kind"];
    private static readonly ImmutableArray<string> Optional = ["source", "subject", "system", "house", "when", "requires", "step"];

    private static readonly ImmutableArray<(string Word, HowKnown Value)> Marks =
    [
        ("law", HowKnown.ReadInSource), ("abstract", HowKnown.ReadInSource), ("derived", HowKnown.Derived), ("secondary", HowKnown.Secondary),
        ("memory", HowKnown.Memory), ("practice", HowKnown.CommonPractice), ("assumption", HowKnown.Assumption),
    ];

    private readonly Dictionary<(string, string, string), Instrument> instruments = [];

    /// <summary>The limits; meaningful where no problem was found.</summary>
    public IReadOnlyList<Limit> Read(IReadOnlyList<CsvRow> rows) => [.. NamedTable.Rows(rows, Needed, Optional, problems).Select(ReadRow).OfType<Limit>()];

    private Limit? ReadRow(NamedRow row)
    {
        Instrument? instrument = ReadInstrument(row);
        string quantity = row.Text("quantity", "a text");
        LimitComparison comparison = Word(row, "operator", LimitWords.Comparisons);
        HowKnown known = Word(row, "mark", Marks);
        LimitSubject subject = row.Cell("subject") is null ? LimitSubject.NotJudged : Word(row, "subject", LimitWords.Subjects);
        double? value = ReadValue(row, subject, out string printed);
        (IReadOnlyList<RearingSystem> systems, IReadOnlyList<RearingSystem> unsettled) = LimitWords.Systems(row.At("system"), problems);
        HouseKind? house = row.Cell("house") is null ? null : Word(row, "house", LimitWords.Houses);
        IReadOnlyList<LimitClause> when = LimitWords.Clauses(row.At("when"), problems);
        double? step = row.Number("step", 1, 1000, whole: true);
        return instrument is null || problems.Count > 0 ? null : new Limit
        {
            Instrument = instrument,
            Scope = row.At("scope").Text,
            Quantity = quantity,
            Printed = printed,
            Comparison = comparison,
            Subject = subject,
            Value = value,
            HowKnown = known,
            Source = row.Cell("source")?.Text,
            Systems = systems,
            UnsettledSystems = unsettled,
            House = house,
            When = when,
            Requires = row.Cell("requires")?.Text,
            Step = (int)(step ?? 0),
        };
    }

    /// <summary>One object a text, so that its steps find each other.</summary>
    private Instrument? ReadInstrument(NamedRow row)
    {
        (string jurisdiction, string name, string edition) = (row.Text("jurisdiction", "a text"), row.Text("instrument", "a text"), row.Text("edition", "a text"));
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
            problems.Add(row.At("kind"), "kind", "is another than in an earlier row of the same instrument", "one kind an instrument");
        }

        return instrument;
    }

    private double? ReadValue(NamedRow row, LimitSubject subject, out string printed)
    {
        CsvCell value = row.At("value"), unit = row.At("unit");
        printed = value.Text + (unit.Text is "date" or "-" or "" ? "" : " " + unit.Text);
        bool judged = subject != LimitSubject.NotJudged;
        if (row.Text("value", judged ? Number : "a text").Length == 0 || !judged || !row.Has("unit"))
        {
            return null;
        }

        if (NumberText.Fault(value.Text, out double number) is { } fault)
        {
            problems.Add(value, "value", fault, Number);
            return null;
        }

        if (LimitMeasures.In(subject, unit.Text) is not { } measure)
        {
            problems.Add(unit, "unit", "is no unit of " + row.At("subject").Text, LimitMeasures.Accepted(subject));
            return null;
        }

        if (number < 0 && !LimitUnits.MayBeNegative(subject))
        {
            problems.Add(value, "value", "is below 0", "0 or more");
            return null;
        }

        return measure.Of(number);
    }

    /// <summary>One of some words; a problem where it is none of them, but for a column that the header lacks.</summary>
    private T Word<T>(NamedRow row, string name, IReadOnlyList<(string Word, T Value)> known) => row.Has(name) ? LimitWords.Read(row.At(name), name, known, problems) : known[0].Value;
}
