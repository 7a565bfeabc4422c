namespace Poultry.Growth.Files;

/// <content>Quantities with their units.</content>
internal sealed partial class JsonSection
{
    /// <summary>A quantity as text with its unit; null where it is left out or wrong.</summary>
    public T? Quantity<T>(string name, QuantityReader<T> read, Func<T, bool>? holds = null, string? range = null)
        where T : struct => Optional(name) is { } value ? Quantity(value, read, holds, range) : null;

    /// <summary>A quantity that must be there.</summary>
    public T? RequiredQuantity<T>(string name, QuantityReader<T> read, string expected, Func<T, bool>? holds = null)
        where T : struct => Required(name, expected) is { } value ? Quantity(value, read, holds, expected) : null;

    /// <summary>A quantity anywhere: the item of a list, say.</summary>
    public T? Quantity<T>(JsonValue value, QuantityReader<T> read, Func<T, bool>? holds = null, string? range = null)
        where T : struct
    {
        if (value.Kind is not (JsonKind.Text or JsonKind.Number))
        {
            Refuse(value, value.Words, range ?? "a quantity with its unit, in quotes");
            return null;
        }

        if (!read(value.Text, out T quantity, out string? problem))
        {
            (string fault, string expected) = Parted(problem, value.Text);
            Refuse(value, fault, expected);
            return null;
        }

        if (holds?.Invoke(quantity) == false)
        {
            Refuse(value, "is out of range", range!);
            return null;
        }

        return quantity;
    }

    /// <summary>A sentence of <see cref="QuantityText"/> without the value that it begins with, cut where it says what was expected.</summary>
    private static (string Fault, string Expected) Parted(string problem, string text)
    {
        string quoted = FileProblem.Quoted(text);
        string rest = problem.StartsWith(quoted, StringComparison.Ordinal) ? problem[quoted.Length..].TrimStart() : problem;
        int end = rest.IndexOf("; ", StringComparison.Ordinal);
        string expected = end < 0 ? "a quantity with its unit" : rest[(end + 2)..];
        foreach (string verb in new[] { "expected ", "write " })
        {
            expected = expected.StartsWith(verb, StringComparison.Ordinal) ? expected[verb.Length..] : expected;
        }

        return (end < 0 ? rest : rest[..end], expected);
    }
}
