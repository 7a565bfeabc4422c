using System.Collections.Immutable;
using Poultry.Growth.Myopathy;
using static Poultry.Growth.Files.PlantSheetCells;

namespace Poultry.Growth.Files;

/// <summary>The lesions of a plant's sheet: one line a look, of birds that were opened.</summary>
internal sealed class PlantSheetLesions
{
    private static readonly ImmutableArray<string> Stages = ["red", "pink", "green", "grey"];

    private readonly Dictionary<string, int> birds = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The counts; null where there is none, or all are 0.</summary>
    public LesionCounts? Counts => birds.Values.Sum() == 0 ? null : LesionCounts.Of(Of("red"), Of("pink"), Of("green"), Of("grey"));

    public void Add(NamedRow row)
    {
        const string Expected = "red, pink, green or grey: the older side of the bird";
        Nothing(row, "lesion", "pieces_per_pack", "from", "to", "weight", "money");
        string stage = Word(row, Expected);
        int? count = Count(row);
        if (stage.Length > 0 && !Stages.Contains(stage, StringComparer.OrdinalIgnoreCase))
        {
            row.Refuse(row.Cell("what"), "what", "is no look of a lesion", Expected);
        }
        else if (stage.Length > 0 && !birds.TryAdd(stage, count ?? 0))
        {
            row.Refuse(row.Cell("what"), "what", "stands there a second time", "one line a look");
        }
    }

    /// <summary>What only all rows together show.</summary>
    /// <param name="opened">Birds opened; null where the sheet does not say.</param>
    /// <param name="problems">Told of what is wrong.</param>
    public void Close(int? opened, ProblemList problems)
    {
        if (opened is { } looked ? birds.Values.Sum() > looked : birds.Count > 0)
        {
            problems.Add(
                "lesion",
                null,
                opened is null ? "is counted, and not how many birds were opened" : "is counted on more birds than were opened",
                "a line opened with all birds opened at both tenders, those without a lesion among them");
        }
    }

    private int Of(string stage) => birds.GetValueOrDefault(stage);
}
