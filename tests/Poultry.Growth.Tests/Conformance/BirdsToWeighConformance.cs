using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Source: smallest n with t(n-1) CV / sqrt(n) within the precision, computed with R (qt) and scipy (stats.t.ppf), which agree on all 30 rows.
/// Tolerance: none, these are whole birds.
/// </summary>
public sealed class BirdsToWeighConformance
{
    [Theory]
    [InlineData(0.08, 0.005, 0.9, 695)]
    [InlineData(0.08, 0.005, 0.99, 1703)]
    [InlineData(0.08, 0.01, 0.95, 249)]
    [InlineData(0.08, 0.02, 0.9, 46)]
    [InlineData(0.08, 0.02, 0.99, 110)]
    [InlineData(0.08, 0.03, 0.95, 30)]
    [InlineData(0.08, 0.05, 0.9, 9)]
    [InlineData(0.08, 0.05, 0.99, 21)]
    [InlineData(0.1, 0.005, 0.95, 1540)]
    [InlineData(0.1, 0.01, 0.9, 273)]
    [InlineData(0.1, 0.01, 0.99, 668)]
    [InlineData(0.1, 0.02, 0.95, 99)]
    [InlineData(0.1, 0.03, 0.9, 32)]
    [InlineData(0.1, 0.03, 0.99, 78)]
    [InlineData(0.1, 0.05, 0.95, 18)]
    [InlineData(0.12, 0.005, 0.9, 1561)]
    [InlineData(0.12, 0.005, 0.99, 3826)]
    [InlineData(0.12, 0.01, 0.95, 556)]
    [InlineData(0.12, 0.02, 0.9, 100)]
    [InlineData(0.12, 0.02, 0.99, 243)]
    [InlineData(0.12, 0.03, 0.95, 64)]
    [InlineData(0.12, 0.05, 0.9, 18)]
    [InlineData(0.12, 0.05, 0.99, 43)]
    [InlineData(0.14, 0.005, 0.95, 3015)]
    [InlineData(0.14, 0.01, 0.9, 533)]
    [InlineData(0.14, 0.01, 0.99, 1305)]
    [InlineData(0.14, 0.02, 0.95, 191)]
    [InlineData(0.14, 0.03, 0.9, 61)]
    [InlineData(0.14, 0.03, 0.99, 149)]
    [InlineData(0.14, 0.05, 0.95, 33)]
    public void The_number_of_birds_is_that_of_R_and_scipy(double coefficientOfVariation, double precision, double level, int birds) =>
        BirdsToWeigh.For(coefficientOfVariation, precision, level).Should().Be(birds);
}
