using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Conformance;

namespace Poultry.Growth.Tests.Fitting;

public class GrowthPriorTests
{
    /// <summary>Growth evidence, 2b: A 7.0 kg says 4.24 kg at 56 d; A 4.9 kg says 2.97 kg at 56 d and 4.15 kg at 84 d.</summary>
    [Fact]
    public void Shipped_centres_say_what_their_sources_say()
    {
        double At(GrowthPrior prior, double days) => prior.Centre.WeightAt(Age.FromDays(days)).Kilograms;

        At(GrowthPrior.FastGrowingObjective(Sex.Mixed), 56).Should().BeApproximately(4.24, 0.005);
        At(GrowthPrior.FastGrowingOutdoor(Sex.Mixed), 56).Should().BeApproximately(2.97, 0.005);
        At(GrowthPrior.FastGrowingOutdoor(Sex.Mixed), 84).Should().BeApproximately(4.15, 0.005);
    }

    /// <summary>The two derived fits give the sexes of the fast priors; the mean of three tables is another source: within 0.02 of each other from 5 to 9 weeks.</summary>
    [Theory]
    [InlineData(35), InlineData(42), InlineData(49), InlineData(56), InlineData(63)]
    public void The_sexes_of_the_fast_priors_lie_apart_as_three_tables_say(double days)
    {
        Age age = Age.FromDays(days);
        double ratio = GrowthPrior.FastGrowingOutdoor(Sex.Female).Centre.WeightAt(age) / GrowthPrior.FastGrowingOutdoor(Sex.Male).Centre.WeightAt(age);

        ratio.Should().BeApproximately(SexDimorphism.FemaleRatioAt(age), 0.03);
    }

    [Fact]
    public void Outdoors_and_slow_are_wider_than_the_objective()
    {
        double Variance(GrowthPrior prior) => prior.Covariances[0];

        Variance(GrowthPrior.FastGrowingOutdoor(Sex.Mixed)).Should().BeApproximately(0.25 * 0.25, 1e-15);
        Variance(GrowthPrior.SlowGrowing(Sex.Male)).Should().BeGreaterThan(Variance(GrowthPrior.FastGrowingOutdoor(Sex.Male)));
        GrowthPrior.SlowGrowing(Sex.Female).ToString().Should().Be("Slower-growing birds (Female): A 4 kg (8.82 lb), k 0.034/d, t* 41 d");
    }

    [Theory]
    [InlineData(new double[] { 1, 0, 0, 0.5, 1, 0, 0, 0, 1 }, "*symmetric*")]
    [InlineData(new double[] { 1, 2, 0, 2, 1, 0, 0, 0, 1 }, "*positive definite*")]
    [InlineData(new double[] { 1, 0, 0, 0, 1 }, "*9 expected*")]
    public void Covariances_that_are_none_are_refused(double[] covariances, string why)
    {
        Action make = () => GrowthPrior.FromMoments(ProjectionCases.Measured.Model, Sex.Male, [1, -3, 38], covariances);

        make.Should().Throw<ArgumentException>().WithMessage(why);
    }

    /// <summary>Objectives of 2012, males: another fit of the same rows, in kg and not in percent, is on record as 7.3 kg, 0.0393/d, 39.4 d.</summary>
    [Fact]
    public void A_table_gives_the_centre_and_another_prior_the_width()
    {
        (Age, Mass)[] rows = [.. Handbook.Tables["objectives 2012 male"].Days.Zip(Handbook.Tables["objectives 2012 male"].Grams, (d, g) => (Age.FromDays(d), Mass.FromGrams(g)))];
        Caution target = new("target", "A target, not an average.");
        TabulatedCurve table = TabulatedCurve.Of("Objective for males, 2012", new Citation("Objectives", "a breeder's objectives", HowKnown.Secondary), rows, target);

        GrowthPrior prior = GrowthPrior.FromTable(table, GrowthPrior.FastGrowingOutdoor(Sex.Male));

        prior.Centre.WeightAt(Age.FromDays(56)).Kilograms.Should().BeApproximately(4.338, 0.09, "printed; a Gompertz curve follows the rows to 2 %");
        prior.Covariances.Should().Equal(GrowthPrior.FastGrowingOutdoor(Sex.Male).Covariances);
        prior.Cautions.Should().Equal(target);
        prior.Name.Should().Be("Objective for males, 2012");
    }

    [Fact]
    public void A_table_without_a_curve_is_refused_with_the_reason()
    {
        TabulatedCurve exponential = TabulatedCurve.Of(
            "Doubling", new Citation("None", "invented", HowKnown.Assumption), [.. Enumerable.Range(1, 6).Select(week => (Age.FromWeeks(week), Mass.FromGrams(10 << week)))]);

        Action make = () => GrowthPrior.FromTable(exponential, GrowthPrior.SlowGrowing(Sex.Mixed));

        make.Should().Throw<ArgumentException>().WithMessage("No Gompertz curve follows the rows of Doubling.*");
    }

    [Fact]
    public void A_wider_prior_behind_a_narrow_one_takes_over_when_the_birds_are_others()
    {
        GrowthPrior narrow = ProjectionCases.Prior(Sex.Male, [Math.Log(4.0), Math.Log(0.0395), 38.5], [0.04, 0.03, 0.8]);
        GrowthPrior guarded = narrow.WithFallback(ProjectionCases.Measured, 0.10);
        double alone = Projection.Of(ProjectionCases.CheckCase, narrow).FamilyWeights[0].After.Fraction;

        Projection.Of(ProjectionCases.CheckCase, guarded).FamilyWeights[1].After.Fraction.Should().BeGreaterThan(alone);
    }
}
