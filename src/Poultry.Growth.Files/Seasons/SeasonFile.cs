using System.Globalization;
using Poultry.Growth.Planning;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>Reads a season file (JSON, with comments): batches, each by its own file, and what they share. The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes this throw: every problem of it, and of the files that it names, is found in one pass and told with its line and column.</remarks>
public static class SeasonFile
{
    private const int MostBatches = 16;

    /// <summary>Reads a file and those that it names.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not JSON is a problem of the result, not an exception.</param>
    public static FileReading<SeasonPlan> Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        ProblemList problems = new(Path.GetFileName(path) is { Length: > 0 } name ? name : path);
        JsonValue? root = TextFile.Read(path, problems) is { } text ? JsonText.Read(text, problems) : null;
        if (root is null || JsonSection.Of(root, problems) is not { } file || file.IsOfAnotherKind("birds", "batches", "a batch file", "a season file that names it under batches; a batch file is for plan"))
        {
            return new(problems.File, null, problems.InOrder);
        }

        file.Text(JsonSection.Schema);
        string season = file.Text("name") ?? "Season";
        SeasonLimits limits = Limits(file.Section("limits"), new Dictionary<DateOnly, int>());
        SeasonDates dates = SeasonDates.Read(file.Section("plant"));
        SeasonBatches batches = new(path, dates);
        IReadOnlyList<JsonValue> items = file.List("batches", required: true, "a list of batches, each with the name of its batch file, as in [{ \"batch\": \"batch.json\" }]");
        if (items.Count > MostBatches)
        {
            file.Refuse(file.Optional("batches")!, string.Create(CultureInfo.InvariantCulture, $"holds more than {MostBatches} batches"), string.Create(CultureInfo.InvariantCulture, $"1 to {MostBatches}: every choice among them is tried"));
        }

        SeasonCandidate[] candidates = [.. items.Select(item => JsonSection.Of(item, problems)).OfType<JsonSection>().Select(batches.Read).OfType<SeasonCandidate>()];
        file.Close();
        IReadOnlyList<FileProblem> all = [.. problems.InOrder, .. batches.Problems];
        return new(problems.File, all.Count > 0 ? null : new() { Name = season, Candidates = candidates, Limits = Limits(file.Section("limits"), dates.Head(batches.Files)) }, all)
        {
            Suspicions = [.. batches.Files.SelectMany(batch => batch.Weights?.Suspicions ?? [])],
        };
    }

    private static SeasonLimits Limits(JsonSection? section, IReadOnlyDictionary<DateOnly, int> head)
    {
        if (section is null)
        {
            return new() { HeadByDay = head };
        }

        SeasonLimits limits = new()
        {
            BrooderPlaces = section.Whole("brooderPlaces", 0, 1_000_000),
            Shelters = section.Whole("shelters", 0, 10_000),
            ShelterRest = Duration.FromDays(section.Whole("restDays", 0, 365) ?? 0),
            Ground = section.Quantity<Area>("ground", QuantityText.TryArea),
            LabourADay = section.Quantity<Duration>("labourADay", QuantityText.TryDuration, time => time.Hours <= 240, "up to 240h: all hands together"),
            HeadByDay = head,
        };
        section.Close();
        return limits;
    }
}
