using MathNet.Numerics.Distributions;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>The loose prior on weights at 14, 35 and 56 d is as wide as the prior of the Gompertz curve says, and never sharper than it may be.</summary>
public class NodePriorTests
{
    /// <summary>Wide enough that no least width counts, and correlated: ln A with ln k and t*, ln k with t*.</summary>
    private static GrowthPrior Wide => GrowthPrior.FromMoments(
        ProjectionCases.Measured.Model, Sex.Male, [Math.Log(6), Math.Log(0.04), 40], [0.25, -0.03, 1.5, -0.03, 0.09, -0.9, 1.5, -0.9, 64]);

    [Fact]
    public void Widths_are_those_of_the_weights_under_the_prior()
    {
        double[] direct = Direct(Wide), widths = Widths(NodePrior.OnWeights(Wide));

        widths[0].Should().BeApproximately(1.1 * direct[0], 0.002 * widths[0]);
        widths[1].Should().BeApproximately(1.4 * direct[1], 0.002 * widths[1]);
        widths[2].Should().BeApproximately(1.25 * direct[2], 0.002 * widths[2]);
    }

    [Fact]
    public void A_sharp_prior_is_widened_and_one_with_a_wider_behind_it_less_so()
    {
        GrowthPrior sharp = ProjectionCases.Prior(Sex.Male, [Math.Log(6), Math.Log(0.04), 40], [0.01, 0.01, 0.1]);
        Widths(NodePrior.OnWeights(sharp)).Zip([0.30, 0.50, 0.15]).Should().OnlyContain(pair => Math.Abs(pair.First - pair.Second) < 1e-12);
        Widths(NodePrior.OnWeights(sharp.WithFallback(Wide, 0.1))).Zip([0.18, 0.50, 0.15]).Should().OnlyContain(pair => Math.Abs(pair.First - pair.Second) < 1e-12);
    }

    [Theory]
    [InlineData(-0.3)]
    [InlineData(0)]
    [InlineData(1)]
    public void The_share_with_a_mature_weight_is_that_of_the_tangent(double shape)
    {
        NodePrior prior = NodePrior.OnWeights(Wide);
        double[] centre = prior.Centre.ToArray(), widths = Widths(prior);
        double distance = new RichardsThroughWeights(shape, centre).DistanceToEndless(new double[3]);
        double Slope(int along)
        {
            double At(double step)
            {
                double[] moved = [.. centre];
                moved[along] += step;
                return new RichardsThroughWeights(shape, moved).DistanceToEndless(new double[3]);
            }

            return widths[along] * (At(1e-5) - At(-1e-5)) / 2e-5;
        }

        double variance = (Slope(1) * Slope(1)) + (Slope(2) * Slope(2)) + (2 * 0.25 * Slope(1) * Slope(2));

        Math.Exp(prior.LogGrownShare(shape)).Should().BeApproximately(Normal.CDF(0, Math.Sqrt(variance), distance), 1e-6);
    }

    /// <summary>Deviations from what a step in each coordinate is worth; early and late growth have a correlation of 0.25.</summary>
    private static double[] Widths(NodePrior prior)
    {
        double Whitened(int along)
        {
            double[] step = [0, 0, 0];
            step[along] = 1;
            prior.Whiten(step);
            return 1 / step[along];
        }

        return [Whitened(0), Whitened(1), Whitened(2) / Math.Sqrt(1 - (0.25 * 0.25))];
    }

    /// <summary>Deviations of ln W35, ln W35/W14 and ln W56/W35, summed over a grid of the three parameters.</summary>
    private static double[] Direct(GrowthPrior prior)
    {
        double[] c = [.. prior.Covariances], sums = new double[3], squares = new double[3];
        double l0 = Math.Sqrt(c[0]), l10 = c[3] / l0, l11 = Math.Sqrt(c[4] - (l10 * l10)), l20 = c[6] / l0, l21 = (c[7] - (l10 * l20)) / l11, l22 = Math.Sqrt(c[8] - (l20 * l20) - (l21 * l21));
        double all = 0;
        for (double a = -5; a <= 5; a += 0.25)
        {
            for (double b = -5; b <= 5; b += 0.25)
            {
                for (double d = -5; d <= 5; d += 0.25)
                {
                    double rate = Math.Exp(prior.Means[1] + (l10 * a) + (l11 * b)), inflection = prior.Means[2] + (l20 * a) + (l21 * b) + (l22 * d);
                    double Log(double days) => prior.Means[0] + (l0 * a) - Math.Exp(-rate * (days - inflection));
                    double weight = Math.Exp(-((a * a) + (b * b) + (d * d)) / 2);
                    double[] x = [Log(35), Log(35) - Log(14), Log(56) - Log(35)];
                    all += weight;
                    for (int j = 0; j < 3; j++)
                    {
                        (sums[j], squares[j]) = (sums[j] + (weight * x[j]), squares[j] + (weight * x[j] * x[j]));
                    }
                }
            }
        }

        return [.. sums.Zip(squares, (sum, square) => Math.Sqrt((square / all) - (sum / all * (sum / all))))];
    }
}
