using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.ManyFigures;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

/// <summary>
/// Figures of fits to R's ChickWeight against references computed in 50-digit arithmetic, agreeing with R 4.2.2 (fixtures beside this file). The fit starts from nothing but the
/// weights. What a fit says of itself is asked in <see cref="ChickWeightTests"/>.
/// </summary>
internal static class ChickWeightChecks
{
    private const string Exact = "R datasets::ChickWeight, references in 50-digit arithmetic, agreeing with R 4.2.2";
    private const string Weighted = "R datasets::ChickWeight, references in R and SciPy";
    private const string Nls = "R 4.2.2, nls with the curve written through 42 g, means of ChickWeight's diet 1";

    private static readonly Lazy<(Compared Mean, Compared StandardError)[]> Predictions = new(() => [.. Table.Read("ChickWeight/reference-predictions.csv").Rows.Select(Predicted)]);

    public static IEnumerable<OutsideCheck> All => new[]
    {
        Digits("CW-p", "parameters of fits that have an optimum", Exact, 6, () => WithOptimum.SelectMany(one => one.Parameters())),
        Digits("CW-se", "their standard errors", Exact, 5, () => WithOptimum.SelectMany(one => one.StandardErrors())),
        Digits("CW-ll", "their log-likelihoods", Exact, 9, () => WithOptimum.Select(one => one.LogLikelihood())),
        Digits("CW-lim", "95 % profile limits, Gompertz and logistic, where they are not open", Exact, 3, () => ReferenceFit.LeastSquares.Where(one => one.HasLimits).SelectMany(one => one.ClosedLimits())),
        Digits("CW-w", "parameters by iterated weights, maximum likelihood and logarithms", Weighted, 5, () => ReferenceFit.Weighted.SelectMany(one => one.Parameters())),
        Digits("CW-wse", "standard errors by iterated weights", Weighted, 5, () => By("irls").SelectMany(one => one.StandardErrors())),
        Digits("CW-wll", "log-likelihoods, maximum likelihood", Weighted, 8, () => By("ml").Select(one => one.LogLikelihood())),
        Digits("CW-m", "predicted means", Exact, 6, () => Predictions.Value.Select(one => one.Mean)),
        Digits("CW-mse", "their standard errors", Exact, 5, () => Predictions.Value.Select(one => one.StandardError)),
    }
    .Concat(HatchKnown("gompertz", 907.716584, 0.0307394602, 334.213527, 0.00491861268, 111.63314980))
    .Concat(HatchKnown("logistic", 317.748807, 0.102393203617, 27.2055252, 0.00390520911, 74.7183845212))
    .Select(check => check with { Kind = CheckKind.OpenDataset });

    private static IEnumerable<ReferenceFit> WithOptimum => ReferenceFit.LeastSquares.Where(one => one.HasOptimum);

    private static IEnumerable<ReferenceFit> By(string method) => ReferenceFit.Weighted.Where(one => one.Reference.Text("method") == method);

    private static (Compared Mean, Compared StandardError) Predicted(Table.Row row)
    {
        GrowthFit fit = ReferenceFit.Of(row.Text("set"), row.Text("family")).Fit;
        string what = $"{row.Text("family")} of {row.Text("set")} at {row.Text("age_d")} d";
        Estimate<Mass> mean = fit.MeanAt(Age.FromDays(row.Number("age_d")), level: 0.90);
        double standardError = (mean.Interval.High!.Value - mean.Value).Grams / Distributions.StudentQuantile(0.95, fit.DegreesOfFreedom);
        return (new(what, mean.Value.Grams, row.Number("mean")), new(what + ", error", standardError, row.Number("se")));
    }

    /// <summary>Within 1e-5; the sum of squares within 1e-6.</summary>
    private static IEnumerable<OutsideCheck> HatchKnown(string family, double mature, double rate, double matureError, double rateError, double sum)
    {
        Lazy<GrowthFit> fit = new(() => GrowthFit.Of(ChickWeightData.Series("dietmean_1"), CurveFamilies.Find(family), ErrorModel.EqualVariance, Mass.FromGrams(42)));
        string what = $" of a {family} curve from 42 g at hatch";
        yield return Recomputed(family + "-A", "A" + what, Nls, "g", mature, 1e-5 * mature, () => 1000 * fit.Value.Parameters[0].Value);
        yield return Recomputed(family + "-k", "k" + what, Nls, "1/d", rate, 1e-5 * rate, () => fit.Value.Parameters[1].Value);
        yield return Recomputed(family + "-Ase", "standard error of A" + what, Nls, "g", matureError, 1e-5 * matureError, () => 1000 * fit.Value.Parameters[0].StandardError);
        yield return Recomputed(family + "-kse", "standard error of k" + what, Nls, "1/d", rateError, 1e-5 * rateError, () => fit.Value.Parameters[1].StandardError);
        yield return Recomputed(family + "-S", "sum of squares" + what, Nls, "g2", sum, 1e-6 * sum, () => 1e6 * fit.Value.Residuals().Sum(residual => Math.Pow(residual.Difference.Kilograms, 2)));
    }
}
