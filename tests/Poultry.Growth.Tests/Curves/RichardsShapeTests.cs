using Poultry.Growth.Curves;

namespace Poultry.Growth.Tests.Curves;

/// <summary>The one law under four names where it is delicate: at the seams of its series, and at and beyond the limit without a mature weight.</summary>
public class RichardsShapeTests
{
    private const double Origin = 35;
    private const double Rho = 0.05;

    private static readonly double[] Rates = [-0.02, -1e-5, 0, 1e-12, 1e-5, 0.02 / 25, 0.04, 0.1];
    private static readonly double[] Shapes = [-0.9, -1.0 / 3, -1e-3, -1e-9, 0, 1e-12, 1e-6, 0.01, 0.3, 1, 4];

    [Fact]
    public void Gradient_is_that_by_differences_across_the_seams_and_for_falling_rates()
    {
        int points = 0;
        foreach ((double k, double v) in from k in Rates from v in Shapes select (k, v))
        {
            double[] ages = [.. CurveCase.AgeDays.Where(days => Open(k, v, days) > 0.1)];
            ShapeGradient.ShouldBeThatByDifferences(RichardsShape.Free(), [k, Rho, v], Origin, ages);
            ShapeGradient.ShouldBeThatByDifferences(RichardsShape.Fixed(v), [k, Rho], Origin, ages);
            points += ages.Length;
        }

        points.Should().BeGreaterThan(450, "hardly a point lies outside the law");
    }

    [Theory]
    [InlineData(1e-13), InlineData(-1e-4), InlineData(0.0199), InlineData(0.0201), InlineData(-0.0199), InlineData(-0.0201), InlineData(0.3), InlineData(-0.3)]
    public void The_law_has_its_digits_on_both_sides_of_the_seam(double w)
    {
        const double u = -2.5;
        (double log, double byU, double byV) = RichardsShape.Law(w / u, u);
        double expectedLog = 0;
        double expectedByV = 0;
        for (int n = 80; n >= 1; n--)
        {
            expectedLog += u * Math.Pow(w, n - 1) / n;
            expectedByV += n > 1 ? u * u * (n - 1) / n * Math.Pow(w, n - 2) : 0;
        }

        log.Should().BeApproximately(expectedLog, 1e-13);
        byU.Should().BeApproximately(1 / (1 - w), 1e-15);
        byV.Should().BeApproximately(expectedByV, 3e-12);
    }

    [Fact]
    public void Where_the_law_has_no_weight_it_says_so()
    {
        double[] logShape = new double[1];
        RichardsShape.Fixed(-0.9).Evaluate([0.04, 0.08], Origin, [1], logShape, []).Should().BeFalse();
        RichardsShape.Free().Evaluate([0.04, Rho, -1.0], Origin, [35], logShape, []).Should().BeFalse("the shape is above -1");
        RichardsShape.Free().Evaluate([double.NaN, Rho, 0.2], Origin, [35], logShape, []).Should().BeFalse();
    }

    [Theory]
    [InlineData(0.0, 0.0), InlineData(1.0, Rho), InlineData(0.3, 0.3 * Rho), InlineData(3.0, 3 * Rho)]
    public void The_limit_without_a_mature_weight_is_the_exponential(double v, double k)
    {
        RichardsShape shape = RichardsShape.Fixed(v);
        double[] logShape = new double[CurveCase.AgeDays.Length];
        shape.HasMatureWeight([k, Rho]).Should().BeFalse();
        shape.Evaluate([k, Rho], Origin, CurveCase.AgeDays, logShape, []).Should().BeTrue();
        for (int i = 0; i < logShape.Length; i++)
        {
            logShape[i].Should().BeApproximately(Rho * (CurveCase.AgeDays[i] - Origin), 1e-12);
        }
    }

    [Fact]
    public void For_a_shape_below_0_the_limit_is_a_power_of_age()
    {
        double[] logShape = new double[1];
        RichardsShape shape = RichardsShape.Fixed(-1.0 / 3);
        shape.Evaluate([0, Rho], Origin, [60], logShape, []).Should().BeTrue();
        logShape[0].Should().BeApproximately(3 * Math.Log(1 + (Rho * 25 / 3)), 1e-14);
        shape.HasMatureWeight([0, Rho]).Should().BeFalse();
        shape.HasMatureWeight([0.001, Rho]).Should().BeTrue();
    }

    [Fact]
    public void What_the_rest_of_the_coordinates_does_not_allow_cannot_be_held()
    {
        double[] exponential = [0, Rho];
        RichardsShape.Fixed(0).Hold(0, 5, Origin, exponential, new double[2], out _).Should().BeFalse("the exponential has no mature weight");
        RichardsShape.Fixed(0).Hold(2, 40, Origin, exponential, new double[2], out _).Should().BeFalse("nor an inflection");
        double[] q = [0.03, Rho];
        RichardsShape.Fixed(-1.0 / 3).Hold(2, Origin + (Math.Log(3.1) / 0.03), Origin, q, new double[2], out _).Should().BeFalse("there would be no weight at the origin");
    }

    private static double Open(double k, double v, double days)
    {
        double t = days - Origin;
        return 1 - (v * Rho * (k == 0 ? t : -(Math.Exp(-k * t) - 1) / k));
    }
}
