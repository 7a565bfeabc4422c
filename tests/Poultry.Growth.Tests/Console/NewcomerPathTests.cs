using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>The whole path of somebody new, with the program as it is built: new, edit, plan, weigh, plan again, reconcile, the next batch.</summary>
public sealed partial class NewcomerPathTests : IDisposable
{
    /// <summary>One replacement for each edit that the batch file names, in its order; the seventh is in prices.csv.</summary>
    private static readonly (string File, string From, string To)[] TenEdits =
    [
        ("batch.json", "My batch (invented figures)", "Spring"),
        ("batch.json", "\"placed\": \"2027-04-12\", \"ageAtPlacement\": \"1d\"", "\"placed\": \"2027-04-14\", \"ageAtPlacement\": \"2d\""),
        ("batch.json", "\"birds\": 300", "\"birds\": 280"),
        ("batch.json", "\"price\": \"0.78/kg\"", "\"price\": \"0.82/kg\""),
        ("batch.json", "\"perBird\": 5.25", "\"perBird\": 5.60"),
        ("batch.json", "{ \"date\": \"2027-06-15\"", "{ \"date\": \"2027-06-16\""),
        ("prices.csv", "whole,1,1.7kg,2.3kg,11.00/kg", "whole,1,1.7kg,2.3kg,11.80/kg"),
        ("batch.json", "\"chick\": 1.95", "\"chick\": 2.10"),
        ("batch.json", "\"labourHour\": 17", "\"labourHour\": 16"),
        ("batch.json", "\"floor\": \"55m2\"", "\"floor\": \"60m2\""),
    ];

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void From_an_empty_folder_to_the_next_batch()
    {
        // New: everything is there, nothing of it is theirs yet, and it says so.
        Typed("new", "spring").Output.Should().Contain("invented").And.Contain("EDIT 1 of 10 to EDIT 10 of 10");
        Typed("plan", "spring/batch.json", "--draws", "200").Output.Should().StartWith("Plan of My batch (invented figures): 300 chicks");

        // Ten edits, each at the line that names it, or in the table that the line names.
        foreach (((string file, string from, string to), int edit) in TenEdits.Select((edit, at) => (edit, at + 1)))
        {
            string path = scratch.PathOf("spring/" + file), text = File.ReadAllText(path);
            NamedEdit(file == "batch.json" ? text : "", from).Should().Be(file == "batch.json" ? edit : null);
            File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
        }

        JsonElement first = Planned("spring");
        first.GetProperty("name").GetString().Should().Be("Spring");
        first.GetProperty("chicks").GetInt32().Should().Be(280);

        // Weighed three times, a few birds dead: the weight on the last day is surer, and so is the money.
        Append("spring/weigh-ins.csv", "2027-05-03,,690,30,75,\n2027-05-10,,1090,30,120,\n2027-05-17,,1540,30,165,\n");
        Append("spring/deaths.csv", "2027-04-20,3,,\n2027-05-02,2,1,\n");
        JsonElement weighed = Planned("spring");
        Width(weighed, "meanKg").Should().BeLessThan(0.6 * Width(first, "meanKg"));
        Width(weighed, "margin").Should().BeLessThan(Width(first, "margin"));

        // What came back from the plant.
        File.WriteAllText(scratch.PathOf("spring/plant-sheet.csv"), File.ReadAllText(scratch.PathOf("spring/plant-sheet.csv"))
            + "delivered,,,,,252,788kg,,\ncondemned,bruised all over,,,,1,,,\npacked,whole,1,,,150,349kg,,\npacked,breast,2,,,101,92kg,,\nfeed-eaten,,,,,,2010kg,,\nopened,,,,,101,,,\n");
        Typed("reconcile", "spring/batch.json", "spring/plant-sheet.csv", "--history", "history", "--draws", "200").Output.Should().Contain("Spring");
        Directory.GetFiles(scratch.PathOf("history")).Should().NotBeEmpty();

        // The next batch knows it.
        Typed("new", "summer");
        File.WriteAllText(scratch.PathOf("summer/batch.json"), File.ReadAllText(scratch.PathOf("summer/batch.json")).Replace("// \"history\": \"history\"", "\"history\": \"../history\"", StringComparison.Ordinal));
        Planned("summer").GetProperty("origins").GetRawText().Should().Contain("1 batch");
    }

    /// <summary>The number of the edit whose words stand on the line of the text, or last before it; null where there is none.</summary>
    private static int? NamedEdit(string text, string words)
    {
        int at = text.IndexOf(words, StringComparison.Ordinal);
        int end = at < 0 ? 0 : text.IndexOf('\n', at);
        return Edit().Matches(text[..end]) is [.., var last] ? int.Parse(last.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) : null;
    }

    private static double Width(JsonElement plan, string outcome)
    {
        JsonElement range = plan.GetProperty("options")[1].GetProperty(outcome);
        return range.GetProperty("high").GetDouble() - range.GetProperty("low").GetDouble();
    }

    private JsonElement Planned(string folder) => Typed("plan", folder + "/batch.json", "--draws", "200", "--json").Json;

    private void Append(string file, string rows) => File.AppendAllText(scratch.PathOf(file), rows);

    /// <summary>Runs the program as it is built, in the folder of the test.</summary>
    private ConsoleRun Typed(params string[] words)
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "poultry-growth.dll"), .. words])
        {
            WorkingDirectory = scratch.PathOf("."), RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = System.Text.Encoding.UTF8,
        };
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd().ReplaceLineEndings("\n");
        process.WaitForExit();
        ConsoleRun run = new(process.ExitCode, output, errors.Result);
        run.Exit.Should().Be(0, run.Errors);
        run.Errors.Should().BeEmpty();
        return run;
    }

    [GeneratedRegex("EDIT (\\d+) of 10:")]
    private static partial Regex Edit();
}
