using MathNet.Numerics.Distributions;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>Birds about the curve projected: cockerels and pullets each normal, worked by hand.</summary>
public class FlockSpreadTests
{
    private const double Days = 49, MaleShare = 0.3;

    private static readonly FlockSpread Mixed = new(Sex.Mixed, null, new() { CoefficientOfVariation = 0.11, MaleShare = MaleShare });

    private static double Ratio => SexDimorphism.FemaleRatioAt(Age.FromDays(Days));

    private static double Male => 2 / (1 + Ratio);

    private static double Female => 2 * Ratio / (1 + Ratio);

    private static double Mean => (MaleShare * Male) + ((1 - MaleShare) * Female);

    [Fact]
    public void A_share_of_birds_is_that_of_both_sexes()
    {
        double Below(double kilograms) => (MaleShare * Normal.CDF(2.4 * Male, 0.11 * 2.4 * Male, kilograms)) + ((1 - MaleShare) * Normal.CDF(2.4 * Female, 0.11 * 2.4 * Female, kilograms));

        foreach (double kilograms in (double[])[1.7, 2.3, 2.9])
        {
            Mixed.ShareBelow(kilograms, 2.4, Days).Should().BeApproximately(Below(kilograms), 1e-12);
            (2.4 * Mixed.Quantile(Below(kilograms), Days)).Should().BeApproximately(kilograms, 1e-9);
            Mixed.Weights(2.4 * Mean, Days).ShareBelow(Mass.FromKilograms(kilograms)).Fraction.Should().BeApproximately(Below(kilograms), 1e-9);
        }

        FlockSpread pullets = new(Sex.Female, null, new() { CoefficientOfVariation = 0.11 });
        pullets.ShareBelow(2.3, 2.4, Days).Should().BeApproximately(Normal.CDF(2.4, 0.11 * 2.4, 2.3), 1e-12);
        pullets.Weights(2.4, Days).ShareBelow(Mass.FromKilograms(2.3)).Fraction.Should().BeApproximately(Normal.CDF(2.4, 0.11 * 2.4, 2.3), 1e-12);
    }

    [Fact]
    public void A_catch_at_random_has_a_random_share_of_cockerels()
    {
        double between = ((MaleShare * Math.Pow(Male - Mean, 2)) + ((1 - MaleShare) * Math.Pow(Female - Mean, 2))) / (Mean * Mean);

        Mixed.Squared(Sex.Mixed, Days).Should().BeApproximately((0.0121 * (1 + between)) + between, 1e-12);
    }

    [Fact]
    public void Spread_weighed_is_pooled_by_degrees_of_freedom_less_what_the_sexes_explain()
    {
        WeighIn Weighed(double days, double cv, int birds) => WeighIn.Mean(Age.FromDays(days), Mass.FromKilograms(1), birds, Mass.FromKilograms(cv));
        double Within(double days, double cv)
        {
            double ratio = SexDimorphism.FemaleRatioAt(Age.FromDays(days)), between = Math.Pow((1 - ratio) / (1 + ratio), 2);
            return ((cv * cv) - between) / (1 + between);
        }

        WeighIn[] weighIns = [Weighed(28, 0.13, 40), Weighed(42, 0.16, 10), Weighed(42, 0.10, 15).Of(Sex.Male)];

        new FlockSpread(Sex.Mixed, weighIns, ProjectionOptions.Default).Variation.Should().BeApproximately(
            Math.Sqrt(((39 * Within(28, 0.13)) + (9 * Within(42, 0.16)) + (14 * 0.01)) / 62), 1e-12);
        new FlockSpread(Sex.Male, weighIns, ProjectionOptions.Default).Variation.Should().BeApproximately(
            Math.Sqrt(((39 * 0.0169) + (9 * 0.0256) + (14 * 0.01)) / 62), 1e-12);
    }
}
