using Poultry.Growth.Carcass;
using UnitsNet;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>All pieces of a kind over the lines of an order, with their packs.</summary>
internal sealed record PieceRow(string Piece, double Pieces, Mass Weight, IReadOnlyList<PackSale> Packs)
{
    public static IEnumerable<PieceRow> Of(PlantReturn back) => back.Lines.Where(line => line.ExpectedBirds > 0).SelectMany(line => line.Pieces)
        .GroupBy(piece => piece.Piece, StringComparer.OrdinalIgnoreCase)
        .Select(same => new PieceRow(
            same.Key,
            same.Sum(piece => piece.ExpectedPieces),
            Mass.FromKilograms(same.Sum(piece => piece.Weight.Kilograms)),
            [.. back.Packs.Where(pack => pack.Offer.Piece.Equals(same.Key, StringComparison.OrdinalIgnoreCase))]));
}
