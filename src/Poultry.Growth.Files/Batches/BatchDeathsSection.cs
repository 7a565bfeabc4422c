using Poultry.Growth.Flock;

namespace Poultry.Growth.Files;

/// <summary>The field <c>deaths</c> of a batch file: birds found dead or culled, from a table beside it.</summary>
internal static class BatchDeathsSection
{
    private static readonly AgedColumn Dead = new("dead", [("birds", number => number)], IsOptional: false, 0, 1e6, "birds dead or culled that day, 0 or more");
    private static readonly AgedColumn Culled = new("culled", [("birds", number => number)], IsOptional: true, 0, 1e6, "birds culled that day, 0 or more, that are not among dead_birds");

    /// <summary>The flock with its deaths counted.</summary>
    public static BatchFlock? Read(JsonSection file, BatchFlock? flock, BatchContext context)
    {
        if (file.Text("deaths", expected: "the name of a file of deaths beside this one") is not { } name || flock is null)
        {
            return flock;
        }

        HeadCountPath placed = flock.HeadCount;
        Deaths[] deaths = [.. context.Table(name, 0, Dead, Culled).Select(row => (row.Age, Dead: Whole(row.Values[0]), Culled: Whole(row.Values[1]))).Select(row => Deaths.Of(row.Age, row.Dead + row.Culled, row.Culled))];
        if (deaths.Sum(day => day.Birds) > placed.Placed || deaths.Any(day => day.Age < placed.AgeAtPlacement))
        {
            file.Refuse(file.Optional("deaths")!, "names deaths of more birds than were placed, or before placement", "deaths from placement on");
            return flock;
        }

        return deaths.Length == 0 ? flock : flock.With(HeadCountPath.Recorded(placed.Placed, placed.AgeAtPlacement, deaths, placed.Thereafter));
    }

    private static int Whole(double? birds) => (int)Math.Round(birds ?? 0);
}
