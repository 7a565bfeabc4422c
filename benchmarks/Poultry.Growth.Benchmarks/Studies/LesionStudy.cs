using System.Globalization;
using System.Text;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Writes docs/studies/lesions.md: <c>dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study lesions > docs/studies/lesions.md</c>.</summary>
internal static class LesionStudy
{
    public const int Farms = 1000;

    /// <summary>Farms of each row whose figures stand on the page one by one, so that a test can recompute them.</summary>
    public const int FirstFarms = 3;

    private const string Head = """
        # Study: learning a farm's own rate of lesions

        Simulated farms, no birds: they follow the model that is fitted, but for the last two rows, so the study shows that the recipe works where the model holds and what
        happens where it does not. **No records of real farms were at hand.** The farms are those of `benchmarks/Poultry.Growth.Benchmarks/Studies/LesionFarm.cs`; farm i of a
        row has the row's seed plus i. The page is written by

            dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study lesions > docs/studies/lesions.md

        A cell holds the coverage of the 90 % interval in %, its median width as a part of that without any inspection, and the median error of the middle, both on the logit scale.


        """;

    /// <summary>Past batches, their spread, and the row's seed.</summary>
    public static IReadOnlyList<(string Name, int Batches, double Spread, int Seed)> Rows { get; } =
    [
        ("3 batches", 3, 1.386, 1_000_000),
        ("5 batches", 5, 1.386, 2_000_000),
        ("10 batches", 10, 1.386, 3_000_000),
        ("20 batches", 20, 1.386, 4_000_000),
        ("10 batches, alike (spread 0.9)", 10, 0.9, 5_000_000),
        ("10 batches, far apart (spread 2.0)", 10, 2.0, 6_000_000),
    ];

    public static string Page()
    {
        StringBuilder page = new(Head);
        page.Append(CultureInfo.InvariantCulture, $"{Farms} farms a row: the Monte Carlo error of a coverage of 90 % is 0.9 points (standard error).\n\n");
        page.Append("| past batches | seed | level | rate in the long run | next batch |\n|---|---|---|---|---|\n");
        StringBuilder first = new("\n## First farms\n\nLevel: error, whether covered, width; a test recomputes them.\n\n| past batches | farm | error | covered | width |\n|---|---|---|---|---|\n");
        LesionFarm prior = new(0, 0, 1);
        foreach ((string name, int batches, double spread, int seed) in Rows)
        {
            LesionFarm[] farms = [.. Enumerable.Range(0, Farms).AsParallel().AsOrdered().Select(number => new LesionFarm(seed + number, batches, spread))];
            page.Append(CultureInfo.InvariantCulture, $"| {name} | {seed} |{Cell(farms, prior, farm => farm.Level)}{Cell(farms, prior, farm => farm.Rate)}{Cell(farms, prior, farm => farm.Next)}\n");
            for (int number = 0; number < FirstFarms; number++)
            {
                first.Append(FirstFarm(name, number, farms[number])).Append('\n');
            }
        }

        return page.Append(first).ToString();
    }

    /// <summary>The line of one farm on the page.</summary>
    public static string FirstFarm(string row, int number, LesionFarm farm)
    {
        string covered = farm.Level.Covered ? "yes" : "no";
        return string.Create(CultureInfo.InvariantCulture, $"| {row} | {number} | {farm.Level.Error:0.0000} | {covered} | {farm.Level.Width:0.0000} |");
    }

    private static string Cell(LesionFarm[] farms, LesionFarm prior, Func<LesionFarm, LesionFarm.Told> told)
    {
        double Median(Func<LesionFarm, double> figure) => farms.Select(figure).Order().ElementAt(farms.Length / 2);
        double coverage = 100 * farms.Average(farm => told(farm).Covered ? 1 : 0), width = Median(farm => told(farm).Width) / told(prior).Width;
        return string.Create(CultureInfo.InvariantCulture, $" {coverage:0.0}, {width:0.00}, {Median(farm => told(farm).Error):0.00} |");
    }
}
