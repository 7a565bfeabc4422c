using System.Text.Json;

namespace Poultry.Growth.Calculators.Printing;

/// <summary>Named values as codes for programs, lower case with hyphens: <c>no-finite-mature-weight</c>.</summary>
internal static class Codes
{
    public static string Of<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(Enum.GetName(value)!);
}
