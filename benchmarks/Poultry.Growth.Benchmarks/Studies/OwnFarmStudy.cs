using System.Globalization;
using System.Text;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Where the two recipes meet: priors learned from a farm's own batches, inside the projection of its next one, when curves are as expected and when not.</summary>
internal static class OwnFarmStudy
{
    public const int Farms = 1000;

    /// <summary>Farms of each row whose figures stand on the page one by one, so that a test can recompute them.</summary>
    public const int FirstFarms = 1;

    private const double TargetDays = 56;

    private const string Head = """
        # Study: own past batches inside a projection

        A prior learned from a farm's own batches goes into the projection of the next one. Where all batches follow Gompertz curves, as learning assumes, that is sharp and right. This
        study asks what happens where they do not. **No records of real farms were at hand.** The farms are those of `benchmarks/Poultry.Growth.Benchmarks/Studies/OwnFarm.cs`; the page is written by

            dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study own-farm > docs/studies/own-farm.md

        Asked is the mean weight at 56 d when weighing of the new batch stops. A cell holds median and 90th percentile of the absolute error in %, the coverage of the 90 % interval, its
        median width in %, and in brackets how many projections in 100 said that the batch does not look like what was known; **bold** where the coverage is less than asked.


        """;

    public static string Page()
    {
        StringBuilder page = new(Head);
        page.Append(CultureInfo.InvariantCulture, $"{Farms} farms a row: standard error of a coverage about .01.\n\n");
        page.Append("| farm | seed | prior | asked | " + string.Join(" | ", OwnFarmRow.Stops.Select(stop => stop == 0 ? "no weigh-in" : stop + " d")) + " |\n");
        page.Append("|---|---|---|---|" + string.Concat(OwnFarmRow.Stops.Select(_ => "---|")) + "\n");
        StringBuilder first = new("\n## First farms\n\nLow, median and high at 56 d in kg by the farm's own prior, stop by stop; a test recomputes them.\n\n| farm | bounds |\n|---|---|\n");
        foreach (OwnFarmRow row in OwnFarmRow.All)
        {
            (StudyCell Own, StudyCell Shipped)[] cells = [.. OwnFarmRow.Stops.Select(_ => (new StudyCell(Farms), new StudyCell(Farms)))];
            (int Own, int Shipped)[] said = new (int, int)[OwnFarmRow.Stops.Count];
            Lock gate = new();
            Parallel.For(0, Farms, number =>
            {
                OwnFarm farm = OwnFarm.Draw(row, row.Seed, number);
                GrowthPrior own = farm.History.Learn(SimulatedFarm.Kind, StudyRows.Shipped).Prior;
                for (int stop = 0; stop < OwnFarmRow.Stops.Count; stop++)
                {
                    bool ownSaid = Record(cells[stop].Own, number, farm, OwnFarmRow.Stops[stop], own);
                    bool shippedSaid = Record(cells[stop].Shipped, number, farm, OwnFarmRow.Stops[stop], StudyRows.Shipped);
                    lock (gate)
                    {
                        said[stop] = (said[stop].Own + (ownSaid ? 1 : 0), said[stop].Shipped + (shippedSaid ? 1 : 0));
                    }
                }
            });
            page.Append(Line(row, "own", row.AskedCoverage, [.. cells.Select(cell => cell.Own)], [.. said.Select(count => count.Own)]));
            page.Append(Line(row, "shipped", null, [.. cells.Select(cell => cell.Shipped)], [.. said.Select(count => count.Shipped)]));
            for (int number = 0; number < FirstFarms; number++)
            {
                first.Append(FirstFarm(row, number)).Append('\n');
            }
        }

        return page.Append(first).ToString();
    }

    /// <summary>The line of one farm on the page.</summary>
    public static string FirstFarm(OwnFarmRow row, int number)
    {
        OwnFarm farm = OwnFarm.Draw(row, row.Seed, number);
        GrowthPrior own = farm.History.Learn(SimulatedFarm.Kind, StudyRows.Shipped).Prior;
        return "| " + row.Name + " | " + string.Join("; ", OwnFarmRow.Stops.Select(stop =>
        {
            (double low, double median, double high) = StudyResult.Bounds(farm.ProjectedAt(stop, own), TargetDays);
            return string.Create(CultureInfo.InvariantCulture, $"{low:0.0000} {median:0.0000} {high:0.0000}");
        })) + " |";
    }

    private static bool Record(StudyCell cell, int number, OwnFarm farm, int stop, GrowthPrior prior)
    {
        Projection projection = farm.ProjectedAt(stop, prior);
        (double low, double median, double high) = StudyResult.Bounds(projection, TargetDays);
        cell.Record(number, low, median, high, farm.Kilograms(TargetDays));
        return projection.Disagreement is not null;
    }

    private static string Line(OwnFarmRow row, string prior, double? asked, StudyCell[] cells, int[] said)
    {
        string least = asked is { } coverage ? coverage.ToString(".00", CultureInfo.InvariantCulture) : "";
        return "| " + row.Name + " | " + row.Seed.ToString(CultureInfo.InvariantCulture) + " | " + prior + " | " + least + " | " + string.Join(" | ", cells.Zip(said, (cell, count) =>
        {
            string bold = asked is { } wanted && cell.Coverage < wanted ? "**" : "";
            return string.Create(
                CultureInfo.InvariantCulture, $"{cell.Median:0.0}/{cell.Ninetieth:0.0} {bold}{cell.Coverage:.00}{bold} {cell.Width:0} ({100.0 * count / Farms:0})");
        })) + " |\n";
    }
}
