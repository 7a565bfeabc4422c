using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>Packs of one kind that came back from the plant.</summary>
public sealed class PackedLine
{
    private PackedLine(string piece, int piecesPerPack, int packs, double kilograms) =>
        (Piece, PiecesPerPack, Packs, Weight) = (piece, piecesPerPack, packs, Mass.FromKilograms(kilograms));

    /// <summary>A piece of the set of cuts, or <c>whole</c>.</summary>
    public string Piece { get; }

    /// <summary>Pieces in a pack.</summary>
    public int PiecesPerPack { get; }

    /// <summary>How many packs.</summary>
    public int Packs { get; }

    /// <summary>Their weight together.</summary>
    public Mass Weight { get; }

    /// <summary>The lightest piece that belongs to them; null where there is no limit.</summary>
    public Mass? From { get; private init; }

    /// <summary>The weight below which pieces belong to them; null where there is no limit.</summary>
    public Mass? To { get; private init; }

    /// <summary>Money taken for them so far; null where it is not known.</summary>
    public Money? Money { get; private init; }

    /// <summary>Packs of one kind.</summary>
    /// <param name="piece">A piece of the set of cuts, or <c>whole</c>.</param>
    /// <param name="piecesPerPack">1 or more.</param>
    /// <param name="packs">0 or more.</param>
    /// <param name="weight">All of them together: 0 or more.</param>
    /// <exception cref="ArgumentException">The piece has no name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static PackedLine Of(string piece, int piecesPerPack, int packs, Mass weight) => new(
        Require.Text(piece).Trim(), Require.AtLeast(piecesPerPack, 1), Require.AtLeast(packs, 0), Require.NotNegative(weight.Kilograms, "kg", nameof(weight)));

    /// <summary>The same packs, of pieces within weights.</summary>
    /// <param name="from">The lightest, above 0; null where there is no limit.</param>
    /// <param name="to">Below this, above <paramref name="from"/>; null where there is no limit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limits are crossed, or a weight is not above 0.</exception>
    public PackedLine Weighing(Mass? from, Mass? to)
    {
        Require.Band(from, to);
        return new(Piece, PiecesPerPack, Packs, Weight.Kilograms) { From = from, To = to, Money = Money };
    }

    /// <summary>The same packs, and what was taken for them.</summary>
    /// <param name="money">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public PackedLine Taking(Money money) => new(Piece, PiecesPerPack, Packs, Weight.Kilograms)
    {
        From = From, To = To, Money = Primitives.Money.Of(Require.NotNegative(money.Amount, "", nameof(money))),
    };

    /// <summary>As in <c>38 packs of 2 breast, 24.9 kg</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Packs} packs of {PiecesPerPack} {Piece}, {Weight.Kilograms:0.#} kg");
}
