using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Fitting;

/// <summary>What a projection says before a bird is weighed.</summary>
public sealed class ProjectionBeforeWeighInsTests
{
    private static readonly Age EightWeeks = Age.FromWeeks(8);

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
}
