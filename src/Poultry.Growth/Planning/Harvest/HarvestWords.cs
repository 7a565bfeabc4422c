using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>The recommendation in words.</summary>
internal static class HarvestWords
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    public static string Recommend(HarvestComparison comparison, int best)
    {
        HarvestOption option = comparison.Options[best];
        string text = string.Create(
            Invariant,
            $"Kill on {option.Date} at {option.Age}: mean margin of the batch {option.Margin.Value} ({100 * option.Margin.Interval.Level:0.##} %: {option.Margin.Interval.Low} to {option.Margin.Interval.High}), {option.MarginPerBird} a bird. ")
            + string.Create(
                Invariant,
                $"In the worst tenth {option.BadCase} on average; it loses money with a chance of {option.ChanceOfLoss}; {option.OrdersFilled} of the orders are filled. ");
        return text + Doubt(comparison, best) + string.Create(Invariant, $" Decide by {option.DecideBy:yyyy-MM-dd}.");
    }

    private static string Doubt(HarvestComparison comparison, int best)
    {
        if (comparison.Options.Count == 1)
        {
            return "No other day is offered.";
        }

        int next = Enumerable.Range(0, comparison.Options.Count).Where(at => at != best).MaxBy(at => comparison.Options[at].Margin.Value.Amount);
        HarvestOption other = comparison.Options[next];
        Probability wins = comparison.ChanceBeats(best, next);
        Money lead = comparison.Options[best].Margin.Value - other.Margin.Value;
        return string.Create(Invariant, $"The next best, {other.Date}, brings {lead} less on average and the day recommended beats it with a chance of {wins}: ")
            + (wins.Fraction < 0.6 ? "hardly a difference, so let the plant, the weather and your week decide."
                : wins.Fraction < 0.8 ? "a lean, no certainty; a weigh-in before the deadline may turn it."
                : "fairly sure as long as prices and demand are as stated.");
    }
}
