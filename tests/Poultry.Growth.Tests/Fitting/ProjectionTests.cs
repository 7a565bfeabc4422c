using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>How weigh-ins and prior make a projection.</summary>
public sealed class ProjectionTests
{
    private static Projection CheckCase => Projection.Of(ProjectionCases.CheckCase, ProjectionCases.Measured);
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
    public void Data_far_from_the_prior_win_and_it_is_said()
    {
        Projection bantams = Projection.Of(ProjectionCases.Means((7, 60), (14, 110), (21, 170), (28, 240), (35, 320), (42, 400)), ProjectionCases.Measured);

        bantams.Disagreement!.Code.Should().Be("prior-and-data-disagree");
        bantams.Cautions.Should().Contain(bantams.Disagreement);
        CheckCase.Disagreement.Should().BeNull();
    }

    [Fact]
    public void The_curve_stays_level_where_the_birds_lost_weight()
    {
        Projection sick = Projection.Of(
            WeighInSeries.Of(new[] { (14, 390), (21, 720), (28, 640) }.Select(row => WeighIn.Mean(Age.FromDays(row.Item1), Mass.FromGrams(row.Item2), 200))), GrowthPrior.FastGrowingOutdoor(Sex.Mixed));
        double Curve(double days) => sick.Curve.WeightAt(Age.FromDays(days)).Kilograms;
        double Median(double days) => sick.MeanAt(Age.FromDays(days)).Value.Kilograms;

        Median(26).Should().BeLessThan(Median(23), "the last weigh-in was lighter");
        Curve(26).Should().BeApproximately(Curve(24), 1e-12).And.BeGreaterThan(Median(26));
        Curve(14).Should().BeApproximately(Median(14), 1e-12);
        Curve(56).Should().BeApproximately(Median(56), 1e-12);
        ((TabulatedCurve)sick.Curve).Rows[^1].Age.Should().Be(Age.FromDays(120));
    }

    /// <summary>Weights of no birds, far from where they were weighed: an answer or a refusal that names the age, never a number that is none.</summary>
    [Theory]
    [InlineData(0, "0 d is not allowed: the curves that the weigh-ins leave are beyond all weights there; expected weights of growing birds in their units.*", new double[] { 7, 14, 21, 28 }, new double[] { 1, 1e5, 1, 1e5 })]
    [InlineData(400, "400 d is not allowed: no curve that the weigh-ins leave has a weight there; expected weights of growing birds in their units.*", new double[] { 13, 32, 134 }, new[] { 9.12e6, 5.25e6, 0.912 })]
    public void Weights_of_no_birds_are_refused_where_no_number_holds_them(double days, string message, double[] ages, double[] grams)
    {
        ProjectionOptions sure = new() { CoefficientOfVariation = 0.0001, WeighInError = 0 };
        Projection odd = Projection.Of(WeighInSeries.Of(ages.Zip(grams, (age, weight) => WeighIn.Mean(Age.FromDays(age), Mass.FromGrams(weight), 1_000_000))), GrowthPrior.FastGrowingOutdoor(Sex.Male), sure);

        odd.Invoking(projection => projection.MeanAt(Age.FromDays(days))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("age").WithMessage(message);
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
