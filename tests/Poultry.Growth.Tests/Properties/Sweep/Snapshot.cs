using System.Collections;
using System.Globalization;
using System.Reflection;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Properties.Sweep;

/// <summary>Everything that an answer shows, to the last bit.</summary>
internal static class Snapshot
{
    public static string Of(object? value, int depth = 3) => value switch
    {
        null => "null",
        double number => BitConverter.DoubleToInt64Bits(number).ToString("x", CultureInfo.InvariantCulture),
        IQuantity quantity => Of((double)quantity.Value) + quantity.Unit,
        string text => text,
        IFormattable plain => plain.ToString(null, CultureInfo.InvariantCulture),
        IEnumerable values => "[" + string.Join(",", values.Cast<object?>().Take(50).Select(one => Of(one, depth))) + "]",
        _ when depth > 0 && Libraries.Namespaces.Contains(value.GetType().Namespace ?? "") => "{" + string.Join(
            ",",
            value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0)
                .Select(property => property.Name + "=" + Of(Property(property, value), depth - 1))) + "}",
        _ => value.GetType().Name,
    };

    private static object? Property(PropertyInfo property, object value)
    {
        try
        {
            return property.GetValue(value);
        }
        catch (TargetInvocationException refused)
        {
            return refused.InnerException!.Message;
        }
    }
}
