using System.Text.Json;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Digits beyond the ninth differ by machine, and none is written.</summary>
public class KnownDigitsTests
{
    public static TheoryData<string[]> Calls =>
    [
        ["fit", ConsoleRun.Demo, "--json", "--compare", "--target", "2.6kg"],
        ["weigh", ConsoleRun.Demo, "--json", "--within", "3%"],
    ];

    [Theory]
    [MemberData(nameof(Calls))]
    public void The_longest_number_of_a_document_has_nine_significant_digits(string[] call) =>
        Numbers(ConsoleRun.Of(call).Json).Max(SignificantDigits).Should().Be(9);

    [Theory]
    [InlineData("0.00012030", 5)]
    [InlineData("-24.28", 4)]
    [InlineData("1.25E-05", 3)]
    [InlineData("5.170711263258678", 16)]
    [InlineData("0", 0)]
    public void Significant_digits_start_with_the_first_that_is_not_zero(string number, int digits) => SignificantDigits(number).Should().Be(digits);

    private static IEnumerable<string> Numbers(JsonElement node) => node.ValueKind switch
    {
        JsonValueKind.Object => node.EnumerateObject().SelectMany(property => Numbers(property.Value)),
        JsonValueKind.Array => node.EnumerateArray().SelectMany(Numbers),
        JsonValueKind.Number => [node.GetRawText()],
        _ => [],
    };

    private static int SignificantDigits(string number) => number.Split('E', 'e')[0].Replace(".", "", StringComparison.Ordinal).TrimStart('-', '0').Length;
}
