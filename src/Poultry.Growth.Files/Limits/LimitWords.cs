using System.Text.Json;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Files;

/// <summary>The words of a table of limits.</summary>
internal static class LimitWords
{
    public static IReadOnlyList<(string Word, LimitComparison Value)> Comparisons { get; } =
    [
        // Two signs before one, so that a clause is cut at the longer.
        ("<=", LimitComparison.AtMost), (">=", LimitComparison.AtLeast), ("<", LimitComparison.Below), (">", LimitComparison.Above), ("=", LimitComparison.Exactly),
    ];

    public static IReadOnlyList<(string Word, LimitSubject Value)> Subjects { get; } = [.. Named<LimitSubject>().Where(subject => subject.Value != LimitSubject.NotJudged)];

    public static IReadOnlyList<(string Word, InstrumentKind Value)> Kinds { get; } = Named<InstrumentKind>();

    public static IReadOnlyList<(string Word, HouseKind Value)> Houses { get; } = Named<HouseKind>();

    private static IReadOnlyList<(string Word, RearingSystem Value)> RearingSystems { get; } = Named<RearingSystem>();

    public static T Read<T>(CsvCell cell, string field, IReadOnlyList<(string Word, T Value)> known, ProblemList problems)
    {
        foreach ((string word, T value) in known)
        {
            if (cell.Text.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        problems.Add(cell, field, cell.Text.Length == 0 ? "is empty" : "is unknown", string.Join(", ", known.Select(one => one.Word)));
        return known[0].Value;
    }

    /// <summary>Ways of keeping with semicolons between them; a question mark behind one leaves it open, <c>*?</c> leaves all others open.</summary>
    public static (IReadOnlyList<RearingSystem> Systems, IReadOnlyList<RearingSystem> Unsettled) Systems(CsvCell cell, ProblemList problems)
    {
        List<RearingSystem> settled = [], open = [];
        bool others = false;
        foreach (string part in Parts(cell))
        {
            if (part == "*?")
            {
                others = true;
            }
            else
            {
                (part.EndsWith('?') ? open : settled).Add(Read(cell with { Text = part.TrimEnd('?') }, "system", RearingSystems, problems));
            }
        }

        return (settled, others ? [.. Enum.GetValues<RearingSystem>().Except(settled)] : open);
    }

    /// <summary>Conditions with semicolons between them: <c>flock-size>=500birds</c>; a question mark behind one leaves open what not meeting it means.</summary>
    public static IReadOnlyList<LimitClause> Clauses(CsvCell cell, ProblemList problems) =>
        [.. Parts(cell).Select(part => Clause(cell with { Text = part }, problems)).OfType<LimitClause>()];

    private static LimitClause? Clause(CsvCell cell, ProblemList problems)
    {
        const string Expected = "conditions such as flock-size>=500birds;bird-weight<1.6kg";
        int before = problems.Count;
        string text = cell.Text.TrimEnd('?');
        int sign = text.AsSpan().IndexOfAny("<>=");
        if (sign < 0)
        {
            problems.Add(cell, "when", "is no condition", Expected);
            return null;
        }

        (string word, LimitComparison comparison) = Comparisons.First(known => text.AsSpan(sign).StartsWith(known.Word, StringComparison.Ordinal));
        LimitSubject subject = Read(cell with { Text = text[..sign].Trim() }, "when", Subjects, problems);
        string amount = text[(sign + word.Length)..].Trim();
        int end = amount.AsSpan().IndexOfAnyExcept(NumberText.NumberLetters);
        string digits = end < 0 ? amount : amount[..end];
        if (NumberText.Fault(digits, out double number) is { } fault)
        {
            problems.Add(cell with { Text = digits }, "when", fault, Expected);
        }
        else if (number < 0 && problems.Count == before && !LimitUnits.MayBeNegative(subject))
        {
            problems.Add(cell with { Text = digits }, "when", "is below 0", "0 or more");
        }
        else if (problems.Count == before && LimitMeasures.In(subject, amount[digits.Length..].Trim()) is { } measure)
        {
            return new LimitClause(subject, comparison, measure.Of(number), isSettled: !cell.Text.EndsWith('?'));
        }
        else if (problems.Count == before)
        {
            problems.Add(cell, "when", "has no unit of its subject", LimitMeasures.Accepted(subject));
        }

        return null;
    }

    private static string[] Parts(CsvCell cell) => cell.Text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static (string Word, T Value)[] Named<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(value => (JsonNamingPolicy.KebabCaseLower.ConvertName(Enum.GetName(value)!), value))];
}
