using System.Text.Json;
using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

public class SavingTests
{
    public static TheoryData<string, string> Fits()
    {
        TheoryData<string, string> fits = [];
        foreach (CurveFamily family in CurveFamilies.All)
        {
            fits.Add(family.Id, "proportional");
        }

        fits.Add("gompertz", "equal");
        fits.Add("gompertz", "iterated");
        fits.Add("gompertz", "sampling");
        return fits;
    }

    [Theory]
    [MemberData(nameof(Fits))]
    public void What_is_saved_comes_back_to_the_last_bit(string family, string errors)
    {
        WeighInSeries weighIns = WeighInSeries.Of(
            [.. Demo.SingleBirds(), WeighIn.Group(Age.FromDays(24), Mass.FromPounds(38.4), 20).Of(Sex.Female).Noted("a note, with a comma"), .. Demo.Series()]);
        GrowthFit fit = GrowthFit.Of(weighIns, CurveFamilies.Find(family), ErrorModel.Find(errors, 0.113, 0.02));
        fit.Status.Should().Be(FitStatus.Converged, fit.Reason);

        GrowthFit loaded = GrowthFit.FromRecord(ThroughJson(fit.ToRecord()));

        loaded.Report().Should().Be(fit.Report());
        loaded.Parameters.Select(parameter => (parameter.Value, parameter.StandardError)).Should().Equal(fit.Parameters.Select(parameter => (parameter.Value, parameter.StandardError)));
        loaded.Correlations.Should().Equal(fit.Correlations);
        loaded.ProfileLimits().Should().Equal(fit.ProfileLimits());
        loaded.Aicc.Should().Be(fit.Aicc);
        loaded.Cautions.Should().Equal(fit.Cautions);
        loaded.WeighIns[3].Note.Should().Be(fit.WeighIns[3].Note);
        foreach (double days in (double[])[10, 40.5, 70])
        {
            loaded.MeanAt(Age.FromDays(days)).Interval.Should().Be(fit.MeanAt(Age.FromDays(days)).Interval);
            loaded.BirdAt(Age.FromDays(days))?.Interval.Should().Be(fit.BirdAt(Age.FromDays(days))?.Interval);
        }
    }

    [Fact]
    public void A_known_hatch_weight_is_saved_too()
    {
        GrowthFit fit = GrowthFit.Of(Demo.Series(), hatchWeight: Mass.FromGrams(42));

        GrowthFit loaded = GrowthFit.FromRecord(ThroughJson(fit.ToRecord()));

        loaded.HatchWeight!.Value.Grams.Should().Be(42);
        loaded.MeanAt(Age.FromDays(60)).Interval.Should().Be(fit.MeanAt(Age.FromDays(60)).Interval);
    }

    [Fact]
    public void A_fit_without_a_curve_is_saved_with_its_reason_and_its_exponential()
    {
        GrowthFit fit = GrowthFit.Of(Conformance.ChickWeight.ChickWeightData.Series("chick_19"), errors: ErrorModel.EqualVariance);

        GrowthFit loaded = GrowthFit.FromRecord(ThroughJson(fit.ToRecord()));

        loaded.Status.Should().Be(FitStatus.NoFiniteMatureWeight);
        loaded.Reason.Should().Be(fit.Reason);
        loaded.Exponential!.Rate.Should().Be(fit.Exponential!.Rate);
        loaded.Exponential.HatchWeight.Kilograms.Should().Be(fit.Exponential.HatchWeight.Kilograms);
    }

    [Fact]
    public void A_record_of_something_else_is_refused()
    {
        GrowthFitRecord record = GrowthFit.Of(Demo.Series()).ToRecord();
        GrowthFitRecord With(string family, string errors, FittedCurveRecord? curve) => new()
        {
            Family = family, Errors = errors, Status = record.Status, Reason = record.Reason, WeighIns = record.WeighIns, Curve = curve,
        };

        FluentActions.Invoking(() => GrowthFit.FromRecord(With("cubic", "equal", record.Curve))).Should().Throw<ArgumentException>().WithMessage("*cubic*");
        FluentActions.Invoking(() => GrowthFit.FromRecord(With("gompertz", "hopeful", record.Curve))).Should().Throw<ArgumentException>().WithMessage("*hopeful*");
        FluentActions.Invoking(() => GrowthFit.FromRecord(With("richards", "equal", record.Curve))).Should().Throw<ArgumentException>().WithMessage("*expected*");
    }

    [Fact]
    public void A_status_and_a_curve_that_contradict_each_other_are_refused()
    {
        GrowthFitRecord record = GrowthFit.Of(Demo.Series()).ToRecord();
        GrowthFitRecord With(FitStatus status, FittedCurveRecord? curve) => new()
        {
            Family = record.Family, Errors = record.Errors, Status = status, Reason = record.Reason, WeighIns = record.WeighIns, Curve = curve,
        };

        FluentActions.Invoking(() => GrowthFit.FromRecord(With(FitStatus.Converged, null))).Should().Throw<ArgumentException>().WithMessage("The status is Converged, and there is no curve; expected*");
        FluentActions.Invoking(() => GrowthFit.FromRecord(With(FitStatus.NotConverged, record.Curve))).Should().Throw<ArgumentException>().WithMessage("The status is NotConverged, and there is a curve; expected*");
    }

    private static GrowthFitRecord ThroughJson(GrowthFitRecord record) =>
        JsonSerializer.Deserialize<GrowthFitRecord>(JsonSerializer.Serialize(record))!;
}
