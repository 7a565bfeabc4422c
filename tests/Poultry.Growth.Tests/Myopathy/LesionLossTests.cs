using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

public class LesionLossTests
{
    private static readonly BatchPrevalence Batch = PlanningRisk.Published.For(new() { KillAge = Age.FromDays(49) });
    private static readonly MeatAtRisk Meat = MeatAtRisk.OfLiveWeight(Mass.FromKilograms(2.6));

    [Fact]
    public void Deboned_birds_lose_meat_and_birds_on_the_bone_carry_hidden_lesions()
    {
        LesionLoss loss = LesionLoss.Of(Batch, SaleSplit.Of(100, 200), Meat, TrimRecord.SoundBirds, Money.Of(12));

        loss.LostAtPlant.Value.Kilograms.Should().BeApproximately(100 * Batch.Mean.Share.Fraction * 0.156, 1e-12);
        loss.LostAtPlant.Interval.High!.Value.Kilograms.Should().BeApproximately(0.156 * Batch.Among(100).Interval.High!.Value, 1e-12);
        loss.Hidden!.ExpectedBirds.Should().BeApproximately(200 * Batch.Mean.Share.Fraction, 1e-12);
        loss.ExpectedRefunds.Amount.Should().BeApproximately(12 * loss.Hidden.ExpectedBirds, 1e-12);
        loss.LostAtPlant.Cautions[0].Code.Should().Be("no-outdoor-data");
    }

    [Fact]
    public void What_the_farm_s_own_figure_contains_is_not_taken_off_again()
    {
        LesionLoss loss = LesionLoss.Of(Batch, SaleSplit.Of(100, 200), Meat, TrimRecord.ContainsLesions);

        loss.LostAtPlant.Value.Kilograms.Should().Be(0);
        loss.LostAtPlant.Interval.High!.Value.Kilograms.Should().Be(0);
        loss.Hidden!.ExpectedBirds.Should().BeGreaterThan(0, "no plant has seen those");
    }

    [Fact]
    public void Birds_sold_one_way_only()
    {
        LesionLoss.Of(Batch, SaleSplit.Of(300, 0), Meat, TrimRecord.SoundBirds).Hidden.Should().BeNull();
        LesionLoss.Of(Batch, SaleSplit.Of(0, 300), Meat, TrimRecord.SoundBirds).LostAtPlant.Value.Kilograms.Should().Be(0);
    }

    [Fact]
    public void The_farm_s_own_cuts_may_say_what_a_tender_weighs() =>
        MeatAtRisk.OfCuts(Mass.FromGrams(104), Mass.FromGrams(52)).PerAffectedBird.Kilograms.Should().BeApproximately(0.156, 1e-12);

    /// <summary>R: 2 (qnorm(.95) + qnorm(.8))^2 (1.386^2 + 1/(300 * 0.007797388)) / log(0.5)^2 = 60.44.</summary>
    [Fact]
    public void A_change_that_halves_the_odds_takes_many_batches_to_see()
    {
        ChangeWorth halved = ChangeWorth.Of(Batch, 0.5, 300, Money.Of(5), openedPerBatch: 300);

        halved.BatchesToSee.Should().Be(61);
        halved.SparedBirds.Should().BeApproximately(300 * (Batch.Mean.Share.Fraction - Batch.WithOdds(0.5).Mean.Share.Fraction), 1e-12);
        halved.PerBatch.Amount.Should().BeApproximately(5 * halved.SparedBirds, 1e-12);
        ChangeWorth.Of(Batch, 1, 300, Money.Of(5), 300).BatchesToSee.Should().BeNull();
        ChangeWorth.Of(Batch, 2, 300, Money.Of(5), 300).SparedBirds.Should().BeNegative();
    }
}
