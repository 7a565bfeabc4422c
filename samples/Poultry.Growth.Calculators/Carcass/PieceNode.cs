using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>All pieces of a kind; low and high as the carcass of the balance may be off. Packs and money are null where the piece has no offer.</summary>
internal sealed record PieceNode(
    string Piece, double Pieces, double Kg, double LowKg, double HighKg, double? Packs, double? SoldKg, double? UnsoldKg, double? Revenue)
{
    public static IReadOnlyList<PieceNode> Of(CutsAnswer answer)
    {
        BalanceLine carcass = answer.Return.Balance.Lines.Single(line => line.Kind == BalanceKind.Carcass);
        double low = carcass.Weight.Low / carcass.Weight.Likely, high = carcass.Weight.High / carcass.Weight.Likely;
        return
        [
            .. answer.Pieces.Select(piece => new PieceNode(
                piece.Piece,
                piece.Pieces,
                piece.Weight.Kilograms,
                low * piece.Weight.Kilograms,
                high * piece.Weight.Kilograms,
                Sum(piece, pack => pack.ExpectedPacks),
                Sum(piece, pack => pack.Sold.Kilograms),
                Sum(piece, pack => pack.Unsold.Kilograms),
                Sum(piece, pack => pack.Revenue.Amount + pack.LeftRevenue.Amount))),
        ];
    }

    private static double? Sum(PieceRow piece, Func<PackSale, double> of) => piece.Packs.Count == 0 ? null : piece.Packs.Sum(of);
}
