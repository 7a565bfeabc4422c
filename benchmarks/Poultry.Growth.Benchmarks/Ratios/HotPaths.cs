namespace Poultry.Growth.Benchmarks.Ratios;

/// <summary>One or two hot paths of every room, from the benchmarks' own classes.</summary>
internal static class HotPaths
{
    public static IReadOnlyList<HotPath> All()
    {
        CurveCost curves = new();
        WeighingCost weighing = new();
        FlockCost flock = new();
        GompertzFit fit = new();
        ProjectionCost projection = new();
        FeedForecastCost feed = new();
        DensityPathCost density = new();
        PackCount packs = new();
        LesionCost lesions = new();
        PlanCost plan = new() { Birds = 300, Draws = 1000 };
        FileCost files = new();
        return
        [
            HotPath.Of("Curves: weight at 64 ages", curves.WeightsAtAges, "MathNet, linear spline of a daily table", curves.TableWeights),
            HotPath.Of("Curves: age at 64 weights", curves.AgesAtWeights, "MathNet, root search by Brent", curves.SearchedAges),
            HotPath.Of("Weighing: summary of 200 birds", weighing.Summary, "MathNet, statistics and histogram", weighing.MathNetStatistics),
            HotPath.Of("Weighing: doubtful figures of 400 birds", weighing.Suspicions, "MathNet, three sigmas", weighing.ThreeSigmas),
            HotPath.Of("Flock: chance of 280 alive of 300", flock.ChanceAlive, "MathNet, 1,000 batches sampled", flock.SampledBatches),
            HotPath.Of("Flock: share below a weight", flock.ShareBelow, "MathNet, 1,000 birds sampled", flock.SampledWeights),
            HotPath.Of("Fitting: kernel, nine points, same start", fit.Kernel, "MathNet, Levenberg-Marquardt, analytic Jacobian", fit.MathNet),
            HotPath.Of("Fitting: public fit, nine points", fit.PublicFit, "MathNet, Levenberg-Marquardt, analytic Jacobian", fit.MathNet),
            HotPath.Of("Fitting: a projection, all kinds of curve", projection.Project, "MathNet, Levenberg-Marquardt, one curve", projection.MathNet),
            HotPath.Of("Feeding: protein of a bird on 62 days", feed.Tabulated, "the equation solved each day", feed.Solved),
            HotPath.Of("Housing: nine ages against every limit", density.ByAge, "MathNet, root search for one limit", density.SearchedAge),
            HotPath.Of("Carcass: exact law of packs", packs.ExactCounts, "1,000 flocks sampled bird by bird", packs.ThousandSampledFlocks),
            HotPath.Of("Myopathy: prevalence of a batch, mean and range", lesions.Predict, "MathNet, 10,000 batches sampled", lesions.SampledBatches),
            HotPath.Of("Planning: 1,000 fates of 300 birds", plan.OneDate, "one normal a bird and draw", plan.NormalsOfBirds),
            HotPath.Of("Files: weigh-ins of 10,000 lines", files.ReadWeighIns, "split and parse, unchecked", files.SplitAndParse),
            HotPath.Of("Files: a batch file and its tables", files.ReadBatch, "System.Text.Json, the batch file alone", files.JsonDocumentOnly),
        ];
    }
}
