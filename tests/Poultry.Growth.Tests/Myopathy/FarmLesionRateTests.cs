using Poultry.Growth.Myopathy;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

public class FarmLesionRateTests
{
    /// <summary>No batch: the level is N(-6.32, 0.9), s is lognormal about 1.386 with 0.25, the mean of a batch 0.78 %.</summary>
    [Fact]
    public void Without_inspections_it_is_the_prior()
    {
        FarmLesionRate farm = FarmLesionRate.Learn();

        foreach (double level in new[] { 0.5, 0.9, 0.95 })
        {
            double z = Distributions.NormalQuantile((1 + level) / 2);
            Relative(farm.Level(level).Interval.High!.Value.Share.Fraction, LogitDensity.Logistic(-6.32 + (0.9 * z)), 1e-4);
            Relative(farm.Level(level).Interval.Low!.Value.Share.Fraction, LogitDensity.Logistic(-6.32 - (0.9 * z)), 1e-4);
            Relative(farm.BetweenBatchesLogit(level).Interval.High!.Value, 1.386 * Math.Exp(0.25 * z), 2e-3);
        }

        farm.NextBatch.Mean.Percent.Should().BeApproximately(0.78, 0.005);
        farm.Cautions.Select(caution => caution.Code).Should().StartWith(["no-outdoor-data", "no-inspections"]);
    }

    [Fact]
    public void The_order_of_batches_does_not_matter()
    {
        LesionInspection[] batches = [LesionInspection.Of(300, 0, "a"), LesionInspection.Of(200, 4, "b"), LesionInspection.Of(400, 60, "c"), LesionInspection.Of(250, 1, "d")];
        FarmLesionRate one = FarmLesionRate.Learn(batches), other = FarmLesionRate.Learn(batches.Reverse());

        Relative(other.Level().Value.Share.Fraction, one.Level().Value.Share.Fraction, 1e-12);
        Relative(other.NextBatch.Mean.Share.Fraction, one.NextBatch.Mean.Share.Fraction, 1e-12);
    }

    /// <summary>The likelihood of a batch with many cases is summed on points of its own: 45 cases go one way, 46 the other.</summary>
    [Fact]
    public void Both_ways_to_sum_a_likelihood_agree()
    {
        double At(int found) => Math.Log(FarmLesionRate.Learn(LesionInspection.Of(400, found, "a"), LesionInspection.Of(400, 2, "b")).LongRunRate().Value.Share.Fraction);

        (At(45) - At(44)).Should().BeApproximately(At(46) - At(45), 1e-3);
        (At(47) - At(46)).Should().BeApproximately(At(46) - At(45), 1e-3);
    }

    [Fact]
    public void Zeros_mean_below_and_not_none()
    {
        FarmLesionRate farm = FarmLesionRate.Learn(Enumerable.Range(0, 10).Select(at => LesionInspection.Of(400, 0, FormattableString.Invariant($"batch {at}"))));

        farm.Cautions[1].Text.Should().Be("No lesion in 4000 birds does not mean none: it means a level below about 0.098 % of birds (19 chances in 20).");
        farm.Cautions.Select(caution => caution.Code).Should().Equal("no-outdoor-data", "zeros-mean-below", "batches-not-birds", "next-batch-uncertain", "found-is-not-all");
        farm.ToString().Should().Be("10 batches, 0 of 4000 birds: level 0.0363 % of birds (90 %: 0.012 to 0.098 %)");
    }

    /// <summary>Ten batches narrow the level, the next batch stays wide.</summary>
    [Fact]
    public void The_next_batch_stays_uncertain()
    {
        FarmLesionRate none = FarmLesionRate.Learn(), ten = FarmLesionRate.Learn(((int[])[0, 0, 2, 0, 0, 4, 2, 1, 2, 1]).Select((found, at) => LesionInspection.Of(400, found, FormattableString.Invariant($"batch {at}"))));

        (Width(ten.Level().Interval) / Width(none.Level().Interval)).Should().BeLessThan(0.65);
        (Width(ten.NextBatch.IntervalAt(0.9)) / Width(none.NextBatch.IntervalAt(0.9))).Should().BeGreaterThan(0.75);
    }

    [Fact]
    public void The_next_batch_is_renewed_by_its_own_inspection()
    {
        FarmLesionRate farm = FarmLesionRate.Learn(LesionInspection.Of(400, 3, "a"));

        farm.NextBatch.After(LesionInspection.Of(200, 6)).Mean.Should().BeGreaterThan(farm.NextBatch.Mean);
        farm.NextBatch.After(LesionInspection.Of(200, 0)).Mean.Should().BeLessThan(farm.NextBatch.Mean);
    }

    [Fact]
    public void A_farm_s_own_record_takes_the_place_of_the_published_form()
    {
        FarmLesionRate farm = FarmLesionRate.Learn(LesionInspection.Of(400, 3, "a"));
        BatchAtRisk thinned = new() { KillAge = Age.FromDays(49), IsOutdoor = false, IsThinned = true };

        PlanningRisk.Learned(farm).For(new() { KillAge = Age.FromDays(49) }).Mean.Should().Be(farm.NextBatch.Mean);
        PlanningRisk.Learned(farm).For(thinned).Mean.Should().BeGreaterThan(farm.NextBatch.Mean);
        PlanningRisk.Learned(farm).Sensitivity(thinned).Select(row => row.Code).Should().Equal("thinning");
    }

    [Fact]
    public void A_batch_twice_is_refused() =>
        FluentActions.Invoking(() => FarmLesionRate.Learn(LesionInspection.Of(100, 0, "May"), LesionInspection.Of(100, 0, "may"))).Should().Throw<ArgumentException>().WithMessage("*twice*");

    private static double Width(Interval<BirdPrevalence> interval) =>
        LogitDensity.Logit(interval.High!.Value.Share.Fraction) - LogitDensity.Logit(interval.Low!.Value.Share.Fraction);

    private static void Relative(double got, double expected, double tolerance) => got.Should().BeApproximately(expected, tolerance * Math.Abs(expected));
}
