using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Fitting;

public class CurveDrawsTests
{
    private static readonly Age[] Ages = [Age.FromDays(49), Age.FromDays(56), Age.FromDays(63)];
    private static Projection Batch => Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured);

    /// <summary>Shares of 20,000 draws below the stated limits: 5, 50, 95 % with a standard error of 0.15, 0.35, 0.15 points; four of them are allowed.</summary>
    [Fact]
    public void Over_many_draws_the_weights_have_the_stated_distribution()
    {
        const int Draws = 20_000;
        double[][] drawn = Drawn(Batch.Draws(1, Ages), Draws);
        for (int age = 0; age < Ages.Length; age++)
        {
            double[] limits = ProjectionCases.Kilograms(Batch.MeanAt(Ages[age]));
            double[] shares = [.. limits.Select(limit => drawn.Count(draw => draw[age] < limit) / (double)Draws)];

            shares[0].Should().BeApproximately(0.05, 0.006);
            shares[1].Should().BeApproximately(0.50, 0.014);
            shares[2].Should().BeApproximately(0.95, 0.006);
        }
    }

    [Fact]
    public void Weights_of_a_draw_belong_together()
    {
        double[][] drawn = Drawn(Batch.Draws(2, Ages), 2000);

        drawn.Count(draw => draw[0] < draw[1] && draw[1] < draw[2]).Should().BeGreaterThan(1980, "a flock gains from week to week");
        Correlation(drawn, 0, 1).Should().BeGreaterThan(Correlation(drawn, 0, 2)).And.BeGreaterThan(0.9);
    }

    [Fact]
    public void A_draw_is_the_same_whoever_asks_and_when()
    {
        double[] first = new double[3];
        double[] again = new double[3];
        CurveDraws draws = Batch.Draws(3, Ages);
        draws.Draw(17, first);
        draws.Draw(4, again);
        Batch.Draws(3, Ages).Draw(17, again);

        again.Should().Equal(first);
        Batch.Draws(4, Ages).Draw(17, again);
        again.Should().NotEqual(first);
    }

    [Fact]
    public void The_same_age_twice_has_the_same_weight()
    {
        double[] kilograms = new double[2];
        Batch.Draws(5, Age.FromDays(56), Age.FromDays(56)).Draw(0, kilograms);

        kilograms[0].Should().BeApproximately(kilograms[1], 1e-6);
    }

    private static double[][] Drawn(CurveDraws draws, int count) => [.. Enumerable.Range(0, count).Select(draw =>
    {
        double[] kilograms = new double[Ages.Length];
        draws.Draw(draw, kilograms);
        return kilograms;
    })];

    private static double Correlation(double[][] rows, int a, int b)
    {
        (double meanA, double meanB) = (rows.Average(row => row[a]), rows.Average(row => row[b]));
        double shared = rows.Sum(row => (row[a] - meanA) * (row[b] - meanB));
        return shared / Math.Sqrt(rows.Sum(row => Math.Pow(row[a] - meanA, 2)) * rows.Sum(row => Math.Pow(row[b] - meanB, 2)));
    }
}
