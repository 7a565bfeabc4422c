using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What to mind before a day of killing is chosen by its money.</summary>
internal static class HarvestCautions
{
    public static IEnumerable<Caution> Of(BatchPlan plan, HarvestOption option)
    {
        foreach (Caution caution in plan.Growth.Cautions)
        {
            yield return caution;
        }

        if (plan.LargeLoss == LargeLoss.OneBatchInThirty)
        {
            yield return new("large-loss-assumed", "Once in thirty batches a tenth to six tenths of the birds are taken to be lost at once: an assumption, no source.");
        }

        if (plan.Costs.LabourHour == Money.Zero || plan.Costs.LabourADay.Hours == 0)
        {
            yield return new("labour-free", "Work is counted at nothing. Whether outdoor birds pay is decided by the price of work more than by anything else.");
        }

        if (option.ChanceDensityMet is { Fraction: < 0.9 } met)
        {
            yield return new("floor-too-small", "The floor's limit is kept with a chance of " + met + " only: more floor, fewer birds or an earlier day. Limits of law are the local code's.");
        }

        if (option.ChanceTooManyBirds.Fraction > 0.05)
        {
            yield return new("plant-head-exceeded", "With a chance of " + option.ChanceTooManyBirds + " there are more birds than the plant takes; what is left over must be fed, killed or sold otherwise, and brings nothing here.");
        }

        if (option.ChanceTooFewBirds.Fraction > 0.05)
        {
            yield return new("plant-head-too-low", "With a chance of " + option.ChanceTooFewBirds + " there are fewer birds than the plant opens for.");
        }

        if (option.Age.Days > 63)
        {
            yield return new("old-fast-birds", "Fast-growing birds beyond nine weeks go lame and die of their hearts more often; little was measured there.");
        }

        yield return new("inspection-rules", "Slaughter, inspection and sale follow the local code; the inspector and the plant have the last word.");
    }
}
