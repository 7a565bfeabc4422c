using Poultry.Growth.Curves;

namespace Poultry.Growth.Tests.Curves;

/// <summary>What the fitting coordinates of every family owe the solver.</summary>
public class CurveShapeContractTests
{
    private const double Origin = 35;
    private const double LogScale = 0.53;

    public static TheoryData<string, int> Families => CurveCase.OfFamilies;

    [Theory, MemberData(nameof(Families))]
    public void On_birds_that_follow_the_law_the_best_start_is_near_them(string id, int set)
    {
        CurveShape shape = CurveCase.Family(id).Shape;
        double[] logKilograms = LogKilograms(id, set);
        double left = AllStarts(id, set).Min(q => LeftOver(shape, q, logKilograms));
        left.Should().BeLessThan(0.05 * Variance(logKilograms), "the start explains 95 % of the differences of ln weight, the solver does the rest");
    }

    [Theory, MemberData(nameof(Families))]
    public void Gradient_of_the_logarithm_is_that_by_differences(string id, int set)
    {
        ShapeGradient.ShouldBeThatByDifferences(CurveCase.Family(id).Shape, MatureStart(id, set), Origin, CurveCase.AgeDays);
    }

    [Theory, MemberData(nameof(Families))]
    public void Parameters_give_the_same_weights_as_the_coordinates(string id, int set)
    {
        CurveFamily family = CurveCase.Family(id);
        int ages = CurveCase.AgeDays.Length;
        double[] q = MatureStart(id, set);
        double[] kilograms = new double[ages];
        double[] logShape = new double[ages];
        family.Shape.Evaluate(q, Origin, CurveCase.AgeDays, logShape, []).Should().BeTrue();
        family.Evaluate(ToParameters(family, LogScale, q), CurveCase.AgeDays, kilograms, []).Should().BeTrue();
        for (int i = 0; i < ages; i++)
        {
            kilograms[i].Should().BeApproximately(Math.Exp(LogScale + logShape[i]), 1e-11 * kilograms[i]);
        }
    }

    [Theory, MemberData(nameof(Families))]
    public void Derivatives_of_the_parameters_are_those_by_differences(string id, int set)
    {
        CurveFamily family = CurveCase.Family(id);
        int columns = 1 + family.Shape.Count;
        double[] q = MatureStart(id, set);
        double[] jacobian = new double[family.Parameters.Count * columns];
        family.Shape.ToParameters(LogScale, q, Origin, new double[family.Parameters.Count], jacobian);
        for (int parameter = 0; parameter < family.Parameters.Count; parameter++)
        {
            for (int column = 0; column < columns; column++)
            {
                double at = column == 0 ? LogScale : q[column - 1];
                double step = 1e-4 * Math.Max(Math.Abs(at), 1e-3);
                double slope = Differences.Slope(value => Moved(family, q, column, value)[parameter], at, step);
                jacobian[(parameter * columns) + column].Should().BeApproximately(
                    slope, 1e-6 * Math.Max(1e-3, Math.Abs(slope)), $"{family.Parameters[parameter].Symbol} by {column}");
            }
        }
    }

    [Theory, MemberData(nameof(Families))]
    public void A_held_parameter_has_the_value_and_only_one_coordinate_gives_way(string id, int set)
    {
        CurveFamily family = CurveCase.Family(id);
        double[] q = MatureStart(id, set);
        double[] parameters = ToParameters(family, LogScale, q);
        for (int held = 0; held < parameters.Length; held++)
        {
            double value = parameters[held] + (0.01 * Math.Max(Math.Abs(parameters[held]), 0.1));
            double[] given = [.. q];
            double[] derivatives = new double[q.Length];
            family.Shape.Hold(held, value, Origin, given, derivatives, out double logScale).Should().BeTrue();
            family.Shape.HasMatureWeight(given).Should().BeTrue();
            double[] after = ToParameters(family, double.IsNaN(logScale) ? LogScale : logScale, given);
            after[held].Should().BeApproximately(value, 1e-11 * Math.Abs(value), family.Parameters[held].Name);
            int gaveWay = family.Shape.CoordinateFor(held);
            double.IsNaN(logScale).Should().Be(gaveWay != 0);
            for (int j = 0; j < q.Length; j++)
            {
                given[j].Equals(q[j]).Should().Be(1 + j != gaveWay);
                derivatives[j].Should().BeApproximately(GivesWay(family.Shape, held, value, q, j), 1e-5 * Math.Max(1, Math.Abs(derivatives[j])));
            }
        }
    }

    [Theory, MemberData(nameof(Families))]
    public void Weights_that_do_not_grow_still_get_a_finite_start(string id, int set)
    {
        CurveShape shape = CurveCase.Family(id).Shape;
        double[] falling = [.. LogKilograms(id, set).Reverse()];
        for (int start = 0; start < shape.Starts; start++)
        {
            Start(shape, start, falling).Should().OnlyContain(coordinate => double.IsFinite(coordinate));
        }
    }

    /// <summary>How the coordinate that gives way moves with q[j], by differences; 0 for that coordinate itself.</summary>
    private static double GivesWay(CurveShape shape, int held, double value, double[] q, int j)
    {
        int gaveWay = shape.CoordinateFor(held);
        double step = 1e-6 * Math.Max(Math.Abs(q[j]), 1e-3);
        double At(double coordinate)
        {
            double[] moved = [.. q];
            moved[j] = coordinate;
            shape.Hold(held, value, Origin, moved, new double[q.Length], out double logScale);
            return gaveWay == 0 ? logScale : moved[gaveWay - 1];
        }

        return j + 1 == gaveWay ? 0 : (At(q[j] + step) - At(q[j] - step)) / (2 * step);
    }

    private static double[] LogKilograms(string id, int set)
    {
        double[] kilograms = new double[CurveCase.AgeDays.Length];
        CurveCase.Curve(id, set).WeightsAt(CurveCase.AgeDays, kilograms);
        return [.. kilograms.Select(weight => Math.Log(weight))];
    }

    private static double[][] AllStarts(string id, int set)
    {
        CurveShape shape = CurveCase.Family(id).Shape;
        double[] logKilograms = LogKilograms(id, set);
        return [.. Enumerable.Range(0, shape.Starts).Select(start => Start(shape, start, logKilograms))];
    }

    /// <summary>The best of the starts that have a mature weight.</summary>
    private static double[] MatureStart(string id, int set)
    {
        CurveShape shape = CurveCase.Family(id).Shape;
        double[] logKilograms = LogKilograms(id, set);
        return AllStarts(id, set).Where(q => shape.HasMatureWeight(q)).MinBy(q => LeftOver(shape, q, logKilograms))!;
    }

    private static double[] Start(CurveShape shape, int start, double[] logKilograms)
    {
        double[] q = new double[shape.Count];
        double[] even = [.. Enumerable.Repeat(1.0, logKilograms.Length)];
        shape.Start(start, Origin, CurveCase.AgeDays, logKilograms, even, q, new double[3 * logKilograms.Length]);
        return q;
    }

    private static double LeftOver(CurveShape shape, double[] q, double[] logKilograms)
    {
        double[] logShape = new double[logKilograms.Length];
        if (!shape.Evaluate(q, Origin, CurveCase.AgeDays, logShape, []))
        {
            return double.PositiveInfinity;
        }

        return Variance([.. logKilograms.Zip(logShape, (weighed, law) => weighed - law)]);
    }

    private static double Variance(double[] values) => values.Average(value => Math.Pow(value - values.Average(), 2));

    private static double[] Moved(CurveFamily family, double[] q, int column, double value)
    {
        double[] moved = [.. q];
        if (column > 0)
        {
            moved[column - 1] = value;
        }

        return ToParameters(family, column == 0 ? value : LogScale, moved);
    }

    private static double[] ToParameters(CurveFamily family, double logScale, double[] q)
    {
        double[] parameters = new double[family.Parameters.Count];
        family.Shape.ToParameters(logScale, q, Origin, parameters, new double[parameters.Length * (1 + q.Length)]);
        return parameters;
    }
}
