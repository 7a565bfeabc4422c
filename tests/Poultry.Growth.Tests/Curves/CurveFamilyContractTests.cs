using System.Reflection;
using Poultry.Growth.Curves;

namespace Poultry.Growth.Tests.Curves;

/// <summary>What every family owes the fitter and the reports.</summary>
public class CurveFamilyContractTests
{
    public static TheoryData<string, int> Families => CurveCase.OfFamilies;

    [Theory, MemberData(nameof(Families))]
    public void Weights_without_a_curve_are_the_weights_of_the_curve(string id, int set)
    {
        double[] kilograms = new double[CurveCase.AgeDays.Length];
        double[] expected = new double[CurveCase.AgeDays.Length];
        CurveCase.Family(id).Evaluate(CurveCase.Parameters(id, set), CurveCase.AgeDays, kilograms, []).Should().BeTrue();
        CurveCase.Curve(id, set).WeightsAt(CurveCase.AgeDays, expected);
        kilograms.Should().Equal(expected);
    }

    [Theory, MemberData(nameof(Families))]
    public void Analytic_gradient_is_that_by_differences(string id, int set)
    {
        CurveFamily family = CurveCase.Family(id);
        double[] parameters = CurveCase.Parameters(id, set);
        int ages = CurveCase.AgeDays.Length;
        double[] gradient = new double[parameters.Length * ages];
        family.Evaluate(parameters, CurveCase.AgeDays, new double[ages], gradient).Should().BeTrue();
        for (int j = 0; j < parameters.Length; j++)
        {
            for (int i = 0; i < ages; i++)
            {
                double step = 1e-3 * Math.Max(Math.Abs(parameters[j]), 0.01);
                double slope = Differences.Slope(value => Weight(family, parameters, j, value, CurveCase.AgeDays[i]), parameters[j], step);
                gradient[(j * ages) + i].Should().BeApproximately(
                    slope, 1e-7 * Math.Max(1, Math.Abs(slope)), $"{family.Parameters[j].Symbol} at {CurveCase.AgeDays[i]} d");
            }
        }
    }

    [Theory, MemberData(nameof(Families))]
    public void The_curve_made_from_parameters_gives_the_same_parameters_back(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        double[] copied = (double[])GetType()
            .GetMethod(nameof(Copy), BindingFlags.NonPublic | BindingFlags.Static)!
            .MakeGenericMethod(curve.GetType())
            .Invoke(null, [curve, CurveCase.Family(id).Parameters.Count])!;
        copied.Should().Equal(CurveCase.Parameters(id, set));
        curve.MatureWeight!.Value.Kilograms.Should().Be(copied[0]);
    }

    [Theory, MemberData(nameof(Families))]
    public void Bad_parameters_are_refused_by_name_with_the_range(string id, int set)
    {
        CurveFamily family = CurveCase.Family(id);
        for (int j = 0; j < family.Parameters.Count; j++)
        {
            double[] broken = [.. CurveCase.Parameters(id, set)];
            string argument = CamelCase(family.Parameters[j].Name);
            foreach (double bad in new[] { double.NaN, double.PositiveInfinity, double.NegativeInfinity })
            {
                broken[j] = bad;
                Action make = () => family.FromParameters(broken);
                make.Should().Throw<ArgumentOutOfRangeException>().WithParameterName(argument).WithMessage("*is not allowed; expected*");
            }

            broken[j] = double.NaN;
            family.Evaluate(broken, CurveCase.AgeDays, new double[CurveCase.AgeDays.Length], []).Should().BeFalse();
        }

        foreach (double[] wrong in new[] { [], CurveCase.Parameters(id, set)[1..], [.. CurveCase.Parameters(id, set), 1.0] })
        {
            Action make = () => family.FromParameters(wrong);
            Action evaluate = () => family.Evaluate(wrong, [7], new double[1], []);
            make.Should().Throw<ArgumentException>().WithParameterName("parameters");
            evaluate.Should().Throw<ArgumentException>().WithParameterName("parameters");
        }
    }

    [Theory, MemberData(nameof(Families))]
    public void Spans_of_the_wrong_length_are_refused(string id, int set)
    {
        Action kilograms = () => CurveCase.Family(id).Evaluate(CurveCase.Parameters(id, set), [7, 14], new double[1], []);
        Action gradient = () => CurveCase.Family(id).Evaluate(CurveCase.Parameters(id, set), [7, 14], new double[2], new double[2]);
        kilograms.Should().Throw<ArgumentException>().WithParameterName("kilograms").WithMessage("*2 expected*");
        gradient.Should().Throw<ArgumentException>().WithParameterName("gradient");
    }

    [Fact]
    public void Families_are_found_by_id_and_an_unknown_id_finds_none()
    {
        CurveFamilies.All.Select(family => family.Id).Should().OnlyHaveUniqueItems();
        CurveFamilies.All.Should().OnlyContain(family => CurveFamilies.Find(family.Id) == family);
        CurveFamilies.All.Should().OnlyContain(family => family.Parameters[0].Name == "mature weight" && family.Parameters[0].Unit == "kg");
        CurveFamilies.Find("Gompertz").Should().BeSameAs(CurveFamilies.Gompertz);
        CurveFamilies.Find("").Should().BeNull();
        CurveFamilies.Find("exponential").Should().BeNull("it is what remains when no mature weight is found, not a family to fit");
    }

    private static double[] Copy<TCurve>(TCurve curve, int count)
        where TCurve : GrowthCurve, ICurveFamily<TCurve>
    {
        double[] parameters = new double[count];
        curve.CopyParameters(parameters);
        return parameters;
    }

    private static string CamelCase(string name) =>
        string.Concat(name.Split(' ').Select((word, place) => place == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..]));

    private static double Weight(CurveFamily family, double[] parameters, int index, double value, double days)
    {
        double[] changed = [.. parameters];
        changed[index] = value;
        double[] kilograms = new double[1];
        family.Evaluate(changed, [days], kilograms, []);
        return kilograms[0];
    }
}
