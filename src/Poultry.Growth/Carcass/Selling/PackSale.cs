using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>The packs of one kind: how many there are, how many sell, what is short, what is left.</summary>
public sealed class PackSale
{
    internal PackSale(PackOffer offer, double[] packs, double kilograms, double pieces)
    {
        Offer = offer;
        double squares = 0;
        for (int count = 0; count < packs.Length; count++)
        {
            double left = offer.Demand.LeftOver(count);
            ExpectedPacks += packs[count] * count;
            squares += packs[count] * count * count;
            PacksLeft += packs[count] * left;
            PacksFrozen += packs[count] * (left - offer.Demand.LeftOver(count - offer.FreezerPacks));
        }

        PacksDeviation = Math.Sqrt(Math.Max(0, squares - (ExpectedPacks * ExpectedPacks)));
        PackKilograms = pieces > 0 ? offer.PiecesPerPack * kilograms / pieces : 0;
        LooseKilograms = Math.Max(0, kilograms - (PackKilograms * ExpectedPacks));
        double price = offer.PricePerPack?.Amount ?? (PackKilograms * offer.Price!.Value.AmountPerKilogram);
        Revenue = Money.Of(price * PacksSold);
        LeftRevenue = Money.Of(PackKilograms * offer.LeftPrice.AmountPerKilogram * PacksFrozen);
    }

    /// <summary>What is packed and asked for it.</summary>
    public PackOffer Offer { get; }

    /// <summary>Full packs, expected.</summary>
    public double ExpectedPacks { get; }

    /// <summary>Standard deviation of the number of packs, as birds of random weight give them; the mean weight of the flock is taken as known.</summary>
    public double PacksDeviation { get; }

    /// <summary>Packs that sell, expected over the range of demand.</summary>
    public double PacksSold => ExpectedPacks - PacksLeft;

    /// <summary>Packs asked for that are not there, expected; 0 where demand is unlimited.</summary>
    public double PacksShort => Offer.Demand.IsUnlimited ? 0 : Math.Max(0, Offer.Demand.Mean - PacksSold);

    /// <summary>Packs that do not sell, expected.</summary>
    public double PacksLeft { get; }

    /// <summary>Those of them that the freezer takes.</summary>
    public double PacksFrozen { get; }

    /// <summary>The part of the packs asked for that is filled; null where demand is unlimited or nothing is asked for.</summary>
    public Probability? OrdersFilled => Offer.Demand.IsUnlimited || Offer.Demand.Mean == 0 ? null : Probability.FromFraction(Math.Min(1, PacksSold / Offer.Demand.Mean));

    /// <summary>The mean weight of a pack.</summary>
    public Mass PackWeight => Mass.FromKilograms(PackKilograms);

    /// <summary>All full packs together.</summary>
    public Mass Packed => Mass.FromKilograms(PackKilograms * ExpectedPacks);

    /// <summary>What sells.</summary>
    public Mass Sold => Mass.FromKilograms(PackKilograms * PacksSold);

    /// <summary>What does not.</summary>
    public Mass Unsold => Mass.FromKilograms(PackKilograms * PacksLeft);

    /// <summary>Pieces over that fill no pack; they bring nothing here.</summary>
    public Mass Loose => Mass.FromKilograms(LooseKilograms);

    /// <summary>Money for what sells.</summary>
    public Money Revenue { get; }

    /// <summary>Money for what is left and fits the freezer.</summary>
    public Money LeftRevenue { get; }

    internal double PackKilograms { get; }

    internal double LooseKilograms { get; }

    /// <summary>In one line, as in <c>4 thigh: 60 packs, 45 sold, 15 left</c>, in every culture.</summary>
    public override string ToString() => Offer + string.Create(CultureInfo.InvariantCulture, $": {ExpectedPacks:0.#} packs, {PacksSold:0.#} sold, {PacksLeft:0.#} left");
}
