using MathNet.Numerics.LinearAlgebra;
using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Curves;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// A breeder's printed performance objectives, Indian River Meat, 2012 edition, weekly body weights in g of 0 to 70 d, as an open
/// collection transcribes them (secondary), and Gompertz curves fitted to them by plain least squares (own arithmetic, apart from this library).
/// </summary>
/// <remarks>
/// The least-squares point is where one more Gauss-Newton step goes nowhere: from parameters found by another program the step must
/// stay within half of their last digit, which holds weights and gradient. An earlier fit to 0 to 70 d is on record as 7294 g,
/// 0.03944/d, 39.25 d (males) and 5685 g, 0.04073/d, 36.46 d (females), rows and weights not stated: it is not the least-squares point of
/// these rows (7321 and 5680 g), but follows them as closely (14.8 against 14.6 g for males), and its derived numbers are held here.
/// The objectives are a smoothed target: the distance of a curve from the rows says how far a Gompertz curve can follow one, not how
/// well it predicts birds; at hatch it is 24 to 27 g too heavy.
/// </remarks>
public class Objectives2012Tests
{
    private static readonly double[] Males = [42, 184, 477, 943, 1550, 2246, 2971, 3679, 4338, 4929, 5440];
    private static readonly double[] Females = [42, 183, 463, 882, 1403, 1973, 2550, 3105, 3615, 4057, 4410];
    private static readonly double[] AgeDays = [.. Enumerable.Range(0, 11).Select(week => 7.0 * week)];

    [Theory]
    [InlineData("males", 70, 7320.86, 0.0393155, 39.3619)]
    [InlineData("males", 56, 7021.81, 0.0408095, 38.2121)]
    [InlineData("females", 70, 5680.37, 0.0407965, 36.4422)]
    public void The_least_squares_point_of_another_program_is_ours(string sex, double lastDays, double grams, double rate, double inflection)
    {
        double[] ageDays = [.. AgeDays.Where(days => days <= lastDays)];
        double[] kilograms = new double[ageDays.Length];
        double[] gradient = new double[3 * ageDays.Length];
        CurveFamilies.Gompertz.Evaluate([grams / 1000, rate, inflection], ageDays, kilograms, gradient).Should().BeTrue();
        double[] rest = [.. kilograms.Select((curve, week) => (Table(sex)[week] / 1000) - curve)];
        Vector<double> step = Matrix<double>.Build.Dense(ageDays.Length, 3, gradient).QR().Solve(Vector<double>.Build.Dense(rest));
        (1000 * step[0]).Should().BeInRange(-0.005, 0.005, "g");
        step[1].Should().BeInRange(-0.00000005, 0.00000005, "1/d");
        step[2].Should().BeInRange(-0.00005, 0.00005, "d");
    }

    [Theory]
    [InlineData("males", 14.8, 24.2), InlineData("females", 14.0, 26.8)]
    public void The_curve_follows_the_rows(string sex, double rmsGrams, double largestGrams)
    {
        GompertzCurve curve = Curve(sex);
        double[] rest = [.. Table(sex).Select((printed, week) => printed - curve.WeightAt(Age.FromWeeks(week)).Grams)];
        Math.Sqrt(rest.Average(r => r * r)).Should().BeApproximately(rmsGrams, 0.05);
        rest.Max(Math.Abs).Should().BeApproximately(largestGrams, 0.05);
    }

    [Theory]
    [InlineData("males", 2683.3, 105.83, 66.2), InlineData("females", 2091.4, 85.18, 68.8)]
    public void Derived_numbers_follow_from_the_parameters(string sex, double inflectionGrams, double gramsPerDay, double hatchGrams)
    {
        GompertzCurve curve = Curve(sex);
        curve.Inflection!.Weight.Grams.Should().BeApproximately(inflectionGrams, 0.05);
        curve.Inflection.Gain.GramsPerDay.Should().BeApproximately(gramsPerDay, 0.005);
        curve.WeightAt(Age.Hatch).Grams.Should().BeApproximately(hatchGrams, 0.05);
    }

    [Fact]
    public void The_table_as_a_curve_puts_the_highest_gain_in_the_same_week()
    {
        Inflection table = CurveCase.Objective2012Females().Inflection!;
        table.Age.Days.Should().BeApproximately(Curve("females").Inflection!.Age.Days, 3.5, "half the distance of two rows");
        table.Gain.GramsPerDay.Should().BeApproximately((2550 - 1973) / 7.0, 2, "the largest weekly step is from 35 to 42 d");
    }

    private static double[] Table(string sex) => sex == "males" ? Males : Females;

    private static GompertzCurve Curve(string sex) => sex == "males"
        ? GompertzCurve.Of(Mass.FromGrams(7294), DailyRate.FromPerDay(0.03944), Age.FromDays(39.25))
        : GompertzCurve.Of(Mass.FromGrams(5685), DailyRate.FromPerDay(0.04073), Age.FromDays(36.46));
}
