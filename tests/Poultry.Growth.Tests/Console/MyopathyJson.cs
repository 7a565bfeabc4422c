using System.Text.Json;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Documents of <c>myopathy</c>, and how to read them.</summary>
internal static class MyopathyJson
{
    public static JsonElement Json(params string[] words)
    {
        ConsoleRun run = ConsoleRun.Of(["myopathy", .. words, "--json"]);
        run.Errors.Should().BeEmpty();
        run.Exit.Should().Be(0);
        return run.Json;
    }

    public static double? Known(double number) => ConsoleRun.Known(number);

    public static double? Number(JsonElement node, string key) => FitJson.Number(node, key);

    public static string? Text(JsonElement node, string key) => FitJson.Text(node, key);
}
