using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Fitting;

public class LaplaceEmTests
{
    private static readonly GrowthPrior Shipped = StudyRows.Shipped;

    /// <summary>The search as shipped, stopped at 1e-4, against a direct one: mu within 5e-4 standard deviations, standard deviations and tau within 1e-3.</summary>
    [Theory]
    [InlineData(11, 8)]
    [InlineData(12, 8)]
    [InlineData(13, 3)]
    [InlineData(14, 1)]
    public void The_search_ends_where_a_direct_optimiser_of_the_same_objective_does(int seed, int batches)
    {
        SimulatedFarm farm = new(seed, batches, otherStrain: false, weighInError: 0.02);
        MixedGroup[] groups = [.. farm.History.Select(SimulatedFarm.GroupOf)];

        LaplaceEmResult result = PriorLearning.Run(groups, Shipped);
        (double[] mean, double[] deviations, double weighInError) = LinearisedOptimum.Of(groups, Shipped);

        result.Converged.Should().BeTrue();
        for (int i = 0; i < 3; i++)
        {
            double deviation = Math.Sqrt(result.Population.Spread[i * 4]);
            result.Population.Mean[i].Should().BeApproximately(mean[i], 5e-4 * deviation);
            deviation.Should().BeApproximately(deviations[i], 1e-3 * deviations[i]);
        }

        Math.Sqrt(result.Population.ErrorVariance).Should().BeApproximately(weighInError, 1e-3 * weighInError);
    }

    [Fact]
    public void A_population_that_nothing_holds_together_is_given_up()
    {
        // One batch, nothing drawn: mu is known, S runs to nothing, and no claim is made.
        MixedGroup one = SimulatedFarm.GroupOf(new SimulatedFarm(15, 1, otherStrain: false, weighInError: 0.02).History[0]);
        MixedPopulation start = MixedPopulation.Of(Shipped.Mean, Shipped.Covariance, [0, 1, 2], 4e-4)!;

        LaplaceEmResult result = LaplaceEm<LogGompertz>.Run(default, [one], new() { Start = start, Tolerance = 1e-8, RoundLimit = 50 });

        result.Converged.Should().BeFalse();
    }

    [Fact]
    public void Slopes_of_the_curve_are_those_of_differences()
    {
        double[] theta = [1.9, -3.2, 37];
        double[] days = [0, 7, 21, 42, 70];
        (double[] values, double[] slopes, double[] up, double[] down, double[] unused) = (new double[5], new double[15], new double[5], new double[5], new double[15]);
        default(LogGompertz).Evaluate(theta, days, values, slopes);
        for (int j = 0; j < 3; j++)
        {
            double step = 1e-6 * Math.Abs(theta[j]);
            double[] moved = [.. theta];
            moved[j] = theta[j] + step;
            default(LogGompertz).Evaluate(moved, days, up, unused);
            moved[j] = theta[j] - step;
            default(LogGompertz).Evaluate(moved, days, down, unused);
            for (int i = 0; i < days.Length; i++)
            {
                slopes[(j * 5) + i].Should().BeApproximately((up[i] - down[i]) / (2 * step), 1e-7 * (1 + Math.Abs(slopes[(j * 5) + i])));
            }
        }
    }
}
