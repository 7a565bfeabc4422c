using Poultry.Growth.Evidence;

namespace Poultry.Growth.Planning;

/// <summary>One way to raise a batch in a season: when its chicks come, when it is killed, what that brings.</summary>
public sealed class SeasonDay
{
    private SeasonDay(BatchPlan plan, HarvestOption harvest, SeasonOption option, double[] margins, IReadOnlyList<Caution> cautions) =>
        (Plan, Harvest, Option, Margins, Cautions) = (plan, harvest, option, margins, cautions);

    /// <summary>The batch with its chicks on that day.</summary>
    public BatchPlan Plan { get; }

    /// <summary>What the day of killing brings, as a plan tells it.</summary>
    public HarvestOption Harvest { get; }

    /// <summary>What it takes of the farm and the plant.</summary>
    public SeasonOption Option { get; }

    /// <summary>The margin of each fate.</summary>
    internal double[] Margins { get; }

    /// <summary>What to mind about a batch whose chicks come that day.</summary>
    internal IReadOnlyList<Caution> Cautions { get; }

    /// <summary>As in <c>2027-04-12 to 2027-06-08, 912.00</c>, in every culture.</summary>
    public override string ToString() => Option.ToString();

    /// <summary>What was drawn for a batch, as ways to raise it.</summary>
    internal static IEnumerable<SeasonDay> Of(SeasonCandidate candidate, BatchPlan plan, HarvestComparison comparison)
    {
        DateOnly movedOut = plan.MoveOut.ReachedOn(plan.Placed, plan.Birds.AgeAtPlacement);
        for (int i = 0; i < comparison.Options.Count; i++)
        {
            HarvestOption harvest = comparison.Options[i];
            SeasonNeeds needs = new()
            {
                BrooderPlaces = plan.Birds.Placed,
                Shelters = candidate.Shelters,
                Ground = candidate.Ground,
                LabourADay = plan.Costs.LabourADay,
                Head = (int)Math.Ceiling(harvest.Head.Value),
            };
            yield return new(plan, harvest, SeasonOption.Of(plan.Placed, movedOut, harvest.Date.Date, harvest.Margin.Value, needs), comparison.MarginsOf(i), comparison.Cautions);
        }
    }
}
