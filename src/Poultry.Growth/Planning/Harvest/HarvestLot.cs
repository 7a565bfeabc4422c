using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>Birds that go to the plant on one day, all of the batch or a part of it, made ready for draws: everything that is the same in all of them.</summary>
internal sealed class HarvestLot
{
    private readonly BatchPlan plan;
    private readonly PackSurface packs;
    private readonly LesionShares lesions;
    private readonly LikelyRange<Probability>? condemned;

    /// <param name="plan">The batch.</param>
    /// <param name="date">The day and the plant's terms.</param>
    /// <param name="share">The share of the birds alive that go.</param>
    /// <param name="which">Which of the flock's birds they are.</param>
    public HarvestLot(BatchPlan plan, OfferedDate date, double share, Func<WeightDistribution, WeightDistribution> which)
    {
        (this.plan, Date, Age) = (plan, date, plan.AgeOn(date.Date));
        WeightDistribution Weights(double mean) => which(plan.Growth.WeightsAt(Age, Mass.FromKilograms(mean)));
        Mass usual = plan.Growth.MeanAt(Age).Value;
        RelativeWeight = which(plan.Growth.WeightsAt(Age, usual)).Mean / usual;
        packs = new(
            plan, LiveState.OffFeed(date.OffFeed, date.Road), Weights, Span(), (Math.Max(1, share * plan.Birds.BirdsAt(Age) * 0.7), Math.Max(1, share * plan.Birds.Placed)));
        lesions = new(LesionShares.PrevalenceOf(plan.Lesions, plan, Age, usual * RelativeWeight));
        condemned = plan.Plant.Dressing.IncludesCondemned ? null : plan.CondemnedBirds ?? LikelyRange<Probability>.Exactly(Probability.FromFraction(InTables));
    }

    public OfferedDate Date { get; }

    public Age Age { get; }

    /// <summary>What to mind about carcasses and packs.</summary>
    public IReadOnlyList<Caution> Cautions => packs.Cautions;

    /// <summary>The mean weight of these birds over that of the flock.</summary>
    public double RelativeWeight { get; }

    /// <summary>What is condemned in the tables of packs.</summary>
    private double InTables => 1 - ((1 - plan.Plant.Condemned.LiveShare) * (1 - plan.Plant.Condemned.CarcassShare));

    /// <summary>Takes birds to the plant: adds packs and kilograms of each offer to the room, and tells what that cost and who was lost.</summary>
    /// <param name="flockKilograms">Mean live weight of the flock, full-fed.</param>
    /// <param name="birds">Birds that stand ready; those beyond what the plant takes stay at home.</param>
    /// <param name="inputs">What was drawn.</param>
    /// <param name="room">Two numbers an offer: packs, and kilograms in them.</param>
    public LotOutcome Take(double flockKilograms, int birds, DrawnInputs inputs, Span<double> room)
    {
        if (birds == 0)
        {
            return new() { Charges = Date.Terms.ChargeFor(Date.BookedBirds ?? 0, 0).Amount };
        }

        int loaded = Math.Min(birds, Date.Terms.MostBirds ?? birds);
        double dead = Triangular.Quantile(plan.DeadOnArrival.Share, inputs.Road) * loaded, delivered = loaded - dead;
        double dressing = Triangular.Quantile(plan.Plant.Dressing.Ratio, inputs.Dressing) / plan.Plant.Dressing.Ratio.Likely.Fraction;
        double taken = condemned is { } range ? Triangular.Quantile(range, inputs.Condemned) : 0;
        double passing = condemned is null ? 1 : (1 - taken) / (1 - InTables);
        double cuts = Triangular.Quantile(plan.CutWeights, inputs.Cuts);
        Span<double> values = stackalloc double[room.Length + 1];
        packs.At(flockKilograms, delivered, values);
        for (int offer = 0; offer < room.Length; offer += 2)
        {
            room[offer] += passing * values[offer];
            room[offer + 1] += passing * values[offer] * values[offer + 1] * dressing * (plan.Offers[offer / 2].IsWhole ? 1 : cuts);
        }

        double atRisk = plan.LesionsInFigures == TrimRecord.ContainsLesions || plan.Deboned.Fraction == 0
            ? 0
            : plan.Deboned.Fraction * MeatAtRisk.OfLiveWeight(Mass.FromKilograms(flockKilograms * RelativeWeight)).PerAffectedBird.Kilograms;

        // Birds that came dead were not missing.
        return new()
        {
            Dead = dead,
            Condemned = taken * delivered,
            LesionKilograms = atRisk == 0 ? 0 : lesions.At(inputs.Lesions) * delivered * atRisk,
            Charges = values[^1] + Date.Terms.ChargeFor(Math.Max(0, (Date.BookedBirds ?? loaded) - dead), delivered, taken * delivered).Amount,
        };
    }

    /// <summary>Weights of the flock that nearly all draws lie between.</summary>
    private (double Low, double High) Span()
    {
        Interval<Mass> wide = plan.Growth.MeanAt(Age, level: 0.999).Interval;
        double mean = plan.Growth.MeanAt(Age).Value.Kilograms;
        return (wide.Low?.Kilograms ?? mean / 2, wide.High?.Kilograms ?? mean * 2);
    }
}
