using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>Curves through the weights at 14, 35 and 56 d are Richards curves, have the slopes they claim, and none jumps where growth neither speeds up nor slows down.</summary>
public class RichardsThroughWeightsTests
{
    private static readonly double[] Ages = [7, 14, 20, 35, 50, 56, 70];

    [Theory]
    [InlineData(-0.1)]
    [InlineData(0)]
    [InlineData(0.8)]
    public void They_are_the_curves_of_mature_weight_rate_and_inflection(double shape)
    {
        double Log(double days)
        {
            double e = Math.Exp(-0.045 * (days - 36));
            return 1.6 - (shape == 0 ? e : Math.Log(1 + (shape * e)) / shape);
        }

        RichardsThroughWeights curve = new(shape, [Log(35), Log(35) - Log(14), Log(56) - Log(35)]);

        foreach (double days in Ages)
        {
            curve.At(days, out double log, out _, out _).Should().BeTrue();
            log.Should().BeApproximately(Log(days), 1e-12);
        }

        curve.DistanceToEndless(stackalloc double[3]).Should().BeApproximately(0.045, 1e-12);
    }

    /// <summary>Growth by Box and Cox's measure from 14 to 35 d over that from 35 to 56 d: 1 is the limit without a mature weight, where series stand in for differences.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0, 1.000001)]
    [InlineData(0, 0.99992)]
    [InlineData(0, 1.003)]
    [InlineData(0, 0.992)]
    [InlineData(0, 2)]
    [InlineData(-0.2, 1)]
    [InlineData(-0.2, 1.008)]
    [InlineData(0.5, 0.997)]
    [InlineData(0.5, 3)]
    public void Values_and_slopes_pass_smoothly_through_the_limit(double shape, double ratio)
    {
        double late = 0.5, early = ratio * late;
        double[] x = [0.3, shape == 0 ? early : Math.Log(1 + (shape * early)) / shape, shape == 0 ? late : -Math.Log(1 - (shape * late)) / shape];
        double rate = -Math.Log(ratio) / 21;
        RichardsThroughWeights curve = new(shape, x);
        foreach (double days in Ages)
        {
            double since = days - 35, growth = late * Accrued(rate, since) / Accrued(rate, 21);
            curve.At(days, out double log, out double byEarly, out double byLate).Should().BeTrue();

            log.Should().BeApproximately(0.3 + (shape == 0 ? growth : -Math.Log(1 - (shape * growth)) / shape), 1e-11);
            byEarly.Should().BeApproximately(Slope(at => LogAt(days, shape, x[0], at, x[2]), x[1]), 2e-6);
            byLate.Should().BeApproximately(Slope(at => LogAt(days, shape, x[0], x[1], at), x[2]), 2e-6);
        }

        double[] slopes = new double[3];
        curve.DistanceToEndless(slopes).Should().BeApproximately(-rate, 1e-12);
        slopes[0].Should().Be(0);
        slopes[1].Should().BeApproximately(Slope(at => new RichardsThroughWeights(shape, [x[0], at, x[2]]).DistanceToEndless(new double[3]), x[1]), 1e-7);
        slopes[2].Should().BeApproximately(Slope(at => new RichardsThroughWeights(shape, [x[0], x[1], at]).DistanceToEndless(new double[3]), x[2]), 1e-7);
    }

    [Theory]
    [InlineData(-0.2, 1.5)]
    [InlineData(-0.5, 0.9)]
    public void A_steady_curve_is_at_the_limit(double shape, double early) =>
        new RichardsThroughWeights(shape, [0, early, RichardsThroughWeights.Steady(shape, early)]).DistanceToEndless(new double[3]).Should().BeApproximately(0, 1e-14);

    [Fact]
    public void There_is_no_weight_before_the_curve_begins() =>
        new RichardsThroughWeights(-0.8, [0.3, 1.5, 0.3]).At(7, out _, out _, out _).Should().BeFalse();

    /// <summary>The time from 35 d on as growth sees it, (exp(λ s) - 1)/λ, without cancellation.</summary>
    private static double Accrued(double rate, double since) => rate == 0 ? since : Math.Exp(rate * since / 2) * 2 * Math.Sinh(rate * since / 2) / rate;

    private static double LogAt(double days, double shape, params ReadOnlySpan<double> x)
    {
        new RichardsThroughWeights(shape, x).At(days, out double log, out _, out _);
        return log;
    }

    private static double Slope(Func<double, double> function, double at) => (function(at + 1e-5) - function(at - 1e-5)) / 2e-5;
}
