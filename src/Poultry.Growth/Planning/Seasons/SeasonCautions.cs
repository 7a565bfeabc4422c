using Poultry.Growth.Evidence;

namespace Poultry.Growth.Planning;

/// <summary>What to mind before a season is planned by its money.</summary>
internal static class SeasonCautions
{
    private const int DaysAhead = 28;

    public static IEnumerable<Caution> Of(SeasonComparison season)
    {
        SeasonOutcome[] raised = [.. season.Batches.Where(batch => batch.Chosen is not null)];
        DateOnly[] killed = [.. raised.Select(batch => batch.Chosen!.Option.Killed).Order()];
        if (killed.Zip(killed.Skip(1)).Any(pair => pair.Second.DayNumber - pair.First.DayNumber < DaysAhead))
        {
            yield return new("season-demand-shared", "Batches killed within four weeks of each other meet the same customers and the same freezer; each is counted with all that its own prices file says sells.");
        }

        if (raised.Any(batch => batch.Chosen!.Plan.Growth.WeighIns is null))
        {
            yield return new("season-unweighed", "Batches that are not on the farm yet are as unsure as a prior is; plan each again when it is weighed.");
        }

        if (season.Plan.Limits.HeadByDay.Count > 0)
        {
            yield return new("season-head-expected", "The plant's head is held against the birds expected; the chance of more stands with the plan of each batch.");
        }

        foreach (Caution caution in raised.SelectMany(batch => batch.Chosen!.Cautions).DistinctBy(caution => caution.Code))
        {
            yield return caution;
        }

        yield return new("brooder-cleaned", "Between batches a brooder is emptied, cleaned and dried: a disease of one batch waits there for the next. Ask the vet how long.");
    }
}
