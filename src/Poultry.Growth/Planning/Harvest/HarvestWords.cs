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
            $"Kill on {option.Date} at {option.Age}: mean margin of the batch {option.Margin.Value.Amount:0} ({100 * option.Margin.Interval.Level:0.##} %: {option.Margin.Interval.Low!.Value.Amount:0} to {option.Margin.Interval.High!.Value.Amount:0}), {option.MarginPerBird.Value} a bird. ")
            + string.Create(
                Invariant,
                $"In the worst tenth {option.BadCase.Amount:0} on average; it loses money with a chance of {option.ChanceOfLoss}; {option.OrdersFilled} of the packs asked for are filled, some are missed with a chance of {option.ChanceOrdersMissed}. ");
        return text + comparison.Doubt + string.Create(Invariant, $" Decide by {option.DecideBy:yyyy-MM-dd}.");
    }

    /// <summary>How sure the choice is against the next best day.</summary>
    public static string Doubt(HarvestComparison comparison, int best)
    {
        if (comparison.Options.Count == 1)
        {
            return "No other day is offered.";
        }

        int next = Enumerable.Range(0, comparison.Options.Count).Where(at => at != best).MaxBy(at => comparison.Options[at].Margin.Value.Amount);
        HarvestOption other = comparison.Options[next];
        Probability wins = comparison.ChanceBeats(best, next);
        Money lead = comparison.Options[best].Margin.Value - other.Margin.Value;
        return string.Create(Invariant, $"The next best, {other.Date}, brings {lead.Amount:0} less on average and the day recommended beats it with a chance of {wins}: ")
            + (wins.Fraction < 0.6 ? "hardly a difference, so let the plant, the weather and your week decide."
                : wins.Fraction < 0.8 ? "a lean, no certainty."
                : "fairly sure as long as prices and demand are as stated.");
    }
}
