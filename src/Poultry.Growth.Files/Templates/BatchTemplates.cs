namespace Poultry.Growth.Files;

/// <summary>
/// The files of a new batch: a batch file with invented figures and ten places to edit, and the tables that are filled in day by day. A plan can be made of
/// them as they are.
/// </summary>
public static class BatchTemplates
{
    private const string Both = "both/";

    /// <summary>The batch file.</summary>
    public const string BatchFileName = "batch.json";

    /// <summary>The names of all of them, the batch file first.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [BatchFileName, "prices.csv", "order.csv", "temperatures.csv", "weigh-ins.csv", "deaths.csv", "feed.csv", "disturbances.csv", "plant-sheet.csv"];

    /// <summary>What a template says.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <param name="units">The units in which it is written.</param>
    /// <exception cref="ArgumentException">There is no such template.</exception>
    public static string Text(string name, TemplateUnits units)
    {
        ArgumentNullException.ThrowIfNull(name);
        string own = units == TemplateUnits.UnitedStates ? "us/" : "metric/";
        using Stream? stream = Resource(own + name) ?? Resource(Both + name);
        if (stream is null)
        {
            throw new ArgumentException("There is no template " + FileProblem.Quoted(name) + "; expected one of " + string.Join(", ", Names) + ".", nameof(name));
        }

        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    /// <summary>Writes all of them into a folder, or none: a file that is there already is never replaced.</summary>
    /// <param name="folder">Where; made where it does not exist, within a folder that does.</param>
    /// <param name="units">The units in which they are written.</param>
    /// <returns>What stands in the way, one line each, every file that is there already by its name; empty where all were written.</returns>
    public static IReadOnlyList<string> Write(string folder, TemplateUnits units)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        // Who types a separator at the end means the folder before it.
        folder = Path.TrimEndingDirectorySeparator(folder);
        if (File.Exists(folder))
        {
            return [FileProblem.Quoted(folder) + " is a file; expected a folder, which is made where it does not exist"];
        }

        string[] there = [.. Names.Where(name => Path.Exists(Path.Combine(folder, name)))];
        return there.Length > 0
            ? [.. there.Select(name => Path.Combine(folder, name) + ": exists and is not replaced; expected a folder without it")]
            : FileSet.Replace(folder, [.. Names.Reverse().Select(name => (Path.Combine(folder, name), (string?)Text(name, units)))]) is { } problem ? [problem] : [];
    }

    private static Stream? Resource(string name) => typeof(BatchTemplates).Assembly.GetManifestResourceStream(name);
}
