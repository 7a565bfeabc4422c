using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What to mind before a day of killing is chosen by its money.</summary>
internal static class HarvestCautions
{
    /// <param name="plan">The batch.</param>
    /// <param name="option">The day recommended.</param>
    /// <param name="packing">What to mind about carcasses and packs of that day.</param>
    public static IEnumerable<Caution> Of(BatchPlan plan, HarvestOption option, IReadOnlyList<Caution> packing)
    {
        foreach (Caution caution in plan.Growth.Cautions.Concat(plan.Farm?.OwnCautions ?? []).Concat(packing))
        {
            yield return caution;
        }

        if (plan.LargeLoss == LargeLoss.OneBatchInThirty)
        {
            yield return new("large-loss-assumed", "Once in thirty batches a tenth to six tenths of the birds are taken to be lost at once: an assumption, no source.");
        }

        string[] free = [.. NotCounted(plan, option.Date)];
        if (free.Length > 0)
        {
            yield return new("costs-not-stated", "Counted at nothing, since nothing is said of it: " + string.Join(", ", free) + ". The margin is too good by as much.");
        }

        if (plan.DeadOnArrival == RoadLoss.Usual)
        {
            yield return new("road-loss-elsewhere", "Dead on arrival are counted at 0.23 to 0.42 %, as in large flocks elsewhere. A hot day, a wet crate or a long wait may kill many times as many.");
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

        if (OtherSizes(plan, option) is { Percent: > 0.5 } sizes)
        {
            yield return new("bird-sizes", "About " + sizes + " of the birds are lighter or heavier than the plant takes; what becomes of them is not counted here. Ask the plant before the day.");
        }

        if (option.Date.OffFeed.Hours > 12)
        {
            yield return new("long-off-feed", string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"{option.Date.OffFeed.Hours:0.#} h from feed to killing: between 12 and 18 h the carcass begins to lose weight, and hunger is hard on birds; Directive 2007/43/EC allows 12 h. Ask the plant for another hour."));
        }

        if (option.Age.Days > 63 && plan.Feeding.Type == Flock.BirdType.Fast)
        {
            yield return new("old-fast-birds", "Fast-growing birds beyond nine weeks go lame and die of their hearts more often; little was measured there.");
        }

        yield return new("inspection-rules", "Slaughter, inspection and sale follow the local code; the inspector and the plant have the last word.");
    }

    /// <summary>The share of the birds that the plant takes for too light or too heavy.</summary>
    private static Probability OtherSizes(BatchPlan plan, HarvestOption option)
    {
        PlantTerms terms = option.Date.Terms;
        double lighter = terms.LightestBird is { } least ? 1 - plan.Growth.ShareAbove(least, option.Age).Fraction : 0;
        double heavier = terms.HeaviestBird is { } most ? plan.Growth.ShareAbove(most, option.Age).Fraction : 0;
        return Probability.FromFraction(Math.Min(1, lighter + heavier));
    }

    private static IEnumerable<string> NotCounted(BatchPlan plan, OfferedDate date)
    {
        if (plan.Costs.Chick == Money.Zero)
        {
            yield return "chicks";
        }

        if (plan.Feeds.Phases.Any(phase => phase.Price is null))
        {
            yield return "feed without a price";
        }

        if (date.Terms.PerBird == Money.Zero && date.Terms.LeastCharge == Money.Zero)
        {
            yield return "killing";
        }

        if (plan.Order.Lines.Any(line => line.Set is not null) && plan.Cutting.CuttingPerBird == Money.Zero)
        {
            yield return "cutting";
        }
    }
}
