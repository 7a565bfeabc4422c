using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Conformance.MixedModels;

/// <summary>
/// Learning against R's nlme 3.1-162 (maximum likelihood, nothing drawn anywhere), by the script, data and results beside this file. Tolerances are relative:
/// Orange 5e-5 for fixed effects, since nlme's own two ends differ by 3e-5 there, 1e-6 for deviations; the twenty batches 1e-6, 1e-5; log-likelihoods 1e-3, 1e-4 absolute.
/// </summary>
public class MixedModelTests
{
    [Theory]
    [InlineData(190, 720, 340, 30, 8)]
    [InlineData(150, 600, 300, 60, 20)]
    public void Orange_trees_with_a_random_asymptote_agree_with_nlme(double asymptote, double middle, double scale, double deviation, double residual)
    {
        MixedGroup[] trees = Groups("orange.csv", "tree", "age_d", "circumference_mm");
        LaplaceEmResult result = LaplaceEm<Logistic>.Run(default, trees, Likelihood([asymptote, middle, scale], [deviation], [0], residual, 1e-9));

        result.Converged.Should().BeTrue();
        result.Rounds.Should().BeLessThanOrEqualTo(40);
        ShouldAgree(result, "orange", ["Asym", "xmid", "scal"], fixedEffects: 5e-5, deviations: 1e-6, logLikelihood: 1e-3);
    }

    [Theory]
    [InlineData(1.7, -3.2, 35, 0.15, 0.1, 3, 0.02)]
    [InlineData(1.9, -3.0, 30, 0.05, 0.2, 1, 0.05)]
    public void Twenty_simulated_batches_agree_with_nlme(
        double logMature, double logRate, double inflection, double first, double second, double third, double residual)
    {
        MixedGroup[] batches = Groups("twenty-batches.csv", "batch", "age_d", "log_kg");
        LaplaceEmResult result = LaplaceEm<LogGompertz>.Run(
            default, batches, Likelihood([logMature, logRate, inflection], [first, second, third], [0, 1, 2], residual, 1e-9));

        result.Converged.Should().BeTrue();
        ShouldAgree(result, "twenty-batches", ["logA", "logk", "tstar"], fixedEffects: 1e-6, deviations: 1e-5, logLikelihood: 1e-4);
    }

    private static void ShouldAgree(LaplaceEmResult result, string set, string[] names, double fixedEffects, double deviations, double logLikelihood)
    {
        Dictionary<string, double> reference = Table.Read("MixedModels/nlme-references.csv").Rows
            .Where(row => row.Text("set") == set).ToDictionary(row => row.Text("quantity"), row => row.Number("value"));
        MixedPopulation population = result.Population;
        int q = population.Random.Length;
        for (int j = 0; j < names.Length; j++)
        {
            ShouldBe(population.Mean[j], reference[names[j]], fixedEffects, names[j]);
        }

        for (int a = 0; a < q; a++)
        {
            ShouldBe(Math.Sqrt(population.Spread[(a * q) + a]), reference["sd_" + names[a]], deviations, "sd of " + names[a]);
            for (int b = a + 1; b < q; b++)
            {
                double correlation = population.Spread[(a * q) + b] / Math.Sqrt(population.Spread[(a * q) + a] * population.Spread[(b * q) + b]);
                string name = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"cor_{a + 1}{b + 1}");
                correlation.Should().BeApproximately(reference[name], 1e-5, name);
            }
        }

        ShouldBe(Math.Sqrt(population.ErrorVariance), reference["residual"], deviations, "residual");
        result.LogLikelihood.Should().BeApproximately(reference["log_likelihood"], logLikelihood);
    }

    private static void ShouldBe(double actual, double expected, double tolerance, string what) =>
        actual.Should().BeApproximately(expected, tolerance * Math.Abs(expected), what);

    private static MixedGroup[] Groups(string file, string group, string age, string value) => MixedModelData.Groups("MixedModels/" + file, group, age, value);

    private static LaplaceEmSettings Likelihood(double[] mean, double[] deviations, int[] random, double residual, double tolerance) =>
        MixedModelData.Likelihood(mean, deviations, random, residual, tolerance);
}
