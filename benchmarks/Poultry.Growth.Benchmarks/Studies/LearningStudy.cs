using System.Globalization;
using System.Text;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Writes docs/studies/learning.md: <c>dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study learning > docs/studies/learning.md</c>.</summary>
internal static class LearningStudy
{
    public const int Farms = 1500;

    /// <summary>Farms of each row whose figures stand on the page one by one, so that a test can recompute them.</summary>
    public const int FirstFarms = 3;

    private const string Head = """
        # Study: learning a farm's own prior

        Simulated farms, no birds: they follow the model that is fitted (Gompertz, normal between farms and between batches, independent
        parameters), so the study shows that the recipe works where the model holds, not that farms follow it. **No records of real farms were at hand.**
        The farms are those of `benchmarks/Poultry.Growth.Benchmarks/Studies/SimulatedFarm.cs`; farm i of a row has the row's seed plus i. The
        page is written by

            dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study learning > docs/studies/learning.md

        Asked is the mean weight at 56 d when weighing of the new batch stops at 21, 28 or 35 d. A cell holds median and 90th percentile of the absolute
        error, the coverage of the 90 % interval and its median width (upper over lower limit, less 1), all in %.


        """;

    public static string Page()
    {
        StringBuilder page = new(Head);
        page.Append(CultureInfo.InvariantCulture, $"{Farms} farms a row: the Monte Carlo error of a coverage of 90 % is 0.8 points (standard error).\n\n");
        page.Append("| past batches | seed | prior | 21 d | 28 d | 35 d |\n|---|---|---|---|---|---|\n");
        StringBuilder searches = new("\n## The searches\n\n\"Unlike\" is the share of new batches whose chance to be like the past ones is below a half, at 21, 28 and 35 d.\n\n");
        searches.Append("| past batches | rounds, median | most | not converged | learned weigh-in error, median % | unlike % |\n|---|---|---|---|---|---|\n");
        StringBuilder firstFarms = new("\n## First farms\n\nMedian error, whether covered, and width in % at 21 d, with the farm's own prior; a test recomputes them.\n\n");
        firstFarms.Append("| past batches | farm | rounds | weigh-in error % | error % | covered | width % | chance like past |\n|---|---|---|---|---|---|---|---|\n");
        foreach (LearningCase row in LearningCase.All)
        {
            FarmOutcome[] farms = [.. Enumerable.Range(0, Farms).AsParallel().AsOrdered().Select(row.Farm)];
            page.Append(Line(row, "shipped", farms, farm => farm.Shipped));
            page.Append(Line(row, "own", farms, farm => farm.Learned));
            searches.Append(Search(row, farms));
            for (int number = 0; number < FirstFarms; number++)
            {
                firstFarms.Append(FirstFarm(row, number, farms[number])).Append('\n');
            }
        }

        return page.Append(searches).Append(firstFarms).ToString();
    }

    /// <summary>The line of one farm on the page.</summary>
    public static string FirstFarm(LearningCase row, int number, FarmOutcome farm)
    {
        Told told = farm.Learned[0];
        string covered = told.Covered ? "yes" : "no";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {row.Name} | {number} | {farm.Rounds} | {100 * farm.WeighInError:0.000} | {100 * told.Error:0.000} | {covered} | {100 * told.Width:0.00} | {told.ChanceLikePast:0.0000} |");
    }

    private static string Line(LearningCase row, string prior, FarmOutcome[] farms, Func<FarmOutcome, IReadOnlyList<Told>> told)
    {
        StringBuilder line = new();
        line.Append(CultureInfo.InvariantCulture, $"| {row.Name} | {row.Seed} | {prior} |");
        for (int stop = 0; stop < LearningCase.Stops.Count; stop++)
        {
            Told[] cell = [.. farms.Select(farm => told(farm)[stop])];
            (double median, double ninth) = (Quantile(cell.Select(one => one.Error), 0.5), Quantile(cell.Select(one => one.Error), 0.9));
            (double coverage, double width) = (cell.Average(one => one.Covered ? 1 : 0), Quantile(cell.Select(one => one.Width), 0.5));
            line.Append(CultureInfo.InvariantCulture, $" {100 * median:0.0}/{100 * ninth:0.0}, {100 * coverage:0.0}, {100 * width:0.0} |");
        }

        return line.Append('\n').ToString();
    }

    private static string Search(LearningCase row, FarmOutcome[] farms)
    {
        double[] unlike = [.. LearningCase.Stops.Select((_, stop) => 100 * farms.Average(farm => farm.Learned[stop].ChanceLikePast < 0.5 ? 1 : 0))];
        (double rounds, double error) = (Quantile(farms.Select(farm => (double)farm.Rounds), 0.5), 100 * Quantile(farms.Select(farm => farm.WeighInError), 0.5));
        (int most, int failed) = (farms.Max(farm => farm.Rounds), farms.Count(farm => !farm.Converged));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {row.Name} | {rounds:0} | {most} | {failed} | {error:0.00} | {unlike[0]:0.0} {unlike[1]:0.0} {unlike[2]:0.0} |\n");
    }

    private static double Quantile(IEnumerable<double> values, double share)
    {
        double[] sorted = [.. values.Order()];
        return sorted[(int)Math.Round(share * (sorted.Length - 1))];
    }
}
