using System.Text.Json;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>The document of <c>fit</c> on the demo batch, and how to read it.</summary>
internal static class FitJson
{
    public static JsonElement Fit(params string[] options)
    {
        ConsoleRun run = ConsoleRun.Of(["fit", ConsoleRun.Demo, "--json", .. options]);
        run.Errors.Should().BeEmpty();
        run.Exit.Should().Be(0);
        return run.Json;
    }

    public static string? Text(JsonElement node, string key) => node.GetProperty(key).GetString();

    public static double? Number(JsonElement node, string key) => node.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;

    public static string[] Codes(JsonElement node) => [.. node.GetProperty("cautions").EnumerateArray().Select(caution => Text(caution, "code")!)];
}
