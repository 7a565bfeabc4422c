using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Disturbances as a table, cautions and sources.</summary>
internal static class EventsPage
{
    public static void Print(EventsAnswer answer, Page page)
    {
        SpreadTable.Open(answer.Prevalence.Cautions, page);
        page.Line("Disturbances of birds killed at " + answer.KillAge);
        page.Title("What each did, by the likely guess");
        page.Table(
            ["no.", "<what", "age d", "days before", "susceptible %", "shows %", "muscles %", "birds %", "of flock, shows %", "flock without it %"],
            answer.Prevalence.Events.Select((effect, at) => (IReadOnlyList<string>)
            [
                Numbers.Whole(at + 1),
                effect.Disturbance.What,
                Numbers.Days(effect.Disturbance.Age),
                Numbers.Fixed(effect.BeforeKilling.Days, 1),
                Numbers.Percent(effect.Susceptible.Fraction),
                Numbers.Percent(effect.Visible.Fraction),
                effect.Muscles is { } muscles ? SpreadTable.Two(muscles.Percent) : "-",
                SpreadTable.Percent(effect.Birds),
                SpreadTable.Percent(effect.Shown),
                SpreadTable.Percent(answer.Without[at]),
            ]));
        page.Line(answer.Prevalence.Affected is { } affected
            ? "Birds with a lesion that shows: " + SpreadTable.Percent(affected.Value) + " % (" + Numbers.Percent(answer.Level) + " %: "
                + SpreadTable.Percent(affected.Interval.Low) + " to " + SpreadTable.Percent(affected.Interval.High) + " %), background of a quiet flock included."
            : "No rate: nobody guessed how many birds flapped and how much. Muscles are single tenders of the birds that flapped; birds have one or both.");
        page.Title("Worth a line in the log");
        foreach (TypicalDisturbance kind in TypicalDisturbance.All)
        {
            page.Line("- " + kind.Name + ": " + kind.Mind);
        }

        SpreadTable.Cautions(answer.Prevalence.Cautions, page);
        page.Sources(EventsAnswer.Sources);
    }
}
