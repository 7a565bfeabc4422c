using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>Birds wanted for packs that customers ordered: what <see cref="ChickOrder"/> starts from where orders come in packs and not in head.</summary>
public static class BirdsForPacks
{
    /// <summary>The birds that hold the packs: whole ones, and as many cut ones as the piece takes of which most is ordered. All sizes count alike.</summary>
    /// <param name="ordered">Packs, and how many of each are ordered, 0 or more; at least one.</param>
    /// <param name="set">Into which pieces cut birds fall; null where none is cut.</param>
    /// <param name="lost">The share of the birds alive at killing that gives no pack: dead on arrival and condemned, 0 to 50 %.</param>
    /// <exception cref="ArgumentException">Nothing is ordered, or a piece is none of the set.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or the share is out of its range.</exception>
    public static int Of(IReadOnlyList<(PackOffer Pack, int Packs)> ordered, CutSet? set, Probability lost)
    {
        Require.Between(lost.Percent, 0, 50, "%", nameof(lost));
        (double whole, double cut) = (0, 0);
        foreach (IGrouping<string, (PackOffer Pack, int Packs)> same in Require.Some(ordered).GroupBy(order => order.Pack.Piece, StringComparer.OrdinalIgnoreCase))
        {
            double pieces = same.Sum(order => (double)order.Pack.PiecesPerPack * Require.AtLeast(order.Packs, 0, nameof(ordered)));
            if (same.First().Pack.IsWhole)
            {
                whole += pieces;
            }
            else
            {
                CutPiece piece = set?.Pieces.FirstOrDefault(known => known.Name.Equals(same.Key, StringComparison.OrdinalIgnoreCase))
                    ?? throw new ArgumentException("The piece \"" + same.Key + "\" is none of " + (set?.Name ?? "whole birds") + "; expected a set that has it.", nameof(set));
                cut = Math.Max(cut, pieces / piece.PerBird);
            }
        }

        // 21 birds of which seven in ten are left are 30 and not a rounding more.
        return (int)Math.Ceiling((whole + Math.Ceiling(cut)) / (1 - lost.Fraction) * (1 - 1e-12));
    }
}
