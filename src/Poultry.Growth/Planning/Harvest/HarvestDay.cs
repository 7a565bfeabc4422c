using Poultry.Growth.Carcass;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>A day of killing made ready for draws: everything that is the same in all of them.</summary>
internal sealed class HarvestDay
{
    private readonly BatchPlan plan;
    private readonly PackSurface packs;
    private readonly LesionShares lesions;
    private readonly double fixedCost, moveCost, condemned;

    public HarvestDay(BatchPlan plan, OfferedDate date, (double Low, double High) kilograms)
    {
        (this.plan, Date, Age) = (plan, date, plan.AgeOn(date.Date));
        LiveState atKilling = LiveState.OffFeed(date.OffFeed, date.Road);
        double expected = plan.Birds.BirdsAt(Age);
        packs = new(plan, atKilling, mean => plan.Growth.WeightsAt(Age, Mass.FromKilograms(mean)), kilograms, (Math.Max(1, expected * 0.7), plan.Birds.Placed));
        lesions = new(plan.Lesions.For(new()
        {
            KillAge = Age, Sex = plan.Growth.Prior.Sex, IsOutdoor = plan.Feeding.Temperatures.MoveOut is not null, LiveWeight = plan.Growth.MeanAt(Age).Value,
        }));
        fixedCost = plan.Costs.Of(plan.Birds.Placed, (Age - plan.Birds.AgeAtPlacement).Days);
        moveCost = plan.Dates.FirstOrDefault(booked => booked.IsBooked) is { } now && !date.IsBooked ? now.ChangeCost.Amount + now.Terms.Deposit.Amount : 0;
        condemned = plan.Plant.Dressing.IncludesCondemned ? 0 : 1 - ((1 - plan.Plant.Condemned.LiveShare) * (1 - plan.Plant.Condemned.CarcassShare));
    }

    public OfferedDate Date { get; }

    public Age Age { get; }

    /// <summary>Works out one draw.</summary>
    /// <param name="draw">Its number.</param>
    /// <param name="into">Where the outcomes go.</param>
    /// <param name="inputs">What was drawn.</param>
    /// <param name="kilograms">Mean live weight, full-fed.</param>
    /// <param name="head">Birds alive.</param>
    /// <param name="feed">Feed of the batch in kg, and what it cost.</param>
    /// <param name="room">Room for the packs: two numbers an offer and one.</param>
    public void Draw(int draw, HarvestDraws into, DrawnInputs inputs, double kilograms, int head, (double Kilograms, double Cost) feed, Span<double> room)
    {
        int delivered = Math.Min(head, Date.Terms.MostBirds ?? head);
        double dressing = Triangular.Quantile(plan.Plant.Dressing.Ratio, inputs.Dressing) / plan.Plant.Dressing.Ratio.Likely.Fraction;
        packs.At(kilograms, delivered, room);
        (double revenue, double packed, double sold, double filled) = Sell(inputs, dressing, room);
        double lesionKilograms = plan.LesionsInFigures == TrimRecord.ContainsLesions || packed == 0
            ? 0
            : lesions.At(inputs.Lesions) * delivered * plan.Deboned.Fraction * MeatAtRisk.OfLiveWeight(Mass.FromKilograms(kilograms)).PerAffectedBird.Kilograms;
        double lesionMoney = packed == 0 ? 0 : Math.Min(1, lesionKilograms / packed) * revenue;
        double cost = fixedCost + moveCost + feed.Cost + room[^1]
            + Date.Terms.ChargeFor(Date.BookedBirds ?? delivered, delivered, condemned * delivered).Amount;
        into.Head[draw] = head;
        into.MeanKilograms[draw] = kilograms;
        into.FeedKilograms[draw] = feed.Kilograms;
        into.LesionKilograms[draw] = lesionKilograms;
        into.SoldKilograms[draw] = sold;
        into.Revenue[draw] = revenue - lesionMoney;
        into.Cost[draw] = cost;
        into.Margin[draw] = revenue - lesionMoney - cost;
        into.Filled[draw] = filled;
    }

    private (double Revenue, double PackedKilograms, double SoldKilograms, double Filled) Sell(DrawnInputs inputs, double dressing, ReadOnlySpan<double> packs)
    {
        Numerics.RandomStream demand = inputs.Demand;
        (double revenue, double packed, double soldKilograms, double asked, double met) = (0, 0, 0, 0, 0);
        for (int i = 0; i < plan.Offers.Count; i++)
        {
            PackOffer offer = plan.Offers[i];
            double kilograms = packs[(2 * i) + 1] * dressing;
            double u = demand.NextUniform();
            double wanted = offer.Demand.Packs is { } range ? Triangular.Quantile(range, u) : double.PositiveInfinity;
            double sold = Math.Min(packs[2 * i], wanted);
            double frozen = Math.Min(packs[2 * i] - sold, offer.FreezerPacks);
            revenue += (sold * (offer.PricePerPack?.Amount ?? (kilograms * offer.Price!.Value.AmountPerKilogram))) + (frozen * kilograms * offer.LeftPrice.AmountPerKilogram);
            packed += packs[2 * i] * kilograms;
            soldKilograms += (sold + frozen) * kilograms;
            if (double.IsFinite(wanted))
            {
                asked += wanted;
                met += sold;
            }
        }

        return (revenue * Triangular.Quantile(plan.Prices, inputs.Prices), packed, soldKilograms, asked > 0 ? met / asked : 1);
    }
}
