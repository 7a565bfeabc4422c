using System.Reflection;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Every public or protected number without a type of its own, with the name that must say its unit.</summary>
internal static class BareNumbers
{
    private static readonly Type[] Bare = [typeof(double), typeof(float), typeof(decimal)];

    /// <summary>Whether a type is a bare number, or one holds such: an array, a span, an interval of numbers.</summary>
    public static bool IsOrHolds(Type type) =>
        Bare.Contains(type)
        || (type.HasElementType && IsOrHolds(type.GetElementType()!))
        || (type.IsGenericType && type.GetGenericArguments().Any(argument => !argument.IsGenericParameter && IsOrHolds(argument)));

    /// <summary>Owner and name; the owner is the type, for a parameter the type and its method.</summary>
    public static IEnumerable<(string Owner, string Name)> Of(Type type)
    {
        string owner = type.Name.Split('`')[0];
        return Surface.Properties(type).Where(property => IsOrHolds(property.PropertyType)).Select(property => (owner, property.Name))
            .Concat(Surface.Fields(type).Where(field => IsOrHolds(field.FieldType)).Select(field => (owner, field.Name)))
            .Concat(Surface.Methods(type).Where(Returns).Select(method => (owner, method.Name)))
            .Concat(Surface.Callables(type).SelectMany(callable => callable.GetParameters()
                .Where(parameter => IsOrHolds(parameter.ParameterType))
                .Select(parameter => ($"{owner}.{callable.Name}", parameter.Name!))));
    }

    /// <summary>An operator has no name to say a unit with.</summary>
    private static bool Returns(MethodInfo method) => !method.IsSpecialName && IsOrHolds(method.ReturnType);
}
