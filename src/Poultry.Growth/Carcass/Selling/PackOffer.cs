using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>A kind of pack: which pieces, of which weight, at which price, how many will sell, and what becomes of the rest.</summary>
public sealed class PackOffer
{
    private PackOffer(string piece, int piecesPerPack, Demand demand) => (Piece, PiecesPerPack, Demand) = (piece, piecesPerPack, demand);

    /// <summary>The piece, as its set calls it; <c>whole</c> for birds that are not cut.</summary>
    public string Piece { get; }

    /// <summary>How many of them make a pack.</summary>
    public int PiecesPerPack { get; }

    /// <summary>How many packs will sell at their price.</summary>
    public Demand Demand { get; }

    /// <summary>Pieces from this weight on; null without limit.</summary>
    public Mass? From { get; private init; }

    /// <summary>Pieces below this weight; null without limit.</summary>
    public Mass? To { get; private init; }

    /// <summary>Money for the meat by weight; null where a pack has one price.</summary>
    public UnitPrice? Price { get; private init; }

    /// <summary>Money for a pack whatever it weighs; null where the price goes by weight.</summary>
    public Money? PricePerPack { get; private init; }

    /// <summary>What a pack that did not sell brings later, by weight; nothing unless stated.</summary>
    public UnitPrice LeftPrice { get; private init; }

    /// <summary>How many unsold packs the freezer takes; what does not fit brings nothing.</summary>
    public int FreezerPacks { get; private init; }

    /// <summary>Whether it holds whole birds.</summary>
    internal bool IsWhole => Piece.Equals(CutOrderLine.WholeBird, StringComparison.OrdinalIgnoreCase);

    internal double FromKilograms => From?.Kilograms ?? 0;

    internal double ToKilograms => To?.Kilograms ?? double.PositiveInfinity;

    /// <summary>Packs sold by weight.</summary>
    /// <param name="piece">The piece, as its set calls it; <c>whole</c> for birds that are not cut.</param>
    /// <param name="piecesPerPack">1 or more.</param>
    /// <param name="price">Money for the meat by weight.</param>
    /// <param name="demand">How many packs will sell.</param>
    public static PackOffer ByWeight(string piece, int piecesPerPack, UnitPrice price, Demand demand) => Of(piece, piecesPerPack, demand, price, null);

    /// <summary>Packs of one price.</summary>
    /// <param name="piece">The piece, as its set calls it; <c>whole</c> for birds that are not cut.</param>
    /// <param name="piecesPerPack">1 or more.</param>
    /// <param name="price">Money for a pack.</param>
    /// <param name="demand">How many packs will sell.</param>
    public static PackOffer ByPack(string piece, int piecesPerPack, Money price, Demand demand)
    {
        Require.NotNegative(price.Amount, "", nameof(price));
        return Of(piece, piecesPerPack, demand, null, price);
    }

    /// <summary>The same offer for pieces of some weights only.</summary>
    /// <param name="from">Pieces from this weight on, above 0; no limit where null.</param>
    /// <param name="to">Pieces below this weight, above <paramref name="from"/>; no limit where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limits are crossed, or a weight is not above 0.</exception>
    public PackOffer Weighing(Mass? from, Mass? to)
    {
        Require.Band(from, to);
        return new(Piece, PiecesPerPack, Demand) { From = from, To = to, Price = Price, PricePerPack = PricePerPack, LeftPrice = LeftPrice, FreezerPacks = FreezerPacks };
    }

    /// <summary>The same offer with what becomes of packs that do not sell.</summary>
    /// <param name="freezerPacks">How many of them the freezer takes, 0 or more.</param>
    /// <param name="price">What they bring later.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is negative.</exception>
    public PackOffer LeftOver(int freezerPacks, UnitPrice price) => new(Piece, PiecesPerPack, Demand)
    {
        From = From, To = To, Price = Price, PricePerPack = PricePerPack, LeftPrice = price, FreezerPacks = Require.AtLeast(freezerPacks, 0),
    };

    /// <summary>In one line, as in <c>4 thigh</c>, <c>1 whole from 1.8 kg (3.97 lb)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PiecesPerPack} {Piece}")
        + (From is { } from ? " from " + WeightText.Of(from.Kilograms) : "") + (To is { } to ? " below " + WeightText.Of(to.Kilograms) : "");

    private static PackOffer Of(string piece, int piecesPerPack, Demand demand, UnitPrice? price, Money? pricePerPack)
    {
        ArgumentNullException.ThrowIfNull(demand);
        return new(Require.Text(piece), Require.AtLeast(piecesPerPack, 1), demand) { Price = price, PricePerPack = pricePerPack };
    }
}
