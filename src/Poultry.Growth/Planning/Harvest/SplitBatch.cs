using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>
/// A batch killed on two days, made ready for draws. Birds left behind keep their place among the flock's weights, die as they would have, and eat by their part of the
/// live weight: that they grow as before, in spite of the first catching and with more room, is an assumption.
/// </summary>
internal sealed class SplitBatch : IHarvestChoice
{
    private readonly BatchPlan plan;
    private readonly HarvestLot first, second;
    private readonly double share, fixedCost;

    public SplitBatch(BatchPlan plan, SplitPlan split)
    {
        (this.plan, share) = (plan, split.Share.Fraction);
        Probability rest = Probability.FromFraction(1 - share);
        bool bySize = split.Birds == FirstBirds.Largest;
        first = new(plan, Agreed(split.First), share, flock => bySize ? flock.Heaviest(split.Share) : flock);
        second = new(plan, Agreed(split.Second), 1 - share, flock => bySize ? flock.Lightest(rest) : flock);
        fixedCost = plan.Costs.Of(plan.Birds.Placed, (second.Age - plan.Birds.AgeAtPlacement).Days, trips: 2) + HarvestDay.MovingCost(plan, split.First, split.Second);
    }

    public Age LastAge => second.Age;

    public HarvestOutcome Of(BatchFate fate, Span<double> packs)
    {
        packs.Clear();
        int alive = fate.Head(first.Age), going = (int)Math.Round(share * alive);
        double kilograms = fate.Kilograms(first.Age), later = fate.Kilograms(second.Age);

        // Those left die as all would have.
        double staying = alive == 0 ? 0 : (double)(alive - going) / alive;
        int left = (int)Math.Round(staying * fate.Head(second.Age));
        LotOutcome one = first.Take(kilograms, going, fate.Inputs, packs[..(packs.Length / 2)]), two = second.Take(later, left, fate.Inputs, packs[..(packs.Length / 2)]);
        ((double feed, double feedCost), (double feedLater, double feedCostLater)) = (fate.Feed(first.Age), fate.Feed(second.Age));
        double eating = staying * second.RelativeWeight;
        (double firstKilograms, double secondKilograms) = (kilograms * first.RelativeWeight, later * second.RelativeWeight);
        return HarvestOutcome.Of(plan, fate.Inputs, packs, one + two, fixedCost + feedCost + (eating * (feedCostLater - feedCost))) with
        {
            Head = going + left,
            MeanKilograms = going + left == 0 ? kilograms : ((going * firstKilograms) + (left * secondKilograms)) / (going + left),
            FeedKilograms = feed + (eating * (feedLater - feed)),
            FirstBirds = going,
            FirstKilograms = firstKilograms,
            SecondKilograms = secondKilograms,
            FloorKilograms = Math.Max(alive * kilograms, left * secondKilograms),
        };
    }

    private static OfferedDate Agreed(OfferedDate date) => date.As(date.Date, date.IsBooked, bookedBirds: null);
}
