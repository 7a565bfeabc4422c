using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Sentences that the screen and the page of a plan share.</summary>
internal static class PlanWords
{
    /// <summary>What would change the choice, and what it hangs on.</summary>
    public static IEnumerable<string> Changes(PlanAnswer answer)
    {
        HarvestComparison comparison = answer.Comparison;
        yield return "One day later at the same terms: " + Range(comparison.MarginalDay);
        if (answer.Calendar is { } calendar)
        {
            yield return calendar.Best.Date.Date == comparison.Recommended.Date.Date
                ? "If the plant killed on every day between, the day would be the same: its calendar costs nothing."
                : "If the plant killed on every day between, " + calendar.Best.Date + " (" + calendar.Best.Age + ") would bring most: its calendar costs " + Range(calendar.Cost) + ".";
        }

        if (comparison.Recommended.BreakEvenPrice is { } price)
        {
            yield return "The meat must bring " + price.Value + " on average for the day to pay (" + Numbers.Percent(price.Interval.Level) + " %: " + price.Interval.Low + " to " + price.Interval.High + ").";
        }

        if (answer.WeighInWorth is { } worth)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Weighing {PlanAnswer.BirdsWeighed} birds at {answer.WeighIn}, before the first deadline, ")
                + (worth.Amount < 1 ? "would hardly change the choice." : "is worth " + Numbers.Amount(worth) + " on average.");
        }

        yield return "The doubt comes from: " + string.Join(", ", comparison.SpreadDrivers.Where(driver => driver.Share.Percent >= 1).Select(driver => driver.Name + " (" + Numbers.Percent(driver.Share.Fraction) + " %)")) + ".";
        yield return "For as many birds next time: " + answer.Chicks.Chicks.ToString(CultureInfo.InvariantCulture) + (answer.Plan.ChicksLostInTransit.Fraction > 0 ? " chicks ordered, of which about " + answer.Plan.ChicksLostInTransit + " come dead, are enough" : " chicks placed alive are enough") + " with a chance of " + answer.Chicks.ChanceOfEnough + ".";
    }

    private static string Range(Estimate<Money> money) => Numbers.Amount(money.Value) + " (" + Numbers.Amount(money.Interval.Low) + " to " + Numbers.Amount(money.Interval.High) + ")";
}
