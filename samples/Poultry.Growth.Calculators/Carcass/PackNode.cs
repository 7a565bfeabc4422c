using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>The packs of one kind; null for a demand without limit.</summary>
internal sealed record PackNode
{
    public required string Pack { get; init; }

    public required string Piece { get; init; }

    public required double PackKg { get; init; }

    public required double Packs { get; init; }

    /// <summary>With carcasses as light, and as heavy, as they may be; the lesser of the two first.</summary>
    public required double LowPacks { get; init; }

    public required double HighPacks { get; init; }

    /// <summary>Standard deviation, as birds of random weight give them.</summary>
    public required double PacksSd { get; init; }

    public required double? AskedLow { get; init; }

    public required double? AskedLikely { get; init; }

    public required double? AskedHigh { get; init; }

    public required double Sold { get; init; }

    public required double LowSold { get; init; }

    public required double HighSold { get; init; }

    public required double? Short { get; init; }

    public required double? LowShort { get; init; }

    public required double? HighShort { get; init; }

    public required double? OrdersFilledPercent { get; init; }

    public required double Left { get; init; }

    public required double LowLeft { get; init; }

    public required double HighLeft { get; init; }

    public required double Frozen { get; init; }

    public required double LooseKg { get; init; }

    public required double Revenue { get; init; }

    public required double LowRevenue { get; init; }

    public required double HighRevenue { get; init; }

    public required double LeftRevenue { get; init; }

    public required double LowLeftRevenue { get; init; }

    public required double HighLeftRevenue { get; init; }

    public static IReadOnlyList<PackNode> Of(CutsAnswer answer) =>
    [
        .. answer.Return.Packs.Select((pack, at) => (pack, light: answer.Light.Packs[at], heavy: answer.Heavy.Packs[at])).Select(all => Of(all.pack, all.light, all.heavy)),
    ];

    private static PackNode Of(PackSale pack, PackSale light, PackSale heavy)
    {
        double Low(Func<PackSale, double> of) => Math.Min(of(pack), Math.Min(of(light), of(heavy)));
        double High(Func<PackSale, double> of) => Math.Max(of(pack), Math.Max(of(light), of(heavy)));
        double? OfDemand(Func<double> figure) => pack.Offer.Demand.IsUnlimited ? null : figure();
        return new()
        {
            Pack = pack.Offer.ToString(),
            Piece = pack.Offer.Piece,
            PackKg = pack.PackWeight.Kilograms,
            Packs = pack.ExpectedPacks,
            LowPacks = Low(one => one.ExpectedPacks),
            HighPacks = High(one => one.ExpectedPacks),
            PacksSd = pack.PacksDeviation,
            AskedLow = pack.Offer.Demand.Packs?.Low,
            AskedLikely = pack.Offer.Demand.Packs?.Likely,
            AskedHigh = pack.Offer.Demand.Packs?.High,
            Sold = pack.PacksSold,
            LowSold = Low(one => one.PacksSold),
            HighSold = High(one => one.PacksSold),
            Short = OfDemand(() => pack.PacksShort),
            LowShort = OfDemand(() => Low(one => one.PacksShort)),
            HighShort = OfDemand(() => High(one => one.PacksShort)),
            OrdersFilledPercent = pack.OrdersFilled?.Percent,
            Left = pack.PacksLeft,
            LowLeft = Low(one => one.PacksLeft),
            HighLeft = High(one => one.PacksLeft),
            Frozen = pack.PacksFrozen,
            LooseKg = pack.Loose.Kilograms,
            Revenue = pack.Revenue.Amount,
            LowRevenue = Low(one => one.Revenue.Amount),
            HighRevenue = High(one => one.Revenue.Amount),
            LeftRevenue = pack.LeftRevenue.Amount,
            LowLeftRevenue = Low(one => one.LeftRevenue.Amount),
            HighLeftRevenue = High(one => one.LeftRevenue.Amount),
        };
    }
}
