using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Curves;

/// <summary>Families that must agree with each other, and factories that must make the same curve.</summary>
public class KnownIdentitiesTests
{
    private static readonly Mass Mature = Mass.FromGrams(7294);
    private static readonly DailyRate Rate = DailyRate.FromPerDay(0.03944);
    private static readonly Age Fastest = Age.FromDays(39.25);

    [Theory]
    [InlineData(0.0, 1e-14), InlineData(1e-9, 1e-7), InlineData(-1e-9, 1e-7)]
    public void Richards_tends_to_Gompertz(double shape, double within) =>
        ShouldAgree(RichardsCurve.Of(Mature, Rate, Fastest, shape), GompertzCurve.Of(Mature, Rate, Fastest), within);

    [Fact]
    public void Richards_of_shape_1_is_logistic() =>
        ShouldAgree(RichardsCurve.Of(Mature, Rate, Fastest, 1), LogisticCurve.Of(Mature, Rate, Fastest), 1e-13);

    [Fact]
    public void Richards_of_shape_minus_a_third_is_von_Bertalanffy() =>
        ShouldAgree(RichardsCurve.Of(Mature, Rate, Fastest, -1.0 / 3), VonBertalanffyCurve.Of(Mature, Rate, Fastest), 1e-13);

    [Fact]
    public void Three_factories_make_the_same_Gompertz_curve()
    {
        GompertzCurve curve = GompertzCurve.Of(Mature, Rate, Fastest);
        ShouldAgree(GompertzCurve.FromConstant(Mature, Rate, Math.Exp(Rate.PerDay * Fastest.Days)), curve, 1e-13);
        ShouldAgree(GompertzCurve.FromHatchWeight(curve.WeightAt(Age.Hatch), Mature, Rate), curve, 1e-13);
    }

    [Fact]
    public void Two_factories_make_the_same_von_Bertalanffy_curve() => ShouldAgree(
        VonBertalanffyCurve.FromConstant(Mature, Rate, Math.Exp(Rate.PerDay * Fastest.Days) / 3),
        VonBertalanffyCurve.Of(Mature, Rate, Fastest),
        1e-13);

    [Fact]
    public void A_curve_from_pounds_is_the_curve_from_kilograms() => ShouldAgree(
        GompertzCurve.FromHatchWeight(Mass.FromPounds(0.09), Mass.FromPounds(16), DailyRate.FromPerWeek(0.28)),
        GompertzCurve.FromHatchWeight(Mass.FromKilograms(0.09 * 0.45359237), Mass.FromKilograms(16 * 0.45359237), DailyRate.FromPerDay(0.04)),
        1e-13);

    [Fact]
    public void Lopez_starts_at_its_hatch_weight_and_is_halfway_at_its_halfway_age()
    {
        LopezCurve curve = LopezCurve.Of(Mass.FromGrams(42), Mass.FromGrams(6500), Age.FromDays(50), 2.2);
        curve.WeightAt(Age.Hatch).Kilograms.Should().Be(0.042);
        curve.WeightAt(Age.FromDays(50)).Kilograms.Should().BeApproximately(6.542 / 2, 1e-14);
        curve.GainAt(Age.Hatch).KilogramsPerDay.Should().Be(0);
        LopezCurve straight = LopezCurve.Of(Mass.FromGrams(42), Mass.FromGrams(6500), Age.FromDays(50), 1);
        straight.GainAt(Age.Hatch).KilogramsPerDay.Should().BeApproximately(6.458 / 50, 1e-15);
    }

    [Fact]
    public void Exponential_has_one_relative_gain_and_no_end()
    {
        ExponentialCurve curve = ExponentialCurve.Of(Mass.FromGrams(42), DailyRate.FromPerDay(0.07));
        curve.RelativeGainAt(Age.FromDays(33)).PerDay.Should().BeApproximately(0.07, 1e-16);
        curve.MatureWeight.Should().BeNull();
        curve.Inflection.Should().BeNull();
        curve.AgeAt(Mass.FromTonnes(1)).Status.Should().Be(AgeAtWeightStatus.Reached);
    }

    private static void ShouldAgree(GrowthCurve curve, GrowthCurve other, double within)
    {
        foreach (Age age in CurveCase.AgeDays.Skip(1).Select(Age.FromDays))
        {
            Ratio(curve.WeightAt(age).Kilograms, other.WeightAt(age).Kilograms);
            Ratio(curve.GainAt(age).KilogramsPerDay, other.GainAt(age).KilogramsPerDay);
            Ratio(curve.AgeAt(Mass.FromKilograms(2.5)).Age!.Value.Days, other.AgeAt(Mass.FromKilograms(2.5)).Age!.Value.Days);
        }

        Ratio(curve.Inflection!.Age.Days, other.Inflection!.Age.Days);
        Ratio(curve.Inflection.Weight.Kilograms, other.Inflection.Weight.Kilograms);
        Ratio(curve.Inflection.Gain.KilogramsPerDay, other.Inflection.Gain.KilogramsPerDay);

        void Ratio(double one, double two) => (one / two).Should().BeApproximately(1, within);
    }
}
