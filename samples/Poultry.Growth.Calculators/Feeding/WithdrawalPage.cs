
namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Live shrink as a table, cautions and sources.</summary>
internal static class WithdrawalPage
{
    public static void Print(WithdrawalAnswer answer, Page page)
    {
        page.Line("From " + page.Units.Text(answer.Weight, 2) + " " + page.Units.Weight + ", " + Numbers.Fixed(answer.OffFeed.Hours, 1) + " h off feed, " + Numbers.Fixed(answer.OnRoad.Hours, 1) + " h of them on the road");
        page.Title("At killing (low and high are the range of the sources, no chance)");
        page.Table(["", "likely", "low", "high"],
        [
            ["live weight " + page.Units.Weight, page.Units.Text(answer.Shrink.LiveWeight, 2), page.Units.Text(answer.Shrink.LowLiveWeight, 2), page.Units.Text(answer.Shrink.HighLiveWeight, 2)],
            ["lost %", Numbers.Percent(answer.Shrink.Share.Fraction, 1), Numbers.Percent(answer.Shrink.LowShare.Fraction, 1), Numbers.Percent(answer.Shrink.HighShare.Fraction, 1)],
        ]);
        page.Cautions(answer.Shrink.Cautions);
        page.Sources(WithdrawalAnswer.Sources);
    }
}
