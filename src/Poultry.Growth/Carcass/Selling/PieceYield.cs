using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>All pieces of a kind from the birds of one line.</summary>
public sealed class PieceYield
{
    internal PieceYield(string piece, double pieces, double kilograms) => (Piece, ExpectedPieces, Kilograms) = (piece, pieces, kilograms);

    /// <summary>The kind of piece.</summary>
    public string Piece { get; }

    /// <summary>How many, expected.</summary>
    public double ExpectedPieces { get; }

    /// <summary>What they weigh together, expected.</summary>
    public Mass Weight => Mass.FromKilograms(Kilograms);

    internal double Kilograms { get; }

    /// <summary>In one line, as in <c>240 thigh: 43 kg (94.8 lb)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{ExpectedPieces:0} {Piece}: ") + WeightText.Of(Kilograms);
}
