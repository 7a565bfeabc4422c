using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Curves;

/// <summary>Where a search starts: birds that follow one of the laws tried are met at once, and a weight that counts for nothing changes nothing.</summary>
public class ShapeStartTests
{
    private const double Origin = 40;
    private static readonly double[] AgeDays = [8, 16, 20, 24, 32, 40];
    private static readonly double[] Weights = [2, 1, 1e-14, 3, 1, 0.5];

    private static double Span => AgeDays[^1] - AgeDays[0];

    /// <summary>Rates tried: a quarter of one over the time between the first and the last weigh-in, doubled six times, or nine where the shape is free.</summary>
    [Theory]
    [InlineData(-1.0 / 3, 0.25), InlineData(-1.0 / 3, 1), InlineData(0, 0.25), InlineData(0, 1), InlineData(0, 16), InlineData(1, 2), InlineData(1, 16)]
    public void A_law_of_known_shape_and_a_rate_that_is_tried_is_met(double v, double rateTimesSpan)
    {
        double[] law = [rateTimesSpan / Span, 0.03];

        double[] q = Start(RichardsShape.Fixed(v), 0, LogKilograms(RichardsShape.Fixed(v), law));

        q[0].Should().BeApproximately(law[0], 1e-12);
        q[1].Should().BeApproximately(law[1], 1e-8);
    }

    [Theory]
    [InlineData(0, -0.3, 2), InlineData(1, 0, 32), InlineData(2, 0.5, 4), InlineData(3, 1, 8), InlineData(4, 3, 16)]
    public void A_law_of_a_shape_that_is_tried_is_met(int start, double v, double rateTimesSpan)
    {
        double[] law = [rateTimesSpan / Span, 0.02, v];

        double[] q = Start(RichardsShape.Free(), start, LogKilograms(RichardsShape.Free(), law));

        q[0].Should().BeApproximately(law[0], 1e-12);
        q[1].Should().BeApproximately(law[1], 1e-8);
        q[2].Should().Be(v);
    }

    [Fact]
    public void A_known_shape_is_tried_at_seven_rates_and_from_one_start()
    {
        double[] q = Start(RichardsShape.Fixed(0), 0, LogKilograms(RichardsShape.Fixed(0), [64 / Span, 0.03]));

        q[0].Should().BeApproximately(16 / Span, 1e-12);
        (RichardsShape.Fixed(0).Starts, RichardsShape.Fixed(0).Count).Should().Be((1, 2));
        (RichardsShape.Free().Starts, RichardsShape.Free().Count).Should().Be((7, 3));
    }

    [Theory]
    [InlineData(0), InlineData(1), InlineData(-0.3)]
    public void Where_weights_fall_the_rate_is_one_over_the_time(double v)
    {
        double[] q = Start(RichardsShape.Fixed(v), 0, [0.5, 0.4, 0.3, 0.2, 0.1, 0]);

        q.Should().Equal(1 / Span, 1 / Span);
    }

    [Fact]
    public void A_Lopez_law_that_is_tried_is_met()
    {
        LopezShape shape = new();
        for (int start = 0; start < shape.Starts; start++)
        {
            double[] tried = Start(shape, start, [.. AgeDays.Select(days => days / 20)]);
            double[] law = [3, tried[1], tried[2]];

            double[] q = Start(shape, start, LogKilograms(shape, law));

            q[0].Should().BeApproximately(3, 1e-8);
            q[1..].Should().Equal(law[1..]);
        }
    }

    [Fact]
    public void A_Lopez_law_of_falling_weights_starts_from_the_two_ends() =>
        Start(new LopezShape(), 0, [0.5, 0.4, 0.35, 0.3, 0.2, 0.1])[0].Should().BeApproximately(Math.Exp(0.1 - 0.5), 1e-12);

    [Fact]
    public void Where_the_Lopez_law_has_no_weight_it_says_so()
    {
        double[] log = new double[1];
        bool At(double b, double kappa, double c) => new LopezShape().Evaluate([b, kappa, c], Origin, [Origin], log, []);

        At(3, 0.5, 2).Should().BeTrue();
        At(3, 2, 2).Should().BeTrue();
        At(double.PositiveInfinity, 0.5, 2).Should().BeFalse();
        At(3, 0.5, 0).Should().BeFalse("the exponent is above 0");
        At(3, 0.5, -1).Should().BeFalse();
        At(3, 0.5, double.PositiveInfinity).Should().BeFalse();
        At(3, -1, 2).Should().BeFalse("nothing is divided by 0");
        At(-3, -2, 2).Should().BeFalse("the share done would be negative");
        At(-1.5, 0.5, 2).Should().BeFalse("no weight is 0");
        At(-3, 0.5, 2).Should().BeFalse();
        At(double.NaN, 0.5, 2).Should().BeFalse();
    }

    [Theory]
    [InlineData(0, 1, false), InlineData(1, 0, false), InlineData(-1, 1, false), InlineData(1, -1, false), InlineData(1, 1, true)]
    public void A_Lopez_law_has_a_mature_weight_where_it_grows_and_slows(double b, double kappa, bool has) =>
        new LopezShape().HasMatureWeight([b, kappa, 2]).Should().Be(has);

    [Theory]
    [InlineData("gompertz"), InlineData("logistic"), InlineData("von-bertalanffy"), InlineData("richards"), InlineData("lopez")]
    public void What_is_written_does_not_depend_on_what_was_there(string id)
    {
        CurveFamily family = CurveCase.Family(id);
        double[] q = [0.05, 0.04, 0.9];
        (int parameters, int columns) = (family.Parameters.Count, family.Shape.Count + 1);
        double[] clean = new double[parameters * columns], used = [.. Enumerable.Repeat(7.0, parameters * columns)];
        double[] derivatives = new double[family.Shape.Count], usedDerivatives = [.. Enumerable.Repeat(7.0, family.Shape.Count)];

        family.Shape.ToParameters(0.5, q.AsSpan(0, family.Shape.Count), Origin, new double[parameters], clean);
        family.Shape.ToParameters(0.5, q.AsSpan(0, family.Shape.Count), Origin, new double[parameters], used);
        used.Should().Equal(clean);
        for (int held = CurveShape.NoMatureWeight; held < parameters; held++)
        {
            family.Shape.Hold(held, 0.5, Origin, q.AsSpan(0, family.Shape.Count).ToArray(), derivatives, out _);
            family.Shape.Hold(held, 0.5, Origin, q.AsSpan(0, family.Shape.Count).ToArray(), usedDerivatives, out _);
            usedDerivatives.Should().Equal(derivatives);
        }
    }

    /// <summary>A weight too small or too large for a number is no weight, wherever among the ages it stands.</summary>
    [Theory]
    [InlineData("gompertz", 5.0, 0.2, 40.0), InlineData("logistic", 5.0, 9.0, 90.0), InlineData("von-bertalanffy", 5.0, 0.2, 40.0), InlineData("richards", 5.0, 0.2, 40.0, 0.0), InlineData("lopez", 5.0, 0.0, 40.0, 2.0)]
    public void An_answer_without_a_weight_is_none(string id, params double[] parameters)
    {
        double[] ages = [0, 60], kilograms = new double[2];

        bool sound = CurveCase.Family(id).Evaluate(parameters, ages, kilograms, []);

        (kilograms[0] is > 0 and < double.PositiveInfinity).Should().BeFalse();
        kilograms[1].Should().BePositive();
        sound.Should().BeFalse();
    }

    [Theory]
    [InlineData("gompertz", 5, 0.05), InlineData("logistic", 5, 0.05), InlineData("von-bertalanffy", 5, 0.05), InlineData("richards", 5, 0.05, 0.5)]
    public void An_inflection_at_hatch_is_one(string id, double mature, double rate, double shape = double.NaN)
    {
        double[] parameters = double.IsNaN(shape) ? [mature, rate, 0] : [mature, rate, 0, shape];

        CurveCase.Family(id).FromParameters(parameters).Inflection!.Age.Should().Be(Age.Hatch);
    }

    /// <summary>Birds of a law, but for the third weigh-in, which does not count.</summary>
    private static double[] LogKilograms(CurveShape shape, double[] law)
    {
        double[] log = new double[AgeDays.Length];
        shape.Evaluate(law, Origin, AgeDays, log, []).Should().BeTrue();
        log[2] += 0.05;
        return log;
    }

    private static double[] Start(CurveShape shape, int start, double[] logKilograms)
    {
        double[] q = new double[shape.Count];
        shape.Start(start, Origin, AgeDays, logKilograms, Weights, q, new double[3 * AgeDays.Length]);
        return q;
    }
}
