using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>What the plant hands back of a batch: the balance, the pieces of each line, the packs, what sells, and what that is worth.</summary>
public sealed class PlantReturn
{
    private readonly IReadOnlyList<PackOffer> offers;

    /// <summary>The chance of a bird to pass both inspections.</summary>
    private readonly double passing;

    private PlantReturn(
        DeliveredBirds birds, PlantConditions plant, CarcassBalance balance, double carcassKilograms, CutOrder order, IReadOnlyList<PackOffer> offers, PlantCharges charges)
    {
        (Birds, Balance, Order, Charges, this.offers) = (birds, balance, order, charges, offers);
        Condemnation condemned = plant.Dressing.IncludesCondemned ? Condemnation.None : plant.Condemned;
        passing = (1 - condemned.LiveShare) * (1 - condemned.CarcassShare);
        Packing packing = new(order, birds, offers)
        {
            Passing = passing,
            CarcassPerLive = carcassKilograms / (birds.Total.Kilograms * passing),
            KeptInCutting = 1 - plant.CuttingLoss.Fraction,
        };
        (Lines, Packs) = packing.Count();
    }

    /// <summary>How packs are counted.</summary>
    public static ModelInfo Model { get; } = new(
        "pack-count",
        "Packs from birds of unequal weight",
        "N = min(k, X(w)) birds of w or more among the k heaviest, X(w) ~ Bin(n, 1 - F(w)); packs = floor(c N / m)",
        [
            new ModelSymbol("n", "birds delivered", "-"),
            new ModelSymbol("F(w)", "share of the flock's birds lighter than w", "-"),
            new ModelSymbol("X(w)", "birds of w or more", "-"),
            new ModelSymbol("k", "birds of a line", "-"),
            new ModelSymbol("N", "those of them that a pack takes; condemned birds go at random", "-"),
            new ModelSymbol("c", "pieces a bird", "-"),
            new ModelSymbol("m", "pieces a pack", "-"),
        ],
        [new Citation("OrderStatistics", "Order statistics of independent draws; mathematics that anyone can check", HowKnown.Derived)],
        "Exact for independent birds, as brute-force sampling confirms. The mean weight of the flock is taken as known; packs of one piece from two lines are counted as independent.",
        HowKnown.Derived);

    /// <summary>The birds delivered.</summary>
    public DeliveredBirds Birds { get; }

    /// <summary>Where the live weight goes.</summary>
    public CarcassBalance Balance { get; }

    /// <summary>What is done with the birds.</summary>
    public CutOrder Order { get; }

    /// <summary>What cutting and packing cost.</summary>
    public PlantCharges Charges { get; }

    /// <summary>The birds of each line and their pieces.</summary>
    public IReadOnlyList<LineYield> Lines { get; }

    /// <summary>The packs of each offer.</summary>
    public IReadOnlyList<PackSale> Packs { get; }

    /// <summary>Pieces for which there is no offer, or none of their weight: they bring nothing here.</summary>
    public Mass NotPacked => Mass.FromKilograms(Math.Max(0, Lines.Sum(line => line.Pieces.Sum(piece => piece.Kilograms)) - Packs.Sum(pack => pack.Packed.Kilograms + pack.LooseKilograms)));

    /// <summary>Money for what sells and for what is left and fits the freezer.</summary>
    public Money Revenue => Money.Of(Packs.Sum(pack => pack.Revenue.Amount + pack.LeftRevenue.Amount));

    /// <summary>Revenue less cutting and packing.</summary>
    public Money Value => Revenue - (Charges.CuttingPerBird * CutBirds) - (Charges.PerPack * Packs.Sum(pack => pack.ExpectedPacks));

    /// <summary>That value for each kilogram of full-fed live weight.</summary>
    public double ValuePerLiveKilogram => Value.Amount / Balance.FullFed.Kilograms;

    /// <summary>
    /// What the cuts must bring above the price of whole birds, for each kilogram of cuts, to pay for cutting: (cut fee + packs + weight lost x whole price) /
    /// weight of cuts. Null where no bird is cut, or whole birds have no price.
    /// </summary>
    public Money? BreakEvenPremiumPerKilogram => WholePrice is { } whole && CutsKilograms > 0
        ? Money.Of(BreakEven((Charges.CuttingPerBird * CutBirds).Amount, Charges.PerPack.Amount * CutPacks.Sum(pack => pack.ExpectedPacks), CuttingLossKilograms, whole, CutsKilograms))
        : null;

    /// <summary>What the cuts do bring above that price, for each kilogram of cuts, sold or not; negative where they bring less. Null as above.</summary>
    public Money? PremiumPerKilogram => WholePrice is { } whole && CutsKilograms > 0
        ? Money.Of((CutPacks.Sum(pack => pack.Revenue.Amount + pack.LeftRevenue.Amount) / CutsKilograms) - whole)
        : null;

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions => [.. Balance.Cautions, .. OwnCautions()];

    private IEnumerable<LineYield> CutLines => Lines.Where(line => line.Line.Set is not null);

    private IEnumerable<PackSale> CutPacks => Packs.Where(pack => !pack.Offer.IsWhole);

    private double CutBirds => passing * CutLines.Sum(line => line.ExpectedBirds);

    private double CutsKilograms => CutLines.Sum(line => line.Pieces.Sum(piece => piece.Kilograms));

    private double CuttingLossKilograms => CutLines.Sum(line => line.CuttingLoss.Kilograms);

    private double? WholePrice => Packs.FirstOrDefault(pack => pack.Offer.IsWhole) is { } whole
        ? whole.Offer.Price?.AmountPerKilogram ?? (whole.PackKilograms > 0 ? whole.Offer.PricePerPack!.Value.Amount / whole.PackKilograms : null)
        : null;

    /// <summary>What comes back of a batch.</summary>
    /// <param name="birds">The birds delivered.</param>
    /// <param name="plant">What happens to them.</param>
    /// <param name="order">Which stay whole and which are cut.</param>
    /// <param name="offers">The packs, their prices and their demand. Pieces without an offer bring nothing.</param>
    /// <param name="charges">What cutting and packing cost; nothing where null.</param>
    /// <exception cref="ArgumentException">Two offers claim the same pieces, or <see cref="CarcassBalance.Of"/> refuses.</exception>
    public static PlantReturn Of(DeliveredBirds birds, PlantConditions plant, CutOrder order, IReadOnlyList<PackOffer> offers, PlantCharges? charges = null)
    {
        ArgumentNullException.ThrowIfNull(birds);
        ArgumentNullException.ThrowIfNull(plant);
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(offers);
        Require.Between(plant.CuttingLoss.Fraction, 0, 0.5, "", nameof(plant));
        foreach ((PackOffer lighter, PackOffer heavier) in offers.GroupBy(offer => offer.Piece, StringComparer.OrdinalIgnoreCase)
            .SelectMany(same => same.OrderBy(offer => offer.FromKilograms).Zip(same.OrderBy(offer => offer.FromKilograms).Skip(1))))
        {
            if (heavier.FromKilograms < lighter.ToKilograms)
            {
                throw new ArgumentException("The packs \"" + lighter + "\" and \"" + heavier + "\" claim the same pieces; expected weights that do not overlap.", nameof(offers));
            }
        }

        CarcassBalance balance = CarcassBalance.Of(birds.Total, plant);
        return new(birds, plant, balance, balance.Flows.Carcass, order, offers, charges ?? PlantCharges.None);
    }

    /// <summary>The same where the carcasses are as light as the balance says that they may be.</summary>
    public PlantReturn WithLightCarcasses() => With(carcass => carcass.Low);

    /// <summary>The same where they are as heavy as they may be.</summary>
    public PlantReturn WithHeavyCarcasses() => With(carcass => carcass.High);

    /// <summary>In one line, in every culture.</summary>
    public override string ToString() => Balance + "; worth " + Value + string.Create(
        CultureInfo.InvariantCulture, $", {ValuePerLiveKilogram:0.00}/kg ({Value.Amount / Balance.FullFed.Pounds:0.00}/lb) of full-fed live weight");

    /// <summary>(cut fee + packs + weight lost x whole price) / weight of cuts.</summary>
    internal static double BreakEven(double cutFee, double packs, double lostKilograms, double wholePricePerKilogram, double cutsKilograms) =>
        (cutFee + packs + (lostKilograms * wholePricePerKilogram)) / cutsKilograms;

    private PlantReturn With(Func<LikelyRange<Mass>, Mass> carcass) => new(
        Birds, Balance.Plant, Balance, carcass(Balance.Lines.Single(line => line.Kind == BalanceKind.Carcass).Weight).Kilograms, Order, offers, Charges);

    private IEnumerable<Caution> OwnCautions()
    {
        if (Packs.Count > 0 && NotPacked.Kilograms > 1e-6)
        {
            yield return new("pieces-without-offer", "Of the pieces " + WeightText.Of(NotPacked.Kilograms) + " have no offer of their kind and weight, and are worth nothing here. Say what they bring.");
        }

        if (CutsKilograms > 0 && Balance.Plant.CuttingLoss.Fraction == 0)
        {
            yield return new("cutting-loss-not-stated", "No loss in cutting is counted, since none was stated and none is published. Weigh a few birds before and after.");
        }

        if (Packs.Any(pack => pack.Offer.Demand.IsUnlimited))
        {
            yield return new("demand-unlimited", "Some packs are taken to sell without limit, as stated. Nothing sells without limit: frames and drumsticks least.");
        }
    }
}
