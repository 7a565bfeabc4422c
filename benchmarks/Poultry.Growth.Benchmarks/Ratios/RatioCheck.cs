using System.Diagnostics;
using System.Globalization;

namespace Poultry.Growth.Benchmarks.Ratios;

/// <summary>
/// Measures every hot path three times and names those that are over 20 % worse than benchmarks/baseline.csv in two of the three, or allocate over 20 % more: such a change needs a note.
/// </summary>
internal static class RatioCheck
{
    private const int Runs = 3;
    private const double Worse = 1.2;

    private static readonly string Baseline = Path.Combine("benchmarks", "baseline.csv");

    /// <summary>0 where nothing is worse, else 1. Run from the root of the repository.</summary>
    public static int Check(TextWriter output)
    {
        Dictionary<string, RatioRow> baseline = File.ReadLines(Baseline).Skip(1).Select(RatioRow.Parse).ToDictionary(row => row.Name);
        int worse = 0;
        foreach (RatioRow[] now in Measured())
        {
            RatioRow? then = baseline.GetValueOrDefault(now[0].Name);
            string verdict = then is null ? "NOT IN THE BASELINE"
                : now.Count(row => row.TimesAsFast * Worse < then.TimesAsFast) >= 2 ? "SLOWER, needs a note"
                : now[0].AllocatedBytes > Worse * then.AllocatedBytes ? "ALLOCATES MORE, needs a note"
                : "as before";
            worse += verdict == "as before" ? 0 : 1;
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{now[0].Name}: {string.Join(", ", now.Select(row => row.Times))} times as fast as {now[0].Alternative} (before: {then?.Times}), {now[0].AllocatedBytes} B (before: {then?.AllocatedBytes}): {verdict}"));
        }

        return worse > 0 ? 1 : 0;
    }

    /// <summary>Makes today's figures the baseline, the middle of three runs, and shows them as the table of docs/benchmarks.md.</summary>
    public static void Write(TextWriter output)
    {
        RatioRow[] middle = [.. Measured().Select(runs => runs.OrderBy(row => row.TimesAsFast).ElementAt(Runs / 2))];
        File.WriteAllText(Baseline, string.Concat(middle.Select(row => row.Separated(";")).Prepend(RatioRow.Header).Select(line => line + "\n")));
        foreach (RatioRow row in middle)
        {
            output.WriteLine($"| {row.Separated(" | ")} |");
        }
    }

    /// <summary>One run in this process.</summary>
    public static void Once(TextWriter output)
    {
        foreach (HotPath path in HotPaths.All())
        {
            Measurement measured = new(path);
            output.WriteLine(new RatioRow(path.Name, path.Alternative, measured.Ratio(), measured.AllocatedBytes).Separated(";"));
        }
    }

    /// <summary>The runs of each path. A run is a process of its own: what the compiler made of the code in one is over with the next.</summary>
    private static IEnumerable<RatioRow[]> Measured()
    {
        RatioRow[][] runs = [.. Enumerable.Range(0, Runs).Select(_ => Run())];
        return Enumerable.Range(0, runs[0].Length).Select(path => runs.Select(run => run[path]).ToArray());
    }

    private static RatioRow[] Run()
    {
        using Process process = Process.Start(new ProcessStartInfo("dotnet", [typeof(RatioCheck).Assembly.Location, "check-ratios", "once"]) { RedirectStandardOutput = true })!;
        string[] lines = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        process.WaitForExit();
        return process.ExitCode == 0 ? [.. lines.Select(RatioRow.Parse)] : throw new InvalidOperationException("A run of the ratios failed.");
    }
}
