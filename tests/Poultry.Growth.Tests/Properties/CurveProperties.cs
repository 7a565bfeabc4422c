using CsCheck;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Curves;

namespace Poultry.Growth.Tests.Properties;

/// <summary>What holds for any curve of birds, not only for those chosen.</summary>
public class CurveProperties
{
    private static readonly Citation Source = new("Any", "Made up by a generator", HowKnown.Assumption);

    private static readonly Gen<GrowthCurve> AnyCurve =
        from mature in Gen.Double[1, 12]
        from rate in Gen.Double[0.02, 0.1]
        from inflection in Gen.Double[-10, 60]
        from shape in Gen.Double[0, 5]
        from exponent in Gen.Double[0.7, 4]
        from family in Gen.Int[0, 3]
        select family switch
        {
            0 => CurveFamilies.Gompertz.FromParameters(mature, rate, inflection),
            1 => CurveFamilies.Logistic.FromParameters(mature, rate, inflection),
            2 => CurveFamilies.Richards.FromParameters(mature, rate, inflection, shape),
            _ => CurveFamilies.Lopez.FromParameters(mature, 0.04, inflection + 20, exponent),
        };

    private static readonly Gen<(Age Age, Mass Weight)[]> AnyTable =
        from steps in Gen.Select(Gen.Double[0.5, 9], Gen.Double[0, 0.9]).Array[2, 12]
        select steps
            .Select((_, row) => (
                Age.FromDays(steps.Take(row + 1).Sum(step => step.Item1)),
                Mass.FromKilograms(0.04 + steps.Take(row + 1).Sum(step => step.Item2))))
            .ToArray();

    [Fact]
    public void Age_at_weight_inverts_weight_at_age() => Gen.Select(AnyCurve, Gen.Double[0, 70]).Sample((curve, days) =>
    {
        Mass weight = curve.WeightAt(Age.FromDays(days));
        double found = curve.AgeAt(weight).Age!.Value.Days;
        curve.WeightAt(Age.FromDays(found)).Kilograms.Should().BeApproximately(weight.Kilograms, 1e-12);
    });

    [Fact]
    public void Gain_is_the_slope_of_weight() => Gen.Select(AnyCurve, Gen.Double[2, 70]).Sample((curve, days) =>
    {
        double slope = Differences.Slope(at => curve.WeightAt(Age.FromDays(at)).Kilograms, days, 0.01);
        curve.GainAt(Age.FromDays(days)).KilogramsPerDay.Should().BeApproximately(slope, 1e-8);
    });

    [Fact]
    public void A_bird_is_never_lighter_later() => Gen.Select(AnyCurve, Gen.Double[0, 70], Gen.Double[0.01, 20]).Sample((curve, days, later) =>
        curve.MeanGain(Age.FromDays(days), Age.FromDays(days + later)).KilogramsPerDay.Should().BeGreaterThanOrEqualTo(0));

    [Fact]
    public void A_table_rises_between_its_rows_and_is_inverted_by_age_at_weight() =>
        Gen.Select(AnyTable, Gen.Double[0, 1]).Sample((rows, share) =>
        {
            TabulatedCurve curve = TabulatedCurve.Of("Any", Source, rows);
            double days = Math.Min(rows[0].Age.Days + (share * (rows[^1].Age.Days - rows[0].Age.Days)), rows[^1].Age.Days);
            Mass weight = curve.WeightAt(Age.FromDays(days));
            weight.Kilograms.Should().BeInRange(rows.Last(row => row.Age.Days <= days).Weight.Kilograms, rows[^1].Weight.Kilograms);
            curve.GainAt(Age.FromDays(days)).KilogramsPerDay.Should().BeGreaterThanOrEqualTo(-1e-14);
            curve.WeightAt(curve.AgeAt(weight).Age!.Value).Kilograms.Should().BeApproximately(weight.Kilograms, 1e-13);
        });
}
