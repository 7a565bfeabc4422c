using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Where the cautions of a balance begin: the published extremes are still plausible, and 18 hours are not more than 18.</summary>
public sealed class BalanceLimitTests
{
    [Theory]
    [InlineData(0.65, false)]
    [InlineData(0.6499, true)]
    [InlineData(1697 / 2229.9, false)]
    [InlineData(0.7611, true)]
    public void The_published_extremes_themselves_are_plausible(double ratio, bool warned) =>
        Balance(1, ratio).Cautions.Any(caution => caution.Code == "balance-implausible").Should().Be(warned);

    [Fact]
    public void They_are_so_whatever_the_birds_weigh() => Enumerable.Range(1, 60)
        .SelectMany(step => new[] { Balance(7.3 * step, 0.65), Balance(7.3 * step, 1697 / 2229.9) })
        .Where(balance => balance.Cautions.Any(caution => caution.Code == "balance-implausible")).ShouldBeNone();

    [Fact]
    public void An_implausible_rest_is_told_with_the_published_ones() => Balance(1000, 0.6).Cautions[0].Text.Should().StartWith(
        "Beside the carcass stay 40 % of the birds killed; published dressing ratios leave 23.9 to 35 %.", "1 - 1697/2229.9 and 1 - 0.65");

    [Fact]
    public void Nothing_left_over_is_possible_and_less_than_nothing_is_not()
    {
        // 750 kg carcass and 250 kg of parts are the 1000 kg; with 300 kg of parts 50 kg too much.
        CarcassBalance all = Balance(1000, 0.75, partsPercent: 25), more = Balance(1000, 0.75, partsPercent: 30);

        all.Cautions.Should().NotContain(caution => caution.Code == "balance-negative");
        more.Cautions[0].Text.Should().StartWith("Carcass and named parts together weigh more than the birds killed, 50 kg (110.23 lb) too much");
    }

    [Theory]
    [InlineData(18, false)]
    [InlineData(18.1, true)]
    public void A_carcass_holds_its_weight_for_18_hours(double hours, bool warned) =>
        Balance(1000, 0.7, hours: hours).Cautions.Any(caution => caution.Code == "carcass-loses-weight").Should().Be(warned);

    /// <summary>Rounding grows with the weight: so does what is let pass for it.</summary>
    [Fact]
    public void A_balance_of_millions_of_kilograms_closes_as_one_of_a_bird_does() => Enumerable.Range(1, 40)
        .Where(step => !Balance(1_234_567.891 * step / 7, 0.65 + (step / 377.0), partsPercent: 3.7, hours: 11.3).Closes).ShouldBeNone();

    [Fact]
    public void In_one_line() => Balance(1000, 0.7).ToString().Should().Be("1000 kg (2204.62 lb) full-fed: 700 kg (1543.24 lb) carcass, 70 % of the full-fed weight");

    private static CarcassBalance Balance(double kilograms, double ratio, double partsPercent = 0, double hours = 0) => CarcassBalance.Of(
        LiveWeight.FullFed(Mass.FromKilograms(kilograms)),
        new PlantConditions
        {
            Dressing = DressingRatio.Of("own", LikelyRange<Probability>.Exactly(Probability.FromFraction(ratio)), CarcassBasis.Of(CarcassCondition.Hot), LiveState.FullFed),
            AtKilling = LiveState.OffFeed(Duration.FromHours(hours)),
            Condemned = Condemnation.None,
            OtherParts = partsPercent > 0 ? [NamedPart.Of("giblets", Probability.FromPercent(partsPercent))] : [],
        });
}
