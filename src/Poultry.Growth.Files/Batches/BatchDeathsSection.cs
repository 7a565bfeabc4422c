using Poultry.Growth.Flock;

namespace Poultry.Growth.Files;

/// <summary>The field <c>deaths</c> of a batch file: birds found dead or culled, from a table beside it.</summary>
internal static class BatchDeathsSection
{
    private static readonly AgedColumn Dead = new("dead", [("birds", Whole)], IsOptional: false, 0, 1e6, "birds dead or culled that day, 0 or more");
    private static readonly AgedColumn Culled = new("culled", [("birds", Whole)], IsOptional: true, 0, 1e6, "birds culled that day, 0 or more, that are not among dead_birds");

    /// <summary>The flock with its deaths counted.</summary>
    public static BatchFlock? Read(JsonSection file, BatchFlock? flock, BatchContext context)
    {
        if (file.Text("deaths", expected: "the name of a file of deaths beside this one") is not { } name || flock is null)
        {
            return flock;
        }

        HeadCountPath placed = flock.HeadCount;
        Deaths[] deaths = [.. context.Table(name, 0, Dead, Culled).Select(row => (row.Age, Dead: (int)(row.Values[0] ?? 0), Culled: (int)(row.Values[1] ?? 0))).Select(row => Deaths.Of(row.Age, row.Dead + row.Culled, row.Culled))];
        if (deaths.Sum(day => (long)day.Birds) > placed.Placed || deaths.Any(day => day.Age < placed.AgeAtPlacement))
        {
            file.Refuse(file.Optional("deaths")!, "names deaths of more birds than were placed, or before placement", "deaths from placement on");
            return flock;
        }

        return deaths.Length == 0 ? flock : flock.With(HeadCountPath.Recorded(placed.Placed, placed.AgeAtPlacement, deaths, placed.Thereafter));
    }

    /// <summary>No number where it is a part of a bird: the reader refuses that.</summary>
    private static double Whole(double birds) => birds == Math.Floor(birds) ? birds : double.NaN;
}
