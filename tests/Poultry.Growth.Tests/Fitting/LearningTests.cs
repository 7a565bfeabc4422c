using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Conformance.ChickWeight;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Fitting;

public class LearningTests
{
    private static readonly BatchKind Kind = SimulatedFarm.Kind;
    private static readonly GrowthPrior Shipped = StudyRows.Shipped;
    private static readonly SimulatedFarm Farm = new(seed: 1, pastBatches: 8, otherStrain: false, weighInError: 0.02);

    public static TheoryData<GrowthPrior> Priors() => new(
        Shipped, GrowthPrior.FastGrowingOutdoor(Sex.Male), GrowthPrior.SlowGrowing(Sex.Male), Correlated());

    [Theory]
    [MemberData(nameof(Priors))]
    public void Without_batches_what_is_known_is_the_shipped_prior(GrowthPrior shipped)
    {
        LearnedPrior learned = BatchHistory.Of().Learn(Kind, shipped);

        learned.Status.Should().Be(LearningStatus.NoBatches);
        learned.Prior.Should().BeSameAs(shipped);
        learned.WeighInError.Should().BeApproximately(0.02, 1e-15);
        learned.Batches.Should().BeEmpty();
        learned.Cautions.Should().ContainSingle(caution => caution.Code == "shipped-prior");

        // The formulas themselves say so too: B0 + W0 is the shipped covariance.
        LaplaceEmResult result = PriorLearning.Run([], shipped);
        result.Population.Mean.Should().Equal(shipped.Means, (mine, theirs) => Math.Abs(mine - theirs) < 1e-12 * (1 + Math.Abs(theirs)));
        PriorLearning.NextBatch(result).Should().Equal(shipped.Covariances, (mine, theirs) => Math.Abs(mine - theirs) < 1e-12 * (1 + Math.Abs(theirs)));
    }

    [Fact]
    public void The_order_of_the_batches_does_not_matter()
    {
        LearnedPrior one = Farm.History.Learn(Kind, Shipped);
        LearnedPrior other = BatchHistory.Of(Farm.History.Reverse()).Learn(Kind, Shipped);

        other.Prior.Means.Should().Equal(one.Prior.Means);
        other.Prior.Covariances.Should().Equal(one.Prior.Covariances);
        other.WeighInError.Should().Be(one.WeighInError);
        other.Batches.Reverse().Select(batch => batch.Curve.MatureWeight!.Value.Kilograms)
            .Should().Equal(one.Batches.Select(batch => batch.Curve.MatureWeight!.Value.Kilograms));
        one.Batches.Select(batch => batch.Batch).Should().Equal(Farm.History, ReferenceEquals);
    }

    [Fact]
    public void Pounds_teach_what_kilograms_teach()
    {
        BatchHistory inPounds = BatchHistory.Of(Farm.History.Select(batch => PastBatch.Of(
            batch.Name,
            WeighInSeries.Of(batch.WeighIns.Select(weighIn => WeighIn.Mean(
                weighIn.Age,
                Mass.FromPounds(weighIn.MeanWeight.Pounds),
                weighIn.BirdsWeighed,
                Mass.FromPounds(weighIn.StandardDeviation!.Value.Pounds)))),
            batch.Kind)));

        LearnedPrior one = Farm.History.Learn(Kind, Shipped);
        LearnedPrior other = inPounds.Learn(Kind, Shipped);

        other.Prior.Means.Should().Equal(one.Prior.Means, (left, right) => Math.Abs(left - right) < 1e-10 * Math.Abs(right));
        other.Prior.Covariances.Should().Equal(one.Prior.Covariances, (left, right) => Math.Abs(left - right) < 1e-10);
    }

    [Fact]
    [Trait("Speed", "Slow")]
    public void Threads_learn_the_same_to_the_last_bit()
    {
        double[] expected = [.. Farm.History.Learn(Kind, Shipped).Prior.Covariances];
        double[][] found = [.. Enumerable.Range(0, 32).AsParallel().WithDegreeOfParallelism(4).Select(_ => Farm.History.Learn(Kind, Shipped).Prior.Covariances.ToArray())];

        found.Should().AllSatisfy(covariances => covariances.Should().Equal(expected));
    }

    [Fact]
    public void Own_batches_narrow_the_prior_about_the_farm_and_keep_the_shipped_one_behind_it()
    {
        LearnedPrior learned = Farm.History.Learn(Kind, Shipped);

        learned.Status.Should().Be(LearningStatus.Learned);
        learned.Prior.Fallback.Should().BeSameAs(Shipped);
        learned.Prior.FallbackShare.Should().Be(0.10);
        learned.Prior.Name.Should().Be("8 own batches of invented, simulated, cockerels");
        learned.Prior.Sex.Should().Be(Sex.Male);
        for (int i = 0; i < 3; i++)
        {
            learned.Prior.Covariances[i * 4].Should().BeLessThan(0.6 * Shipped.Covariances[i * 4]);
            learned.BetweenBatches[i].Should().BeLessThan(Math.Sqrt(learned.Prior.Covariances[i * 4]));
        }

        learned.BetweenBatchesAt(Age.FromDays(56)).Should().BeInRange(0.03, 0.10);
        learned.Cautions.Should().ContainSingle().Which.Code.Should().Be("past-growth-only");
        learned.ToString().Should().StartWith("8 own batches of invented, simulated, cockerels (Male): A ").And.EndWith(" % at 56 d");
    }

    [Fact]
    public void Kinds_are_learned_apart()
    {
        BatchKind other = BatchKind.Of("another", "simulated", Sex.Male);
        SimulatedFarm elsewhere = new(seed: 2, pastBatches: 5, otherStrain: false, weighInError: 0.02);
        BatchHistory both = BatchHistory.Of([.. Farm.History, .. elsewhere.History.Select(batch => PastBatch.Of(batch.Name, batch.WeighIns, other))]);

        both.Kinds.Should().Equal(Kind, other);
        both.Learn(BatchKind.Of(" Invented ", "SIMULATED", Sex.Male), Shipped).Prior.Means.Should().Equal(Farm.History.Learn(Kind, Shipped).Prior.Means);
        both.Learn(other, Shipped).Prior.Means.Should().Equal(elsewhere.History.Learn(Kind, Shipped).Prior.Means);
        both.Learn(BatchKind.Of("invented", sex: Sex.Male), Shipped).Status.Should().Be(LearningStatus.NoBatches, "a system that is not stated is a kind of its own");
        both.ToString().Should().Be("13 batches of 2 kinds");
    }

    [Fact]
    public void A_batch_without_an_optimum_of_its_own_counts()
    {
        // Chick 19 has no finite mature weight by itself, and one weigh-in has no curve at all.
        WeighInSeries hopeless = ChickWeightData.Series("chick_19");
        GrowthFit.Of(hopeless).Curve.Should().BeNull();
        BatchHistory chicks = BatchHistory.Of(
            [.. new[] { "chick_19", "chick_2", "chick_7" }.Select(chick => PastBatch.Of(chick, ChickWeightData.Series(chick), Kind)),
             PastBatch.Of("one weigh-in", WeighInSeries.Of(WeighIn.Mean(Age.FromDays(14), Mass.FromGrams(120), 10)), Kind)]);

        LearnedPrior learned = chicks.Learn(Kind, GrowthPrior.SlowGrowing(Sex.Male));
        LearnedPrior without = BatchHistory.Of(chicks.Skip(1)).Learn(Kind, GrowthPrior.SlowGrowing(Sex.Male));

        learned.Batches.Should().HaveCount(4);
        learned.Batches.Should().AllSatisfy(batch => batch.Curve.MatureWeight!.Value.Kilograms.Should().BeInRange(0.01, 100));
        learned.Prior.Means.Should().NotEqual(without.Prior.Means);
        learned.Cautions.Select(caution => caution.Code).Should().Contain("spread-assumed");
    }

    [Fact]
    public void A_search_that_does_not_settle_gives_the_shipped_prior_and_says_so()
    {
        LearnedPrior learned = LearnedPrior.From(Kind, Farm.History, Shipped, roundLimit: 2);

        learned.Status.Should().Be(LearningStatus.NotConverged);
        learned.Prior.Should().BeSameAs(Shipped);
        learned.WeighInError.Should().BeApproximately(0.02, 1e-15);
        learned.BetweenBatches[0].Should().BeApproximately(Math.Sqrt(0.2) * 0.20, 1e-12);
        learned.Cautions.Should().ContainSingle(caution => caution.Code == "shipped-prior").Which.Text.Should().Contain("did not settle");
        learned.ToString().Should().EndWith("; learning from the past batches did not settle");
    }

    [Fact]
    public void Growth_that_is_highest_before_hatch_is_no_growth_of_birds()
    {
        // Heavy from the start and hardly growing: weeks typed as days.
        BatchHistory wrong = BatchHistory.Of(Enumerable.Range(0, 60).Select(i => PastBatch.Of("wrong", WeighInSeries.Of(
            Enumerable.Range(1, 9).Select(week => WeighIn.Mean(
                Age.FromDays(6 + week), Mass.FromKilograms((1 + (0.001 * i)) * 5 * Math.Exp(-Math.Exp(-0.05 * (week + 20)))), 100, Mass.FromGrams(1)))), Kind)));

        LearnedPrior learned = wrong.Learn(Kind, Shipped);

        learned.Status.Should().Be(LearningStatus.Implausible);
        learned.Prior.Should().BeSameAs(Shipped);
        learned.Cautions.Should().Contain(caution => caution.Code == "shipped-prior" && caution.Text.Contains("before hatch"));
    }

    /// <summary>Grams among kilograms: birds that differ by more than their weight, means off by a thousand.</summary>
    [Fact]
    public void Weights_in_wrong_units_teach_nothing()
    {
        BatchHistory Past(Func<int, double> factor, double variation) => BatchHistory.Of(Enumerable.Range(0, 6).Select(i => PastBatch.Of("wrong", WeighInSeries.Of(
            Demo.Means.Skip(1).Select((row, at) => WeighIn.Mean(
                Age.FromDays(row.Days), Mass.FromGrams(row.Grams * factor(i + at)), 20, Mass.FromGrams(row.Grams * factor(i + at) * variation)))), Kind)));

        Past(_ => 1, 0.1).Learn(Kind, Shipped).Status.Should().Be(LearningStatus.Learned);
        Past(_ => 1, 1.2).Learn(Kind, Shipped).Status.Should().Be(LearningStatus.Implausible);
        LearnedPrior mixed = Past(at => at % 3 == 0 ? 1000 : 1, 0.1).Learn(Kind, Shipped);
        mixed.Status.Should().NotBe(LearningStatus.Learned);
        mixed.Prior.Should().BeSameAs(Shipped);
    }

    /// <summary>A Gompertz curve through the first days is 60 % too heavy at hatch: day-old chicks on the scale must not bend what is learned.</summary>
    [Fact]
    public void Weigh_ins_of_the_first_days_teach_nothing()
    {
        WeighIn hatch = WeighIn.Mean(Age.FromDays(1), Mass.FromGrams(44), 30);
        BatchHistory withHatch = BatchHistory.Of(
            [.. Farm.History.Select(batch => PastBatch.Of(batch.Name, WeighInSeries.Of([hatch, .. batch.WeighIns]), Kind)), PastBatch.Of("just placed", WeighInSeries.Of(hatch), Kind)]);

        LearnedPrior learned = withHatch.Learn(Kind, Shipped);

        learned.Prior.Means.Should().Equal(Farm.History.Learn(Kind, Shipped).Prior.Means);
        learned.Batches.Should().HaveCount(8);
        learned.Cautions.Single(caution => caution.Code == "young-weigh-ins-left-out").Text
            .Should().StartWith("9 weigh-ins before 7 d left out").And.EndWith(" 1 of 9 batches have no other and teach nothing.");
        BatchHistory.Of(withHatch[8]).Learn(Kind, Shipped).Status.Should().Be(LearningStatus.NoBatches);
    }

    [Fact]
    public void Pullets_of_a_mixed_batch_tell_of_the_whole_batch()
    {
        PastBatch Batch(Func<double, double> factor, Sex sex) => PastBatch.Of("a", WeighInSeries.Of(new double[] { 21, 35, 49 }.Select(days => WeighIn.Mean(
            Age.FromDays(days), Mass.FromKilograms(factor(days) * 4.9 * Math.Exp(-Math.Exp(-0.0395 * (days - 38.5)))), 1_000_000, Mass.FromGrams(1)).Of(sex))), BatchKind.Of());
        double Lighter(double days) => 2 * SexDimorphism.FemaleRatioAt(Age.FromDays(days)) / (1 + SexDimorphism.FemaleRatioAt(Age.FromDays(days)));

        LearnedPrior pullets = BatchHistory.Of(Batch(Lighter, Sex.Female)).Learn(BatchKind.Of(), GrowthPrior.FastGrowingOutdoor(Sex.Mixed));
        LearnedPrior both = BatchHistory.Of(Batch(_ => 1, Sex.Mixed)).Learn(BatchKind.Of(), GrowthPrior.FastGrowingOutdoor(Sex.Mixed));

        pullets.Prior.Means.Should().Equal(both.Prior.Means, (mine, theirs) => Math.Abs(mine - theirs) < 1e-5);
    }

    [Fact]
    public void What_to_mind_is_said()
    {
        PastBatch batch = PastBatch.Of("a", WeighInSeries.Of(Demo.Series().Select(weighIn => weighIn.Of(Sex.Male))), BatchKind.Of());
        IReadOnlyList<Caution> cautions = BatchHistory.Of(batch, PastBatch.Of("b", batch.WeighIns, BatchKind.Of())).Learn(BatchKind.Of(), GrowthPrior.FastGrowingObjective(Sex.Mixed)).Cautions;

        cautions.Select(caution => caution.Code).Should().Equal("past-growth-only", "few-batches", "strain-not-stated", "spread-assumed", "young-weigh-ins-left-out", "batch-twice");
        cautions[^1].Text.Should().StartWith("a and b have the same weigh-ins");
    }

    [Fact]
    public void What_does_not_fit_together_is_refused()
    {
        WeighInSeries pullets = WeighInSeries.Of(WeighIn.Mean(Age.FromDays(14), Mass.FromGrams(300), 10).Of(Sex.Female));

        FluentActions.Invoking(() => PastBatch.Of("a", pullets, BatchKind.Of(sex: Sex.Male))).Should().Throw<ArgumentException>().WithMessage("*14 d*Female*Male*");
        FluentActions.Invoking(() => PastBatch.Of(" ", pullets, Kind)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => BatchKind.Of(strain: " ")).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Farm.History.Learn(Kind, GrowthPrior.FastGrowingObjective(Sex.Mixed))).Should().Throw<ArgumentException>().WithMessage("*Mixed*Male*");
    }

    private static GrowthPrior Correlated() => GrowthPrior.FromMoments(
        Shipped.Model, Sex.Male, [1.9, -3.2, 39], [0.04, -0.015, 0.5, -0.015, 0.01, -0.3, 0.5, -0.3, 16]);
}
