namespace Poultry.Growth.Tests.Docs;

/// <summary>A chart of docs/gallery.md, drawn by the console.</summary>
/// <param name="Name">Of its file.</param>
/// <param name="Question">What it answers, in one line.</param>
/// <param name="Data">What stands behind it, and that it is invented.</param>
/// <param name="Words">What is typed after the program's name, the chart's own option left out.</param>
internal sealed record GalleryChart(string Name, string Question, string Data, string Words)
{
    public const string Folder = "docs/gallery";

    private const string Samples = "samples/Poultry.Growth.Calculators/data/";

    private const string Batch = "Invented batch.";

    /// <summary>One for each command that draws, and two where the question changes the picture.</summary>
    public static IReadOnlyList<GalleryChart> All { get; } =
    [
        new("weigh", "How heavy were the birds, each of them and on average?", Batch, $"weigh {Samples}meadow-batch.csv"),
        new("fit", "Which curve do the weigh-ins follow, and where would it lead if it were right?", Batch, $"fit {Samples}meadow-batch.csv --at 49d,56d"),
        new("project", "What will the batch weigh, how sure is that, and when is it at 2.6 kg?", Batch, $"project {Samples}meadow-batch.csv --at 63d --target 2.6kg"),
        new("project-before", "What would be said before any bird is weighed?", "No batch: what is known of birds outdoors in general.", "project --at 63d --target 2.6kg"),
        new("compare", "Is the batch ahead of a standard or behind it?", "Invented batch and invented standard.", $"compare {Samples}meadow-batch.csv --standard {Samples}invented-standard.csv"),
        new("history", "What do the farm's past batches say about the next one?", "Five invented batches.", $"history {Samples}meadow-history"),
        new("feed", "How much feed will the batch have eaten by when, and did it eat what it should?", Batch, $"feed {Samples}meadow-batch.json"),
        new("space", "From what age on is the floor too small?", "Invented batch and floor.", $"space {Samples}meadow-batch.csv --area 18m2 --birds 190 --limit 6lb/ft2 --mortality 8% --age 63d --system shelter"),
        new(
            "cuts",
            "Where does the live weight go, and what of it comes back from the plant?",
            "Invented birds, order and prices.",
            $"cuts --live 2.9kg --birds 300 --live-state full-fed --off-feed 12h --order 40% --prices {Samples}meadow-prices.csv"),
        new("myopathy-risk", "How many tenders may be green before anyone has looked?", "Invented flock; the chances are those of surveys of birds kept indoors.", "myopathy risk --birds 300 --kill-age 56d"),
        new(
            "myopathy-date",
            "When was the harm done that the plant found?",
            "Invented findings and diary.",
            $"myopathy date --found I=2,III=5 --killed 2027-06-06 --hatched 2027-04-11 --sex mixed --log {Samples}disturbances.csv"),
        new("myopathy-inspect", "What do 3 birds of 100 opened say about the whole flock?", "Invented count.", "myopathy inspect --opened 100 --found 3"),
        new("myopathy-learn", "What may the next batch have, by the farm's own inspections?", "Five invented inspections.", $"myopathy learn {Samples}inspections"),
        new("plan", "Which of the plant's days brings most, and how sure is that?", "Invented batch and prices; 200 fates drawn.", $"plan {Samples}meadow-batch.json --draws 200"),
        new("reconcile", "Where did the outcome lie within its forecast?", "Invented batch and plant's sheet; 200 fates drawn.", $"reconcile {Samples}meadow-batch.json {Samples}meadow-plant.csv --draws 200"),
        new("season", "Which batch is where when, and are there shelters enough?", "Invented season; 100 fates drawn.", $"season {Samples}meadow-season.json --draws 100"),
    ];

    /// <summary>The file, from the root of the repository.</summary>
    public string Path => $"{Folder}/{Name}.svg";

    /// <summary>What is typed after the program's name to draw it where it lies.</summary>
    public string Call => $"{Words} --chart {Path}";

    public override string ToString() => Name;
}
