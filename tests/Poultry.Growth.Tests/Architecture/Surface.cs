using System.Reflection;
using System.Runtime.CompilerServices;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>What a type shows to its users: public members, and protected ones where it can be inherited.</summary>
internal static class Surface
{
    private const BindingFlags Own =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static IEnumerable<FieldInfo> Fields(Type type) => type.GetFields(Own).Where(field => field.IsPublic || field.IsFamily);

    public static IEnumerable<PropertyInfo> Properties(Type type) => type.GetProperties(Own).Where(property => property.GetAccessors(true).Any(IsShown));

    public static IEnumerable<MethodInfo> Methods(Type type) => type.GetMethods(Own).Where(IsShown).Where(method => !IsAccessor(method));

    /// <summary>Methods and constructors.</summary>
    public static IEnumerable<MethodBase> Callables(Type type) => Methods(type).Concat<MethodBase>(type.GetConstructors(Own).Where(IsShown));

    /// <summary>Every type that the surface mentions, generic arguments and elements included.</summary>
    public static IEnumerable<Type> Mentioned(Type type) =>
        new[] { type.BaseType }.Concat(type.GetInterfaces())
            .Concat(Fields(type).Select(field => field.FieldType))
            .Concat(Properties(type).Select(property => property.PropertyType))
            .Concat(Methods(type).Select(method => method.ReturnType))
            .Concat(Callables(type).SelectMany(callable => callable.GetParameters()).Select(parameter => parameter.ParameterType))
            .Concat(Methods(type).SelectMany(method => method.GetGenericArguments()).Concat(type.GetGenericArguments())
                .Where(argument => argument.IsGenericParameter).SelectMany(argument => argument.GetGenericParameterConstraints()))
            .OfType<Type>()
            .SelectMany(Parts);

    /// <summary>Whether anyone may set the property after the object is made; <c>init</c> does not count.</summary>
    public static bool CanBeSetLater(PropertyInfo property) =>
        property.SetMethod is { } setter && IsShown(setter)
        && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static bool IsShown(MethodBase method) => method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly;

    private static bool IsAccessor(MethodInfo method) => method.IsSpecialName && !method.Name.StartsWith("op_", StringComparison.Ordinal);

    private static IEnumerable<Type> Parts(Type type) =>
        type.HasElementType ? Parts(type.GetElementType()!)
        : type.IsGenericType ? type.GetGenericArguments().Where(argument => !argument.IsGenericParameter).SelectMany(Parts).Append(type)
        : [type];
}
