using System.Globalization;
using System.Text;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Writes docs/studies/farm-past.md: <c>dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study farm-past > docs/studies/farm-past.md</c>.</summary>
internal static class FarmPastStudy
{
    public const int Farms = 1500;

    /// <summary>Farms of each cell whose figures stand on the page one by one, so that a test can recompute them.</summary>
    public const int FirstFarms = 2;

    private const string Head = """
        # Study: losses and feed learned from a farm's own batches

        Simulated farms, no birds. **No records of real farms were at hand.** The farms are those of `LossFarm.cs` and `FeedFarm.cs` in `benchmarks/Poultry.Growth.Benchmarks/Studies`; the page is written by

            dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study farm-past > docs/studies/farm-past.md

        A cell holds how many next batches in a hundred lay within their 90 % interval, after so many past batches. The first row is of farms as the model has them; in the others the model is wrong.


        """;

    private const int FeedSeed = 20270801;

    /// <summary>Numbers of past batches.</summary>
    public static IReadOnlyList<int> Past { get; } = [0, 1, 3, 10];

    /// <summary>Farms by how much they lose and how far their batches lie apart, with the row's seed.</summary>
    public static IReadOnlyList<(string Name, double Times, double Apart, int Seed)> Rows { get; } =
    [
        ("as the model says", 1, 1, 20270811),
        ("loses twice as much", 2, 1, 20270812),
        ("its batches differ 1.6 times as much", 1, 1.6, 20270813),
    ];

    public static string Page()
    {
        StringBuilder page = new(Head);
        page.Append(CultureInfo.InvariantCulture, $"{Farms} farms a cell: the Monte Carlo error of 90 % is 0.8 points (standard error).\n\n## Losses\n\n| farm | seed | {string.Join(" | ", Past)} |\n|---|---|{string.Concat(Past.Select(_ => "---|"))}\n");
        StringBuilder first = new("\n## First farms\n\nLearned level, birds lost by the next batch, whether covered; a test recomputes them.\n\n| farm | past batches | number | level | lost | covered |\n|---|---|---|---|---|---|\n");
        foreach ((string name, double times, double apart, int seed) in Rows)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {name} | {seed} |");
            foreach (int batches in Past)
            {
                LossFarm[] farms = [.. Enumerable.Range(0, Farms).AsParallel().AsOrdered().Select(farm => new LossFarm(seed, farm, batches, times, apart))];
                page.Append(CultureInfo.InvariantCulture, $" {100 * farms.Average(farm => farm.Covered ? 1.0 : 0):0.0} |");
                for (int number = 0; number < FirstFarms; number++)
                {
                    first.Append(FirstLosses(name, batches, number, farms[number])).Append('\n');
                }
            }

            page.Append('\n');
        }

        page.Append(CultureInfo.InvariantCulture, $"\n## Feed\n\n| farm | seed | {string.Join(" | ", Past.Skip(1))} |\n|---|---|---|---|---|\n| as the model says | {FeedSeed} |");
        foreach (int batches in Past.Skip(1))
        {
            FeedFarm[] farms = [.. Enumerable.Range(0, Farms).Select(farm => new FeedFarm(FeedSeed, farm, batches))];
            page.Append(CultureInfo.InvariantCulture, $" {100 * farms.Average(farm => farm.Covered ? 1.0 : 0):0.0} |");
            for (int number = 0; number < FirstFarms; number++)
            {
                first.Append(FirstFeed(batches, number, farms[number])).Append('\n');
            }
        }

        return page.Append('\n').Append(first).ToString();
    }

    /// <summary>The farm of a feed row.</summary>
    public static FeedFarm Feed(int farm, int batches) => new(FeedSeed, farm, batches);

    /// <summary>The line of one farm's losses on the page.</summary>
    public static string FirstLosses(string row, int batches, int number, LossFarm farm) =>
        string.Create(CultureInfo.InvariantCulture, $"| {row} | {batches} | {number} | {farm.Level:0.0000} | {farm.NextLost} | {(farm.Covered ? "yes" : "no")} |");

    /// <summary>The line of one farm's feed on the page.</summary>
    public static string FirstFeed(int batches, int number, FeedFarm farm) =>
        string.Create(CultureInfo.InvariantCulture, $"| feed | {batches} | {number} | {farm.Level:0.0000} | - | {(farm.Covered ? "yes" : "no")} |");
}
