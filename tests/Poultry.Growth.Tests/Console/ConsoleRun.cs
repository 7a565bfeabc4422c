using System.Globalization;
using System.Text.Json;
using Poultry.Growth.Calculators;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>One run of the console within the test's process. (The namespace is not named Console: that would hide System.Console.)</summary>
internal sealed record ConsoleRun(int Exit, string Output, string Errors)
{
    /// <summary>The invented standard, from the root of the repository.</summary>
    public const string StandardFromRoot = "samples/Poultry.Growth.Calculators/data/invented-standard.csv";

    /// <summary>The demo batch.</summary>
    public static string Demo { get; } = Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-batch.csv");

    /// <summary>The invented standard.</summary>
    public static string Standard { get; } = Repository.PathOf(StandardFromRoot);

    public string[] ErrorLines => Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    /// <summary>Words with paths as typed from the root of the repository.</summary>
    public static IEnumerable<string> FromRoot(IEnumerable<string> words) =>
        words.Select(word => word.StartsWith("samples/", StringComparison.Ordinal) ? Repository.PathOf(word) : word);

    public static ConsoleRun Of(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter errors = new() { NewLine = "\n" };
        int exit = Program.Run(args, output, errors);
        return new(exit, output.ToString(), errors.ToString());
    }

    /// <summary>A number of the library as documents write it, to nine digits.</summary>
    public static double? Known(double? number) =>
        number is { } all ? double.Parse(all.ToString("G9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : null;
}
