using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

public class InspectionTests
{
    [Fact]
    public void Not_attainable_is_an_answer()
    {
        BirdsToOpen answer = BirdsToOpen.ToFind(BirdPrevalence.FromPercent(1), 0.95, flock: 100, detection: Probability.FromPercent(80));

        answer.Birds.Should().BeNull();
        answer.Reason.Should().Be("with all 100 birds opened the chance of finding nothing is still 20 %");
        answer.ToString().Should().StartWith("not attainable: ");
    }

    /// <summary>R: sum(dhyper(0:10, 10, 290, n) * 0.2^(0:10)) first at most 0.05 at n = 97.</summary>
    [Fact]
    public void Overlooked_birds_of_a_small_flock_take_more_opening()
    {
        BirdsToOpen seen = BirdsToOpen.ToFind(BirdPrevalence.FromPercent(10.0 / 3), 0.95, flock: 300, detection: Probability.FromPercent(80));

        seen.Birds.Should().Be(97);
        seen.ChanceOfNone.Fraction.Should().BeApproximately(0.048221908602, 1e-12);
    }

    /// <summary>R: sum over d of the beta-binomial (alpha 4.95, beta 94.05) times 0.2^d, first at most 0.1 at n = 72.</summary>
    [Fact]
    public void Birds_that_are_alike_and_overlooked_take_more_still()
    {
        BirdsToOpen alike = BirdsToOpen.ToFind(BirdPrevalence.FromPercent(5), 0.90, detection: Probability.FromPercent(80), intraclassCorrelation: 0.01);

        alike.Birds.Should().Be(72);
        alike.ChanceOfNone.Fraction.Should().BeApproximately(0.098364333708, 1e-12);
        BirdsToOpen.ToFind(BirdPrevalence.FromPercent(0.5), 0.99, detection: Probability.FromPercent(50), intraclassCorrelation: 0.3).Reason.Should().Be("it takes more than 100000 birds");
    }

    /// <summary>A beta-binomial with all affected is no distribution; what is overlooked is left: 0.5^5 is 3 %.</summary>
    [Fact]
    public void Where_every_bird_is_affected_being_alike_changes_nothing()
    {
        BirdsToOpen all = BirdsToOpen.ToFind(BirdPrevalence.FromPercent(100), 0.95, detection: Probability.FromPercent(50), intraclassCorrelation: 0.1);

        (all.Birds, all.ChanceOfNone.Fraction).Should().Be((5, 1.0 / 32));
        BirdsToOpen.ToFind(BirdPrevalence.FromPercent(100), 0.95, flock: 300, detection: Probability.FromPercent(50), intraclassCorrelation: 0.1).Birds.Should().Be(5);
    }

    [Fact]
    public void Zero_of_300_still_allows_one_percent() => FoundShare.Of(0, 300, 0.90).ClopperPearson.High!.Value.Percent.Should().BeApproximately(1, 0.01);

    [Fact]
    public void A_count_prints_in_one_line() =>
        FoundShare.Of(2, 300).ToString().Should().Be("2 of 300 birds: 0.667 % of birds (Wilson 90 %: 0.22 to 2 %)");

    [Fact]
    public void Inspections_that_make_no_sense_are_refused()
    {
        FluentActions.Invoking(() => LesionInspection.Of(10, 11)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*11 birds is not allowed; expected 0 to 10 birds*");
        FluentActions.Invoking(() => LesionInspection.Of(0, 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => LesionInspection.Of(10, 1, detection: Probability.FromPercent(0))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => FoundShare.Of(3, 2)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => BirdsToOpen.ToFind(BirdPrevalence.FromPercent(0))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Overlooked_lesions_raise_what_is_believed()
    {
        BatchPrevalence batch = PlanningRisk.Published.For(new() { KillAge = Age.FromDays(49) });

        batch.After(LesionInspection.Of(300, 3, detection: Probability.FromPercent(70))).Mean.Should().BeGreaterThan(batch.After(LesionInspection.Of(300, 3)).Mean);
    }

    [Fact]
    public void Every_factor_has_a_verdict_and_one_without_evidence_a_reason()
    {
        RiskFactors.All.Should().OnlyHaveUniqueItems(factor => factor.Code).And.OnlyContain(factor => factor.Sources.Count > 0 && factor.Use.Length > 0);
        RiskFactor temperature = RiskFactors.Of("temperature");
        temperature.Odds.Should().BeNull();
        temperature.Use.Should().Be("no number: not even the direction is known");
        temperature.Verdict.Should().Be(FactorVerdict.LeftOut);
        RiskFactors.All.Where(factor => factor.Odds is null && factor.Verdict is FactorVerdict.LeftOut).Should().OnlyContain(factor => factor.Use.StartsWith("no number: "));
        RiskFactors.All.Where(factor => factor.Odds is not null).Should().OnlyContain(factor => factor.Odds!.IsAssumption && factor.Verdict == FactorVerdict.DirectionOnly);
        FluentActions.Invoking(() => RiskFactors.Of("moon")).Should().Throw<ArgumentException>().WithMessage("*moon*expected one of flapping*");
    }

    [Fact]
    public void Statements_claim_no_rule_and_defer()
    {
        LesionStatement.All.Should().OnlyHaveUniqueItems(statement => statement.Code).And.OnlyContain(statement => statement.Sources.Count > 0);
        LesionStatement.All.Single(statement => statement.Code == "no-rule-known").Text.Should().Contain("none is claimed").And.Contain("Ask the plant's inspector");
    }
}
