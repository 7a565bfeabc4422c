using System.Globalization;
using Poultry.Growth.Planning;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The items of <c>batches</c> in a season file: each the batch of a file, as it stands or on other days.</summary>
internal sealed class SeasonBatches(string path, SeasonDates dates)
{
    private const int MostStarts = 20, UsualDays = 7;
    private const string FileExpected = "the name of a batch file (.json) beside this one";

    private readonly Dictionary<string, BatchFileReading> files = [];

    /// <summary>The batch files, each once.</summary>
    public IEnumerable<BatchFileReading> Files => files.Values;

    /// <summary>Their problems, but for files that cannot be read as a whole: those are told where they are named.</summary>
    public IEnumerable<FileProblem> Problems => files.Values.SelectMany(file => file.Problems).Where(problem => problem is not { Line: 0, Field: "file" });

    /// <summary>A batch; null, and problems, where it cannot be.</summary>
    public SeasonCandidate? Read(JsonSection section)
    {
        int before = section.Problems.Count;
        JsonValue? named = section.Required("batch", FileExpected);
        string? name = section.Text("name");
        JsonValue? placed = section.Optional("placed");
        Temperature? outside = section.Quantity<Temperature>("outside", QuantityText.TryTemperature, warmth => warmth.DegreesCelsius is >= -20 and <= 50, "-20C to 50C");
        int shelters = section.Whole("shelters", 0, 10_000) ?? 0;
        Area ground = section.Quantity<Area>("ground", QuantityText.TryArea) ?? Area.Zero;
        bool promised = section.Choice("promised", ("no", false), ("yes", true));
        IReadOnlyList<DateOnly> days = placed is null ? [] : Days(section, placed);
        section.Close();
        if (named is null || Batch(section, named) is not { } batch || section.Problems.Count > before)
        {
            return null;
        }

        (DateOnly Day, bool IsOwn)[] starts = placed is null ? [(batch.Flock!.Placed!.Value, true)] : [.. days.Distinct().Order().Select(day => (day, false))];
        BatchStart[] offered =
        [
            .. starts.Select(start => new BatchStart(start.Day, start.IsOwn, dates.For(batch, start.Day, start.IsOwn), outside)).Where(start => start.Dates.Count > 0),
        ];
        if (offered.Length == 0)
        {
            section.Refuse(named, "has no day of the plant while its birds are of an age to be killed", "days of the plant, or of the chicks, that fit each other");
            return null;
        }

        if (offered.Select(start => batch.FeedMissing(start.Placed, start.Dates)).FirstOrDefault(missing => missing is not null) is { } feed)
        {
            section.Refuse(named, "says too little for the plant's days", feed);
            return null;
        }

        BatchPlan[] plans = [.. offered.Select(batch.PlanFor)];
        return new() { Name = name ?? plans[0].Name, Starts = plans, Shelters = shelters, Ground = ground, IsPromised = promised };
    }

    /// <summary>The batch of a file, read once however often it is named.</summary>
    private BatchFileReading? Batch(JsonSection section, JsonValue named)
    {
        if (named.Kind != JsonKind.Text || string.IsNullOrWhiteSpace(named.Text))
        {
            section.Refuse(named, named.Kind == JsonKind.Text ? "is empty" : named.Words, FileExpected);
            return null;
        }

        if (!files.TryGetValue(named.Text, out BatchFileReading? reading))
        {
            files[named.Text] = reading = BatchFile.Read(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, named.Text));
        }

        if (reading.Problems is [{ Line: 0, Field: "file" } whole])
        {
            section.Refuse(named, whole.Fault, FileExpected);
        }
        else if (reading.Problems.Count == 0 && reading.PlanMissing is { } missing)
        {
            section.Refuse(named, "says too little for a plan", missing);
        }

        return reading.PlanMissing is null ? reading : null;
    }

    private static IReadOnlyList<DateOnly> Days(JsonSection section, JsonValue placed)
    {
        const string Expected = "the days on which the chicks may come: a list, as in [\"2027-04-12\"], or { \"from\": \"2027-04-12\", \"to\": \"2027-05-24\", \"everyDays\": 7 }";
        IReadOnlyList<DateOnly> days = [];
        if (placed.Kind == JsonKind.Section)
        {
            days = Window(JsonSection.Of(placed, section.Problems)!);
        }
        else if (placed is { Kind: JsonKind.List, Items.Count: > 0 })
        {
            days = [.. placed.Items.Select(item => section.Quantity<DateOnly>(item, QuantityText.TryDate)).OfType<DateOnly>()];
        }
        else
        {
            section.Refuse(placed, placed.Kind == JsonKind.List ? "is empty" : placed.Words, Expected);
        }

        if (days.Count > MostStarts)
        {
            section.Refuse(placed, string.Create(CultureInfo.InvariantCulture, $"holds {days.Count} days"), string.Create(CultureInfo.InvariantCulture, $"{MostStarts} at most: the batch is drawn anew for each"));
        }

        return days;
    }

    private static IReadOnlyList<DateOnly> Window(JsonSection window)
    {
        DateOnly? from = window.RequiredQuantity<DateOnly>("from", QuantityText.TryDate, "the first day on which the chicks may come");
        DateOnly? to = window.RequiredQuantity<DateOnly>("to", QuantityText.TryDate, "the last day on which they may come");
        int every = window.Whole("everyDays", 1, 60) ?? UsualDays;
        window.Close();
        if (from > to)
        {
            window.Refuse("ends before it begins", "to on or after from");
        }

        return from is { } first && to is { } last
            ? [.. Enumerable.Range(0, Math.Max(0, ((last.DayNumber - first.DayNumber) / every) + 1)).Select(step => first.AddDays(step * every))]
            : [];
    }
}
