using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Curves;

/// <summary>What every growth curve owes its caller: runs on every family, on the exponential and on a table.</summary>
public class GrowthCurveContractTests
{
    public static TheoryData<string, int> Curves => CurveCase.All;

    [Theory, MemberData(nameof(Curves))]
    public void Gain_is_the_slope_of_weight(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        foreach (double days in CurveCase.AgeDays)
        {
            double slope = Differences.Slope(at => Kilograms(curve, at), days, 0.01);
            curve.GainAt(Age.FromDays(days)).KilogramsPerDay.Should().BeApproximately(slope, 1e-9, $"at {days} d");
        }
    }

    [Theory, MemberData(nameof(Curves))]
    public void Relative_gain_is_the_slope_of_the_logarithm(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        foreach (double days in CurveCase.AgeDays)
        {
            double slope = Differences.Slope(at => Math.Log(Kilograms(curve, at)), days, 0.01);
            curve.RelativeGainAt(Age.FromDays(days)).PerDay.Should().BeApproximately(slope, 1e-9, $"at {days} d");
        }
    }

    [Theory, MemberData(nameof(Curves))]
    public void Inflection_is_where_gain_is_highest_and_its_numbers_are_the_curves(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        double[] gains = [.. Grid().Select(days => curve.GainAt(Age.FromDays(days)).KilogramsPerDay)];
        if (curve.Inflection is not { } inflection)
        {
            // No highest gain after hatch: it only falls, or only rises.
            gains.Zip(gains.Skip(1), (earlier, later) => later.CompareTo(earlier)).Distinct().Should().ContainSingle();
            return;
        }

        inflection.Gain.KilogramsPerDay.Should().BeApproximately(curve.GainAt(inflection.Age).KilogramsPerDay, 1e-12);
        inflection.Weight.Kilograms.Should().BeApproximately(curve.WeightAt(inflection.Age).Kilograms, 1e-12);
        gains.Should().OnlyContain(gain => gain <= inflection.Gain.KilogramsPerDay);
        foreach (double away in new[] { -1.0, 1 })
        {
            double beside = curve.GainAt(Age.FromDays(inflection.Age.Days + away)).KilogramsPerDay;
            beside.Should().BeLessThan(inflection.Gain.KilogramsPerDay, $"{away} d beside");
        }
    }

    [Theory, MemberData(nameof(Curves))]
    public void Age_at_weight_inverts_weight_at_age(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        foreach (double days in CurveCase.AgeDays)
        {
            AgeAtWeight answer = curve.AgeAt(curve.WeightAt(Age.FromDays(days)));
            answer.Status.Should().Be(AgeAtWeightStatus.Reached);
            answer.Age!.Value.Days.Should().BeApproximately(days, 1e-9);
            answer.Explanation.Should().EndWith(" d.");
        }
    }

    [Theory, MemberData(nameof(Curves))]
    public void Every_weight_of_the_curve_is_found_again_up_to_the_last_bit_below_the_mature_weight(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        if (curve.MatureWeight is not { } mature)
        {
            (id is "exponential" or "table").Should().BeTrue();
            return;
        }

        AgeAtWeight almost = curve.AgeAt(Mass.FromKilograms(Math.BitDecrement(mature.Kilograms)));
        almost.Status.Should().BeOneOf(AgeAtWeightStatus.Reached, AgeAtWeightStatus.AboveMatureWeight);
        foreach (double kilograms in new[] { mature.Kilograms, mature.Kilograms + 1 })
        {
            AgeAtWeight never = curve.AgeAt(Mass.FromKilograms(kilograms));
            never.Status.Should().Be(AgeAtWeightStatus.AboveMatureWeight);
            never.Age.Should().BeNull();
            never.Explanation.Should().StartWith("Never");
        }
    }

    [Theory, MemberData(nameof(Curves))]
    public void Hatch_weight_is_reached_at_hatch_and_less_is_not_reached_after(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        if (!HasHatchWeight(curve, out Mass hatch))
        {
            // A law without a weight at hatch passes every small weight some time after it.
            curve.AgeAt(Mass.FromGrams(1)).Status.Should().Be(AgeAtWeightStatus.Reached);
            return;
        }

        curve.AgeAt(hatch).Age!.Value.Days.Should().BeApproximately(0, 1e-9);
        AgeAtWeight before = curve.AgeAt(Mass.FromKilograms(0.99 * hatch.Kilograms));
        before.Status.Should().Be(AgeAtWeightStatus.BelowHatchWeight);
        before.Age.Should().BeNull();
    }

    [Theory, MemberData(nameof(Curves))]
    public void Mean_gain_is_the_weight_gained_over_the_days_between(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        double gained = Kilograms(curve, 42) - Kilograms(curve, 28);
        curve.MeanGain(Age.FromDays(28), Age.FromDays(42)).KilogramsPerDay.Should().BeApproximately(gained / 14, 1e-14);
        foreach (double to in new[] { 28.0, 21 })
        {
            Action backwards = () => curve.MeanGain(Age.FromDays(28), Age.FromDays(to));
            backwards.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("to").WithMessage("*above 28 d*");
        }
    }

    [Theory, MemberData(nameof(Curves))]
    public void Many_ages_at_once_give_the_same_bits_as_one_at_a_time(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        double[] ageDays = [.. CurveCase.AgeDays.Reverse()];
        double[] kilograms = new double[ageDays.Length];
        double[] kilogramsPerDay = new double[ageDays.Length];
        curve.WeightsAt(ageDays, kilograms);
        curve.GainsAt(ageDays, kilogramsPerDay);
        kilograms.Should().Equal(ageDays.Select(days => curve.WeightAt(Age.FromDays(days)).Kilograms));
        kilogramsPerDay.Should().Equal(ageDays.Select(days => curve.GainAt(Age.FromDays(days)).KilogramsPerDay));
    }

    [Theory, MemberData(nameof(Curves))]
    public void Pounds_in_equals_kilograms_in(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        double days = curve.AgeAt(Mass.FromPounds(4)).Age!.Value.Days;
        days.Should().BeApproximately(curve.AgeAt(Mass.FromKilograms(4 * 0.45359237)).Age!.Value.Days, 1e-12);
    }

    [Theory, MemberData(nameof(Curves))]
    public void Nonsense_is_refused_by_name_with_the_range(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        foreach (double bad in new[] { double.NaN, double.PositiveInfinity, -1 })
        {
            double[] one = new double[1];
            Action weights = () => curve.WeightsAt([bad], one);
            Action gains = () => curve.GainsAt([bad], one);
            weights.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("ageDays").WithMessage("*0 or more d*");
            gains.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("ageDays").WithMessage("*0 or more d*");
        }

        foreach (double bad in new[] { 0.0, -1 })
        {
            Action weight = () => curve.AgeAt(Mass.FromKilograms(bad));
            weight.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("weight").WithMessage("*above 0 kg*");
        }

        Action uneven = () => curve.WeightsAt([1, 2], new double[3]);
        Action unevenGains = () => curve.GainsAt([1, 2], new double[3]);
        uneven.Should().Throw<ArgumentException>().WithParameterName("kilograms").WithMessage("*2 expected*");
        unevenGains.Should().Throw<ArgumentException>().WithParameterName("kilogramsPerDay").WithMessage("*2 expected*");
    }

    [Theory, MemberData(nameof(Curves))]
    public void The_model_says_what_the_curve_is(string id, int set)
    {
        GrowthCurve curve = CurveCase.Curve(id, set);
        curve.Model.Id.Should().Be(id);
        curve.Model.Citations.Should().NotBeEmpty();
        curve.Model.Symbols.Select(symbol => symbol.Symbol).Should().OnlyContain(symbol => curve.Model.Equation.Contains(symbol));
    }

    private static double Kilograms(GrowthCurve curve, double days) => curve.WeightAt(Age.FromDays(days)).Kilograms;

    private static IEnumerable<double> Grid() => Enumerable.Range(0, 121).Select(step => 10 + (step / 2.0));

    private static bool HasHatchWeight(GrowthCurve curve, out Mass hatch)
    {
        try
        {
            hatch = curve.WeightAt(Age.Hatch);
            return true;
        }
        catch (ArgumentOutOfRangeException refusal)
        {
            refusal.ParamName.Should().Be("age");
            refusal.Message.Should().Contain("the curve has a weight after");
            hatch = default;
            return false;
        }
    }
}
