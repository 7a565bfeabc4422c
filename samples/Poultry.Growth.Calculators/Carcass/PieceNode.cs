using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>All pieces of a kind; low and high as the carcass of the balance may be off. Packs and money are null where the piece has no offer.</summary>
internal sealed record PieceNode(
    string Piece, double Pieces, double Kg, double LowKg, double HighKg, double? Packs, double? SoldKg, double? LowSoldKg, double? HighSoldKg, double? UnsoldKg, double? LowUnsoldKg, double? HighUnsoldKg, double? Revenue, double? LowRevenue, double? HighRevenue)
{
    public static IReadOnlyList<PieceNode> Of(CutsAnswer answer)
    {
        BalanceLine carcass = answer.Return.Balance.Lines.Single(line => line.Kind == BalanceKind.Carcass);
        double low = carcass.Weight.Low / carcass.Weight.Likely, high = carcass.Weight.High / carcass.Weight.Likely;
        PieceRow[] light = [.. PieceRow.Of(answer.Light)], heavy = [.. PieceRow.Of(answer.Heavy)];
        double? Least(int at, Func<PackSale, double> of) => new[] { Sum(answer.Pieces[at], of), Sum(light[at], of), Sum(heavy[at], of) }.Min();
        double? Most(int at, Func<PackSale, double> of) => new[] { Sum(answer.Pieces[at], of), Sum(light[at], of), Sum(heavy[at], of) }.Max();
        return
        [
            .. answer.Pieces.Select((piece, at) => new PieceNode(
                piece.Piece,
                piece.Pieces,
                piece.Weight.Kilograms,
                low * piece.Weight.Kilograms,
                high * piece.Weight.Kilograms,
                Sum(piece, pack => pack.ExpectedPacks),
                Sum(piece, SoldOf),
                Least(at, SoldOf),
                Most(at, SoldOf),
                Sum(piece, UnsoldOf),
                Least(at, UnsoldOf),
                Most(at, UnsoldOf),
                Sum(piece, MoneyOf),
                Least(at, MoneyOf),
                Most(at, MoneyOf))),
        ];
    }

    private static double SoldOf(PackSale pack) => pack.Sold.Kilograms;

    private static double UnsoldOf(PackSale pack) => pack.Unsold.Kilograms;

    private static double MoneyOf(PackSale pack) => pack.Revenue.Amount + pack.LeftRevenue.Amount;

    private static double? Sum(PieceRow piece, Func<PackSale, double> of) => piece.Packs.Count == 0 ? null : piece.Packs.Sum(of);
}
