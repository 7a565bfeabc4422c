using System.Globalization;
using System.Text;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>How far the limits of a projection move when the step between its shapes is halved: writes docs/studies/shape-step.md.</summary>
internal static class ShapeStepStudy
{
    public const int Batches = 200;

    /// <summary>Batches of each row whose figures stand on the page one by one, so that a test can recompute them.</summary>
    public const int FirstBatches = 3;

    private const long Seed = 20270501;

    private const string Head = """
        # Study: halving the step between shapes

        A projection tries Richards curves of shapes 0.1 apart (0.05 below 0.05). Here both steps are halved, and the largest move of its limits (5, 50 and 95 % at 49, 56 and 63 d) is taken over all stops of a simulated batch. The
        batches are those of [the study of projection](projection.md) under another seed; the page is written by

            dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study shape-step > docs/studies/shape-step.md

        Asked is at most 1 %.

        """;

    public static IReadOnlyList<StudyRow> Rows => StudyRows.All;

    public static string Page()
    {
        StringBuilder page = new(Head);
        page.Append(CultureInfo.InvariantCulture, $"{Batches} batches a row, seed {Seed}. Largest move of a limit of a batch, in %.\n\n| truth | median | 99th percentile | most |\n|---|---|---|---|\n");
        StringBuilder first = new("\n## First batches\n\n| truth | batch | move % |\n|---|---|---|\n");
        foreach (StudyRow row in Rows)
        {
            double[] moves = [.. Enumerable.Range(0, Batches).AsParallel().AsOrdered().Select(batch => Move(row, batch))];
            double[] sorted = [.. moves.Order()];
            page.Append(CultureInfo.InvariantCulture, $"| {row.Name} | {sorted[Batches / 2]:0.00} | {sorted[(int)(0.99 * Batches)]:0.00} | {sorted[^1]:0.00} |\n");
            for (int batch = 0; batch < FirstBatches; batch++)
            {
                first.Append(FirstBatch(row, batch, moves[batch])).Append('\n');
            }
        }

        return page.Append(first).ToString();
    }

    /// <summary>The line of one batch on the page.</summary>
    public static string FirstBatch(StudyRow row, int batch, double move) => string.Create(CultureInfo.InvariantCulture, $"| {row.Name} | {batch} | {move:0.000} |");

    /// <summary>The largest move of a limit of a batch, in %.</summary>
    public static double Move(StudyRow row, int batch)
    {
        SimulatedBatch simulated = SimulatedBatch.Draw(row, Seed, batch);
        double most = 0;
        foreach (int stop in row.Stops)
        {
            Projection coarse = StudyResult.Project(row, simulated, stop, ProjectionOptions.Default);
            Projection fine = StudyResult.Project(row, simulated, stop, new ProjectionOptions { ShapeStep = ProjectionOptions.Default.ShapeStep / 2 });
            foreach (double days in StudyResult.Targets)
            {
                ((double low, double median, double high), (double fineLow, double fineMedian, double fineHigh)) = (StudyResult.Bounds(coarse, days), StudyResult.Bounds(fine, days));
                most = Math.Max(most, Math.Max(Math.Abs((low / fineLow) - 1), Math.Max(Math.Abs((median / fineMedian) - 1), Math.Abs((high / fineHigh) - 1))));
            }
        }

        return 100 * most;
    }
}
