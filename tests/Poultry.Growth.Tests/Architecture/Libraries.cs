using System.Reflection;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>The two assemblies that are packed.</summary>
internal static class Libraries
{
    public static Assembly Core { get; } = typeof(Age).Assembly;

    public static Assembly Files { get; } = Assembly.Load("Poultry.Growth.Files");

    /// <summary>What a user of the packages sees.</summary>
    public static IReadOnlyList<Type> PublicTypes { get; } = [.. Core.GetExportedTypes(), .. Files.GetExportedTypes()];

    /// <summary>Every type that somebody wrote; not what the compiler or the coverage run adds.</summary>
    public static IReadOnlyList<Type> WrittenTypes { get; } =
    [
        .. Core.GetTypes().Concat(Files.GetTypes())
            .Where(type => type.FullName!.StartsWith(House.Namespace, StringComparison.Ordinal) && !type.FullName.Contains('<', StringComparison.Ordinal)),
    ];

    public static IReadOnlyList<string> Namespaces { get; } = [.. PublicTypes.Select(type => type.Namespace!).Distinct().Order(StringComparer.Ordinal)];
}
