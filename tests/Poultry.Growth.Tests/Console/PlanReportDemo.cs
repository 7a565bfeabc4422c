namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>The demo batch's page, and one with names that look like markup, five days and pounds: each written once.</summary>
public sealed class PlanReportDemo : IDisposable
{
    private readonly Scratch scratch = new();

    public PlanReportDemo()
    {
        string path = scratch.PathOf("demo.html");
        ConsoleRun run = ConsoleRun.Of("plan", Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-batch.json"), "--draws", "300", "--json", "--report", path);
        run.Exit.Should().Be(0, run.Errors);
        (Json, Bytes, Page) = (run.Json, File.ReadAllBytes(path), ReportPages.Read(path));
        string other = scratch.Batch(text => text
            .Replace("\"Meadow 3\"", "\"<b>&\\\"'</b><script>\"", StringComparison.Ordinal)
            .Replace("\"name\": \"starter\"", "\"name\": \"<i>a & long name of a feed</i>\"", StringComparison.Ordinal)
            .Replace("\"dates\": [", "\"dates\": [ { \"date\": \"2027-06-03\" }, { \"date\": \"2027-06-04\" },", StringComparison.Ordinal));
        Other = Report(scratch, other, "--units", "us", "--every-day", "--split", "any");
    }

    internal ReportPages Page { get; }

    internal ReportPages Other { get; }

    internal System.Text.Json.JsonElement Json { get; }

    internal byte[] Bytes { get; }

    public void Dispose() => scratch.Dispose();

    /// <summary>The page of a batch, written and read.</summary>
    internal static ReportPages Report(Scratch scratch, string batch, params string[] words)
    {
        string path = scratch.PathOf("page.html");
        ConsoleRun run = ConsoleRun.Of(["plan", batch, "--draws", "100", "--report", path, .. words]);
        run.Exit.Should().Be(0, run.Errors);
        return ReportPages.Read(path);
    }
}
