using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>Reads packs, prices and what is expected to sell from a table of text (CSV), one kind of pack a row. The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes this throw: every problem is found in one pass and told with its line and column.</remarks>
public static class PackOfferFile
{
    /// <summary>What stands in place of a number of packs where any number sells.</summary>
    internal const string AnyNumber = "any";

    private const double MostPacks = 1_000_000;

    private static string[] Bounds => ["sells_low", "sells_high"];

    private static string[] Needed => ["piece", "sells_likely"];

    private static string[] Others => ["pieces_per_pack", "from", "to", "price", "pack_price", "sells_low", "sells_high", "left_price", "freezer_packs"];

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    public static FileReading<IReadOnlyList<PackOffer>> Read(string path) => NamedTable.ReadFile<IReadOnlyList<PackOffer>>(path, Needed, Others, Make);

    private static List<PackOffer> Make(IReadOnlyList<NamedComment> statements, IReadOnlyList<NamedRow> rows, ProblemList problems)
    {
        List<(NamedRow Row, PackOffer Offer)> offers = [];
        foreach (NamedRow row in rows)
        {
            if (Offer(row) is { } offer)
            {
                offers.Add((row, offer));
            }
        }

        foreach (IGrouping<string, (NamedRow Row, PackOffer Offer)> same in offers.GroupBy(offer => offer.Offer.Piece, StringComparer.OrdinalIgnoreCase))
        {
            (NamedRow Row, PackOffer Offer)[] byWeight = [.. same.OrderBy(offer => offer.Offer.From?.Kilograms ?? 0)];
            foreach (((NamedRow Row, PackOffer Offer) lighter, (NamedRow Row, PackOffer Offer) heavier) in byWeight.Zip(byWeight.Skip(1)))
            {
                if (lighter.Offer.To is not { } to || (heavier.Offer.From?.Kilograms ?? 0) < to.Kilograms)
                {
                    heavier.Row.Refuse(heavier.Row.Cell("piece"), "piece", "claims the same pieces as another row", "weights from and to that do not overlap");
                }
            }
        }

        return [.. offers.Select(offer => offer.Offer)];
    }

    private static PackOffer? Offer(NamedRow row)
    {
        string piece = row.Text("piece", "a piece of the set of cuts, or whole");
        int perPack = (int)(row.Number("pieces_per_pack", 1, 1000, whole: true) ?? 1);
        Mass? from = row.Quantity<Mass>("from", QuantityText.TryMass), to = row.Quantity<Mass>("to", QuantityText.TryMass);
        UnitPrice? price = row.Quantity<UnitPrice>("price", QuantityText.TryUnitPrice), left = row.Quantity<UnitPrice>("left_price", QuantityText.TryUnitPrice);
        Money? packPrice = row.Quantity<Money>("pack_price", QuantityText.TryMoney);
        double freezer = row.Number("freezer_packs", 0, MostPacks, whole: true) ?? 0;
        Demand? demand = DemandOf(row);
        if ((row.Cell("price") is null) == (row.Cell("pack_price") is null))
        {
            row.Refuse(row.Cell("pack_price"), "price", row.Cell("price") is null ? "is not stated" : "is stated twice", "either price, as in 9.50/kg, or pack_price, as in 12.00");
        }

        if (piece.Length == 0 || demand is null || (price is null && packPrice is null))
        {
            return null;
        }

        return row.Make(
            () => (price is { } byWeight ? PackOffer.ByWeight(piece, perPack, byWeight, demand) : PackOffer.ByPack(piece, perPack, packPrice!.Value, demand))
                .Weighing(from, to)
                .LeftOver((int)freezer, left ?? default),
            "row");
    }

    private static Demand? DemandOf(NamedRow row)
    {
        if (row.Cell("sells_likely") is { } cell && cell.Text.Equals(AnyNumber, StringComparison.OrdinalIgnoreCase))
        {
            foreach (string bound in Bounds.Where(bound => row.Cell(bound) is not null))
            {
                row.Refuse(row.Cell(bound), bound, "stands beside any", "nothing, or numbers in all three");
            }

            return Demand.Unlimited;
        }

        string text = row.Text("sells_likely", "how many packs will probably sell, or any");
        double? likely = row.Number("sells_likely", 0, MostPacks), low = row.Number("sells_low", 0, MostPacks), high = row.Number("sells_high", 0, MostPacks);
        if (text.Length == 0 || likely is not { } packs)
        {
            return null;
        }

        if ((low ?? packs) > packs || (high ?? packs) < packs)
        {
            row.Refuse(row.Cell("sells_likely"), "sells_likely", "does not lie between sells_low and sells_high", "low, likely and high in this order");
            return null;
        }

        return Demand.Of(low ?? packs, packs, high ?? packs);
    }
}
