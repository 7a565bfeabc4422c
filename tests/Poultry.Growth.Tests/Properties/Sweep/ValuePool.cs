using System.Collections;
using System.Collections.Immutable;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Properties.Sweep;

/// <summary>Values to call with: the ends of what a grower may type, nonsense beside them, and whatever earlier calls gave.</summary>
internal sealed class ValuePool(Random random)
{
    private const int MostOfAType = 60;

    private static readonly double[] Numbers = [0, 1, -1, 0.001, 0.5, 2.5, 42, 100, 400, 1e6, 1e-9, double.NaN, double.PositiveInfinity];

    private static readonly double[] Finite = [.. Numbers.Where(double.IsFinite)];

    private static readonly int[] Counts = [0, 1, 2, 8, 300, 1_000_000, -1];

    private static readonly string[] Words = ["", "a", "whole", "breast", "thigh", "2027"];

    private static readonly DateOnly[] Days = [new(2027, 4, 12), new(2027, 6, 1), new(2027, 6, 8), new(1, 1, 1), new(9999, 12, 31)];

    private readonly Dictionary<Type, List<object>> known = [];

    /// <summary>Keeps a result, and what is in it where it is a list.</summary>
    public void Add(object? value)
    {
        if (value is null or string)
        {
            return;
        }

        if (Libraries.Namespaces.Contains(value.GetType().Namespace ?? ""))
        {
            List<object> same = Of(value.GetType());
            if (same.Count < MostOfAType)
            {
                same.Add(value);
            }
            else
            {
                same[random.Next(MostOfAType)] = value;
            }
        }
        else if (value is IEnumerable values)
        {
            foreach (object? one in values.Cast<object?>().Take(5))
            {
                Add(one);
            }
        }
    }

    /// <summary>Something that may be given for a parameter; false where nothing of its type is known.</summary>
    public bool TryGive(Type type, string name, out object? value)
    {
        value = null;
        if (Nullable.GetUnderlyingType(type) is { } underlying)
        {
            return random.Next(3) == 0 || TryGive(underlying, name, out value);
        }

        value = type == typeof(double) ? One(Numbers)
            : type == typeof(int) ? name.Equals("draws", StringComparison.OrdinalIgnoreCase) ? random.Next(-1, 60) : One(Counts)
            : type == typeof(long) ? (long)One(Counts)
            : type == typeof(bool) ? random.Next(2) == 0
            : type == typeof(string) ? One(Words)
            : type == typeof(DateOnly) ? One(Days)
            : type == typeof(CancellationToken) ? CancellationToken.None
            : type.IsEnum ? Enum.GetValues(type).GetValue(random.Next(Enum.GetValues(type).Length))
            : typeof(IQuantity).IsAssignableFrom(type) && type.IsValueType ? Quantity.From(One(Finite), Quantity.ByName[type.Name].BaseUnitInfo.Value)
            : null;
        return value is not null || TryGiveList(type, name, out value) || TryGiveKnown(type, out value);
    }

    private bool TryGiveKnown(Type type, out object? value)
    {
        object[] fitting = [.. known.Where(pair => type.IsAssignableFrom(pair.Key)).SelectMany(pair => pair.Value)];
        value = fitting.Length == 0 ? null : fitting[random.Next(fitting.Length)];
        return fitting.Length > 0;
    }

    private bool TryGiveList(Type type, string name, out object? value)
    {
        value = null;
        Type? element = type.IsArray ? type.GetElementType()
            : type.IsGenericType && type.GetGenericTypeDefinition() is { } list && (list == typeof(IReadOnlyList<>) || list == typeof(IEnumerable<>) || list == typeof(IReadOnlyCollection<>) || list == typeof(ImmutableArray<>)) ? type.GetGenericArguments()[0]
            : null;
        if (element is null || element.IsByRefLike)
        {
            return false;
        }

        Array made = Array.CreateInstance(element, random.Next(4));
        for (int i = 0; i < made.Length; i++)
        {
            if (!TryGive(element, name, out object? one))
            {
                return false;
            }

            made.SetValue(one, i);
        }

        value = type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>)
            ? typeof(ImmutableArray).GetMethods().Single(method => method.Name == "Create" && method.GetParameters() is [{ ParameterType.IsArray: true }] ).MakeGenericMethod(element).Invoke(null, [made])
            : made;
        return true;
    }

    private List<object> Of(Type type)
    {
        if (!known.TryGetValue(type, out List<object>? same))
        {
            known[type] = same = [];
        }

        return same;
    }

    private T One<T>(T[] values) => values[random.Next(values.Length)];
}
