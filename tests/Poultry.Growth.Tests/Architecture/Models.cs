using System.Reflection;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Every model of the library, found by its evidence: a static <see cref="ModelInfo"/>, or a static object that carries one.</summary>
internal static class Models
{
    private const BindingFlags Static = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    /// <summary>One entry a model, by id; members that give the same object are the same model.</summary>
    public static IReadOnlyList<ModelInfo> All { get; } =
        [.. Libraries.WrittenTypes.SelectMany(Of).Distinct().OrderBy(model => model.Id, StringComparer.Ordinal)];

    /// <summary>The models that a type names in its static members.</summary>
    public static IEnumerable<ModelInfo> Of(Type type) =>
        type.ContainsGenericParameters || type.IsInterface ? [] : Statics(type).SelectMany(InValue).Distinct();

    /// <summary>The property by which a type of object or interface carries its evidence.</summary>
    public static PropertyInfo? EvidenceProperty(Type type) =>
        Array.Find(type.GetProperties(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public), property => property.PropertyType == typeof(ModelInfo));

    private static IEnumerable<object?> Statics(Type type) =>
        type.GetProperties(Static).Where(property => property.GetIndexParameters().Length == 0 && CarriesEvidence(property.PropertyType))
            .Select(property => property.GetValue(null))
            .Concat(type.GetFields(Static).Where(field => CarriesEvidence(field.FieldType)).Select(field => field.GetValue(null)));

    private static bool CarriesEvidence(Type type) => type == typeof(ModelInfo) || EvidenceProperty(type) is not null;

    private static IEnumerable<ModelInfo> InValue(object? value) => value switch
    {
        null => [],
        ModelInfo model => [model],
        _ => EvidenceProperty(value.GetType())?.GetValue(value) is ModelInfo model ? [model] : [],
    };
}
