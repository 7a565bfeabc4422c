using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

public class ProjectionTests
{
    private static readonly Projection CheckCase = Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured);
    private static readonly Age EightWeeks = Age.FromWeeks(8);

    [Fact]
    public void Halving_the_shape_step_moves_limits_by_at_most_1_percent()
    {
        foreach (double stop in new double[] { 14, 21, 28 })
        {
            WeighInSeries weighIns = WeighInSeries.Of(ProjectionCases.CheckCase.Where(weighIn => weighIn.Age.Days <= stop));
            double[] coarse = ProjectionCases.Kilograms(Projection.Of(weighIns, ProjectionCases.Measured).MeanAt(EightWeeks));
            double[] fine = ProjectionCases.Kilograms(
                Projection.Of(weighIns, ProjectionCases.Measured, new ProjectionOptions { ShapeStep = 0.05 }).MeanAt(EightWeeks));

            coarse.Zip(fine, (a, b) => Math.Abs((a / b) - 1)).Max().Should().BeLessThan(0.01);
        }
    }

    [Fact]
    public void Without_weigh_ins_the_prior_speaks_and_says_so()
    {
        Projection before = Projection.Of(ProjectionCases.Measured);

        before.Cautions.Should().Contain(caution => caution.Code == "no-weigh-ins");
        before.FamilyWeights[0].Before.Fraction.Should().BeInRange(0.6, 0.61, "the share 0.6, and what the other kind held of curves without a mature weight");
        before.FamilyWeights.Should().AllSatisfy(family => family.After.Fraction.Should().BeApproximately(family.Before.Fraction, 1e-6, "nothing speaks for or against it yet"));
        before.FamilyWeights.Sum(family => family.After.Fraction).Should().BeApproximately(1, 1e-9);
        before.Disagreement.Should().BeNull();
    }

    /// <summary>
    /// The Gompertz part is normal in its parameters: at 56 d the slopes by ln A, ln k and t* are 1, k (t - t*) E and -k E, so that the deviation of ln W is
    /// sqrt(.20² + (.1 * .6913 * .5008)² + (4 * .01978)² + σ²) = .2192 for σ = .02; with the loose curves (sd of ln W35 .30, of ln W56/W35 .15) the
    /// mixture lies between that and the loose .336.
    /// </summary>
    [Fact]
    public void Without_weigh_ins_the_interval_is_that_of_the_prior()
    {
        double[] kilograms = ProjectionCases.Kilograms(Projection.Of(ProjectionCases.Measured).MeanAt(EightWeeks));

        kilograms[1].Should().BeApproximately(4.24, 0.05, "the central curve says 4.24 kg, and the loose curves have the same middle");
        double deviation = Math.Log(kilograms[2] / kilograms[0]) / (2 * 1.6449);
        deviation.Should().BeInRange(0.2192, 0.336);
    }

    /// <summary>Whatever is booked before a bird is weighed: every kind of curve has an optimum, and the answers fit each other.</summary>
    [Theory]
    [InlineData(Sex.Mixed)]
    [InlineData(Sex.Male)]
    [InlineData(Sex.Female)]
    public void Without_weigh_ins_every_shipped_prior_answers_in_full(Sex sex)
    {
        GrowthPrior[] priors = [GrowthPrior.FastGrowingOutdoor(sex), GrowthPrior.FastGrowingObjective(sex), GrowthPrior.SlowGrowing(sex)];
        foreach (Projection before in priors.Select(Projection.Of))
        {
            Mass target = before.MeanAt(EightWeeks).Value;
            Estimate<Age> reached = before.AgeAt(target)!;

            before.Cautions.Should().NotContain(caution => caution.Code == "curves-left-out");
            before.FamilyWeights.Should().AllSatisfy(family => family.After.Fraction.Should().BeApproximately(family.Before.Fraction, 0.001));
            before.ChanceMeanReaches(target, EightWeeks).Fraction.Should().BeApproximately(0.5, 1e-6);
            reached.Value.Days.Should().BeApproximately(56, 1e-4);
            before.ChanceMeanReaches(target, reached.Interval.Low!.Value).Fraction.Should().BeApproximately(0.05, 1e-4);
            before.ShareInBands(EightWeeks, target).Sum(band => band.Share.Fraction).Should().BeApproximately(1, 1e-9);
            before.BirdAt(EightWeeks).Interval.Low!.Value.Should().BeLessThan(before.MeanAt(EightWeeks).Interval.Low!.Value);
            before.BirdAt(EightWeeks).Interval.High!.Value.Should().BeGreaterThan(before.MeanAt(EightWeeks).Interval.High!.Value);
            (before.MeanOf(sex, EightWeeks).Value.Kilograms / target.Kilograms).Should().BeApproximately(1, 1e-12);
        }
    }

    /// <summary>The same share the other way round: not birds about a curve that is in doubt, but a curve in doubt about each of many kinds of bird.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void The_share_of_birds_above_a_weight_is_that_of_the_curve_for_every_kind_of_bird(int weighIns)
    {
        Projection projection = weighIns == 0 ? Projection.Of(ProjectionCases.Measured) : Projection.Of(WeighInSeries.Of(ProjectionCases.CheckCase.Take(weighIns)), ProjectionCases.Measured);
        foreach (double kilograms in (double[])[2.5, 3.3, 4, 4.7, 6])
        {
            double sum = 0, weights = 0;
            for (double z = -6; z <= 6; z += 0.02)
            {
                double weight = Math.Exp(-z * z / 2);
                double chance = projection.ChanceMeanReaches(Mass.FromKilograms(kilograms / (1 + (projection.CoefficientOfVariation * z))), EightWeeks).Fraction;
                (sum, weights) = (sum + (weight * chance), weights + weight);
            }

            projection.ShareAbove(Mass.FromKilograms(kilograms), EightWeeks).Fraction.Should().BeApproximately(sum / weights, 2e-4);
        }
    }

    /// <summary>Birds of 1.2 kg at 7 d: no chickens. From their neighbour's optimum searches run to a mature weight without limit and, begun there, are lost one after the other; begun anew they are not.</summary>
    [Fact]
    public void A_lost_search_does_not_lose_the_kinds_of_curve_next_to_it()
    {
        WeighInSeries heavy = ProjectionCases.Means((7, 1208), (14, 1387), (21, 1882), (28, 2396));
        Projection coarse = Projection.Of(heavy, ProjectionCases.Measured);
        Projection fine = Projection.Of(heavy, ProjectionCases.Measured, new ProjectionOptions { ShapeStep = 0.05 });

        coarse.FamilyWeights.Skip(1).Count(family => family.After.Fraction > 0).Should().BeGreaterThan(10);
        ProjectionCases.Kilograms(coarse.MeanAt(EightWeeks)).Zip(ProjectionCases.Kilograms(fine.MeanAt(EightWeeks)), (a, b) => Math.Abs((a / b) - 1)).Max().Should().BeLessThan(0.01);
    }

    [Fact]
    public void The_order_of_weigh_ins_does_not_matter()
    {
        WeighInSeries turned = WeighInSeries.Of(ProjectionCases.CheckCase.Reverse());

        ProjectionCases.Kilograms(Projection.Of(turned, ProjectionCases.Measured).MeanAt(EightWeeks))
            .Should().Equal(ProjectionCases.Kilograms(CheckCase.MeanAt(EightWeeks)));
    }

    [Fact]
    public void Two_weigh_ins_of_a_day_say_what_their_mean_says_but_for_the_error_of_the_second_weigh_in()
    {
        WeighIn[] twice = [.. ProjectionCases.CheckCase.SelectMany(weighIn => Enumerable.Repeat(WeighIn.Mean(weighIn.Age, weighIn.MeanWeight, 25), 2))];
        ProjectionOptions exactScale = new() { WeighInError = 0 };
        double[] whole = ProjectionCases.Kilograms(Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured, exactScale).MeanAt(EightWeeks));

        ProjectionCases.Kilograms(Projection.Of(WeighInSeries.Of(twice), ProjectionCases.Measured, exactScale).MeanAt(EightWeeks))
            .Zip(whole, (a, b) => Math.Abs((a / b) - 1)).Max().Should().BeLessThan(1e-6);
    }

    [Fact]
    public void A_day_old_weigh_in_changes_nothing_but_the_cautions()
    {
        Projection withHatch = Projection.Of(
            WeighInSeries.Of([.. ProjectionCases.CheckCase, WeighIn.Mean(Age.Hatch, Mass.FromGrams(42), 50)]), ProjectionCases.Measured);

        ProjectionCases.Kilograms(withHatch.MeanAt(EightWeeks)).Should().Equal(ProjectionCases.Kilograms(CheckCase.MeanAt(EightWeeks)));
        withHatch.Cautions.Should().Contain(caution => caution.Code == "young-weigh-ins-left-out");
    }

    [Fact]
    public void A_bird_is_less_sure_than_a_weigh_in_and_that_less_than_the_mean()
    {
        double Width(Estimate<Mass> estimate) => (estimate.Interval.High!.Value - estimate.Interval.Low!.Value).Kilograms;

        Width(CheckCase.MeanAt(EightWeeks)).Should().BeLessThan(Width(CheckCase.NextWeighInAt(EightWeeks, 100)));
        Width(CheckCase.NextWeighInAt(EightWeeks, 100)).Should().BeLessThan(Width(CheckCase.NextWeighInAt(EightWeeks, 5)));
        Width(CheckCase.NextWeighInAt(EightWeeks, 5)).Should().BeLessThan(Width(CheckCase.BirdAt(EightWeeks)));
    }

    [Fact]
    public void Bands_sum_to_1_and_agree_with_a_bird_picked_at_random()
    {
        Estimate<Mass> bird = CheckCase.BirdAt(EightWeeks);
        IReadOnlyList<WeightBand> bands = CheckCase.ShareInBands(EightWeeks, bird.Interval.Low!.Value, bird.Value, bird.Interval.High!.Value);

        bands.Sum(band => band.Share.Fraction).Should().BeApproximately(1, 1e-12);
        bands.Select(band => band.Share.Fraction).Zip([0.05, 0.45, 0.45, 0.05], (ours, asked) => Math.Abs(ours - asked)).Max().Should().BeLessThan(1e-9);
        CheckCase.ShareAbove(bird.Value, EightWeeks).Fraction.Should().BeApproximately(0.5, 1e-9);
        bands[0].ToString().Should().StartWith("below ").And.EndWith(": 5 %");
    }

    [Fact]
    public void The_chance_of_a_weight_is_one_half_at_the_median_and_one_in_twenty_at_the_upper_limit()
    {
        Estimate<Mass> mean = CheckCase.MeanAt(EightWeeks);

        CheckCase.ChanceMeanReaches(mean.Value, EightWeeks).Fraction.Should().BeApproximately(0.5, 1e-9);
        CheckCase.ChanceMeanReaches(mean.Interval.High!.Value, EightWeeks).Fraction.Should().BeApproximately(0.05, 1e-9);
    }

    [Fact]
    public void The_age_of_a_weight_is_when_median_and_limits_have_it()
    {
        Mass weight = Mass.FromKilograms(3.2);
        Estimate<Age> age = CheckCase.AgeAt(weight)!;

        CheckCase.MeanAt(age.Value).Value.Kilograms.Should().BeApproximately(3.2, 1e-6);
        CheckCase.MeanAt(age.Interval.Low!.Value).Interval.High!.Value.Kilograms.Should().BeApproximately(3.2, 1e-6);
        CheckCase.MeanAt(age.Interval.High!.Value).Interval.Low!.Value.Kilograms.Should().BeApproximately(3.2, 1e-6);
    }

    [Fact]
    public void A_weight_that_may_never_come_has_an_open_age_and_one_that_will_not_has_none()
    {
        CheckCase.AgeAt(Mass.FromKilograms(6.5))!.Interval.High.Should().BeNull();
        CheckCase.AgeAt(Mass.FromKilograms(60)).Should().BeNull();
    }

    /// <summary>One sex, normal: 84.13 % of the birds weigh as much when the mean is 1/(1 - c) times the weight, c = .10.</summary>
    [Fact]
    public void A_share_of_the_birds_comes_later_than_the_mean()
    {
        Estimate<Age> most = CheckCase.AgeWhenShareReaches(Probability.FromFraction(0.8413447461), Mass.FromKilograms(2.7))!;

        most.Value.Days.Should().BeApproximately(CheckCase.AgeAt(Mass.FromKilograms(3.0))!.Value.Days, 1e-4);
    }

    [Fact]
    public void Uniformity_of_one_sex_is_that_of_the_normal_curve() =>
        CheckCase.UniformityAt(EightWeeks).Fraction.Should().BeApproximately(0.6827, 0.00005, "growth evidence: CV 10 %, 68.3 %");

    [Fact]
    public void Data_far_from_the_prior_win_and_it_is_said()
    {
        Projection bantams = Projection.Of(ProjectionCases.Means((7, 60), (14, 110), (21, 170), (28, 240), (35, 320), (42, 400)), ProjectionCases.Measured);

        bantams.Disagreement!.Code.Should().Be("prior-and-data-disagree");
        bantams.Cautions.Should().Contain(bantams.Disagreement);
        CheckCase.Disagreement.Should().BeNull();
    }

    [Fact]
    public void A_further_weigh_in_narrows_and_a_later_and_larger_one_more()
    {
        double Then(double days, int birds) => CheckCase.WeighInValue(Age.FromDays(days), birds, EightWeeks).WidthThenFraction;
        WeighInWorth worth = CheckCase.WeighInValue(Age.FromDays(42), 30, EightWeeks);
        Estimate<Mass> now = CheckCase.MeanAt(EightWeeks);

        worth.WidthNowFraction.Should().BeApproximately((now.Interval.High!.Value - now.Interval.Low!.Value).Kilograms / now.Value.Kilograms, 1e-9);
        Then(35, 30).Should().BeLessThan(worth.WidthNowFraction).And.BeGreaterThan(Then(42, 30));
        Then(42, 30).Should().BeGreaterThan(Then(49, 30));
        Then(42, 5).Should().BeGreaterThan(Then(42, 100));
    }

    [Fact]
    public void The_curve_is_that_of_the_medians()
    {
        foreach (double days in new double[] { 10, 30, 56, 90 })
        {
            CheckCase.Curve.WeightAt(Age.FromDays(days)).Kilograms.Should().BeApproximately(CheckCase.MeanAt(Age.FromDays(days)).Value.Kilograms, 1e-12);
        }
    }

    [Fact]
    public void Untested_ages_carry_a_caution()
    {
        CheckCase.MeanAt(Age.FromDays(63)).Cautions.Should().NotContain(caution => caution.Code == "outside-tested-ages");
        CheckCase.MeanAt(Age.FromDays(64)).Cautions.Should().Contain(caution => caution.Code == "outside-tested-ages");
        CheckCase.MeanAt(Age.FromDays(3)).Cautions.Should().Contain(caution => caution.Code == "outside-tested-ages");
    }

    [Fact]
    public void The_kernel_allocates_nothing_and_the_projection_little()
    {
        ProjectionOptions options = ProjectionOptions.Default;
        FlockSpread spread = new(Sex.Male, ProjectionCases.CheckCase, options);
        ProjectionData data = new(ProjectionCases.CheckCase, spread, ProjectionOptions.UsualWeighInError);
        NodeFits fits = new(new NodePlan(ProjectionCases.Measured, options.ShapeStep), data);
        double[] workspace = new double[ProjectionKernel.WorkspaceLength(data.Count)];
        ProjectionKernel.Fit(fits, workspace);
        long before = GC.GetAllocatedBytesForCurrentThread();
        ProjectionKernel.Fit(fits, workspace);

        (GC.GetAllocatedBytesForCurrentThread() - before).Should().Be(0);
        fits.Failed.Should().Be(0);

        before = GC.GetAllocatedBytesForCurrentThread();
        Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured);
        (GC.GetAllocatedBytesForCurrentThread() - before).Should().BeLessThan(16_384, "what is kept is part of what is allocated");
    }

    [Fact]
    public void Weigh_ins_of_the_other_sex_are_refused()
    {
        WeighInSeries pullets = WeighInSeries.Of(ProjectionCases.CheckCase.Select(weighIn => weighIn.Of(Sex.Female)));

        Action project = () => Projection.Of(pullets, ProjectionCases.Measured);

        project.Should().Throw<ArgumentException>().WithMessage("*Female*Male*");
    }
}
