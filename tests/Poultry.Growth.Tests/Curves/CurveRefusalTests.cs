using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Curves;

/// <summary>Where a curve has no honest number it refuses in words, and what it prints is the same everywhere.</summary>
public class CurveRefusalTests
{
    [Fact]
    public void A_law_without_a_weight_so_early_names_the_first_age()
    {
        GrowthCurve curve = CurveCase.Curve("von-bertalanffy", 1);
        Action weight = () => curve.WeightAt(Age.FromDays(5));
        Action gain = () => curve.GainAt(Age.FromDays(5));
        Action span = () => curve.WeightsAt([42, 5], new double[2]);
        Action mean = () => curve.MeanGain(Age.FromDays(5), Age.FromDays(42));
        string first = "5 d is not allowed; the curve has a weight after 8.38 d only.*";
        weight.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age").WithMessage(first);
        gain.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age").WithMessage(first);
        span.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("ageDays").WithMessage(first);
        mean.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("from").WithMessage(first);
    }

    [Fact]
    public void Richards_with_a_shape_below_0_names_the_same_age_as_von_Bertalanffy()
    {
        GrowthCurve curve = CurveFamilies.Richards.FromParameters(9, 0.03, 45, -1.0 / 3);
        Action weight = () => curve.WeightAt(Age.FromDays(5));
        weight.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age").WithMessage("*after 8.38 d only*");
    }

    [Fact]
    public void A_weight_too_small_for_a_number_and_an_infinite_gain_are_refused()
    {
        GompertzCurve late = GompertzCurve.Of(Mass.FromKilograms(3), DailyRate.FromPerDay(0.5), Age.FromDays(30));
        Action underflow = () => late.WeightAt(Age.Hatch);
        Action relative = () => late.RelativeGainAt(Age.Hatch);
        Action infinite = () => CurveCase.Curve("lopez", 3).GainAt(Age.Hatch);
        underflow.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age").WithMessage("*no weight above 0 with a finite gain*");
        relative.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age");
        infinite.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age").WithMessage("*no weight above 0 with a finite gain*");
    }

    [Fact]
    public void Lopez_stays_a_number_however_old_the_bird()
    {
        GrowthCurve curve = CurveFamilies.Lopez.FromParameters(5, 0.04, 0.001, 60);
        curve.WeightAt(Age.FromDays(1e4)).Kilograms.Should().Be(5);
        curve.GainAt(Age.FromDays(1e4)).KilogramsPerDay.Should().Be(0);
    }

    [Fact]
    public void Factories_name_the_argument()
    {
        Mass mature = Mass.FromKilograms(6);
        DailyRate rate = DailyRate.FromPerDay(0.04);
        Age age = Age.FromDays(40);
        Refuses(() => GompertzCurve.Of(Mass.Zero, rate, age), "matureWeight", "0 kg is not allowed; expected above 0 kg*");
        Refuses(() => GompertzCurve.Of(mature, default, age), "rate", "0 1/d is not allowed; expected above 0 1/d*");
        Refuses(() => GompertzCurve.FromConstant(mature, rate, -1), "constant", "-1 is not allowed; expected above 0*");
        Refuses(() => GompertzCurve.FromConstant(mature, default, 4), "rate", "*above 0 1/d*");
        Refuses(() => GompertzCurve.FromHatchWeight(Mass.Zero, mature, rate), "hatchWeight", "*above 0 kg*");
        Refuses(() => GompertzCurve.FromHatchWeight(mature, mature, rate), "matureWeight", "*above 6 kg*");
        Refuses(() => VonBertalanffyCurve.FromConstant(mature, rate, double.NaN), "constant", "NaN is not allowed*");
        Refuses(() => RichardsCurve.Of(mature, rate, age, -1), "shape", "*above -1*");
        Refuses(() => LopezCurve.Of(mature, Mass.FromKilograms(5), age, 2), "matureWeight", "*above 6 kg*");
        Refuses(() => LopezCurve.Of(Mass.FromKilograms(0.04), mature, Age.Hatch, 2), "halfwayAge", "*above 0 d*");
        Refuses(() => LopezCurve.Of(Mass.FromKilograms(0.04), mature, age, 0), "exponent", "*above 0*");
        Refuses(() => ExponentialCurve.Of(Mass.FromKilograms(0.04), DailyRate.FromPerDay(-0.1)), "rate", "*above 0 1/d*");
    }

    [Fact]
    public void Answers_read_as_sentences()
    {
        GrowthCurve curve = CurveCase.Curve("gompertz", 0);
        curve.AgeAt(Mass.FromKilograms(2.5)).ToString().Should().Be("2.5 kg (5.51 lb) at 37.5 d.");
        curve.AgeAt(Mass.FromKilograms(9)).ToString().Should().Be("Never 9 kg (19.84 lb): the curve tends to 7.294 kg (16.08 lb).");
        curve.AgeAt(Mass.FromGrams(30)).ToString().Should().Be("The curve is above 30 g (1.06 oz) from hatch on.");
        curve.Inflection!.ToString().Should().Be("39.3 d, 2.683 kg (5.92 lb), 105.8 g (3.73 oz) a day");
    }

    private static void Refuses(Action make, string argument, string message) =>
        make.Should().Throw<ArgumentOutOfRangeException>().WithParameterName(argument).WithMessage(message);
}
