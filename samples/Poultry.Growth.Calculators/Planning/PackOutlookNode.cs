using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Packs of a kind sold and left, for programs.</summary>
internal sealed record PackOutlookNode(string Piece, int PiecesPerPack, double? FromKg, double? ToKg, OutcomeNode Sold, OutcomeNode Left)
{
    public static PackOutlookNode Of(PackOutlook pack) => new(
        pack.Offer.Piece,
        pack.Offer.PiecesPerPack,
        pack.Offer.From?.Kilograms,
        pack.Offer.To?.Kilograms,
        OutcomeNode.Of(pack.Sold, packs => packs),
        OutcomeNode.Of(pack.Left, packs => packs));
}
