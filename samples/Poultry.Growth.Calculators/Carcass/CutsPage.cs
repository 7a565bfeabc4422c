using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>What the plant hands back as tables, cautions and sources.</summary>
internal static class CutsPage
{
    public static void Print(CutsAnswer answer, Page page)
    {
        PlantReturn back = answer.Return;
        Units units = page.Units;
        page.Line(Numbers.Whole(back.Birds.Birds) + " birds of " + units.Text(back.Birds.Weights.Mean, 2) + " " + units.Weight + " " + back.Birds.Total.State
            + (back.Balance.AtKilling.Equals(back.Birds.Total.State) ? "" : ", killed " + back.Balance.AtKilling)
            + "; CV " + Numbers.Percent(back.Birds.Weights.CoefficientOfVariation, 1) + " %");
        page.Line("Dressing: " + back.Balance.Plant.Dressing);
        Balance(back.Balance, page);
        Lines(back, page);
        if (back.Packs.Count == 0)
        {
            Pieces(answer, page);
        }
        else
        {
            Packs(back, page);
            Worth(answer, page);
        }

        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static void Balance(CarcassBalance balance, Page page)
    {
        string unit = page.Units.Weight;
        page.Title("Where the weight goes (of " + page.Units.Text(balance.FullFed, 0) + " " + unit + " full-fed; " + (balance.Closes ? "it closes" : "it does not close") + ")");
        page.Table(["<part", unit, "low", "high", "% of live"], balance.Lines.Select(line => (IReadOnlyList<string>)
        [
            line.Name,
            page.Units.Text(line.Weight.Likely, 1),
            page.Units.Text(line.Weight.Low, 1),
            page.Units.Text(line.Weight.High, 1),
            Numbers.Fixed(line.PercentOfLive, 1),
        ]));
        page.Line("Carcass as weighed " + balance.Carcass.Basis + ".");
        if (balance.Plant.Water is { } water)
        {
            page.Line("Retained water when chilled: " + Numbers.Fixed(water.PercentRetainedOfHot, 2) + " % of the hot weight, " + Numbers.Fixed(water.PercentRetainedOfChilled, 2) + " % of the chilled.");
        }
    }

    private static void Lines(PlantReturn back, Page page)
    {
        string unit = page.Units.Weight;
        page.Title(back.Order.Rule switch
        {
            CutOrderRule.HeaviestFirst => "Birds (the heaviest to the first line)",
            CutOrderRule.ByWeight => "Birds (by their live weight)",
            _ => "Birds (as they come)",
        });
        page.Table(["<cut", "birds", "live " + unit + " a bird", "carcass " + unit, "cutting loss " + unit], back.Lines.Select(line => (IReadOnlyList<string>)
        [
            line.Line.Name,
            Numbers.Fixed(line.ExpectedBirds, 0),
            line.ExpectedBirds > 0 ? page.Units.Text(line.LiveWeight / line.ExpectedBirds, 2) : "-",
            page.Units.Text(line.Carcass, 1),
            page.Units.Text(line.CuttingLoss, 1),
        ]));
    }

    private static void Pieces(CutsAnswer answer, Page page)
    {
        page.Title("Pieces");
        page.Table(["<piece", "pieces", page.Units.Weight, page.Units.Weight + " a piece"], answer.Pieces.Select(piece => (IReadOnlyList<string>)
        [
            piece.Piece, Numbers.Whole(piece.Pieces), page.Units.Text(piece.Weight, 1), page.Units.Text(piece.Weight / piece.Pieces, 3),
        ]));
        page.Line("Prices (--prices) tell packs, what sells of them, and how many birds to have cut.");
    }

    private static void Packs(PlantReturn back, Page page)
    {
        string unit = page.Units.Weight;
        page.Title("Packs (expected, and what sells of them over the range of demand)");
        page.Table(["<pack", unit + " a pack", "packs", "SD", "asked for", "sold", "short", "left", "frozen"], back.Packs.Select(pack => (IReadOnlyList<string>)
        [
            Name(pack.Offer, page.Units),
            page.Units.Text(pack.PackWeight, 2),
            Numbers.Fixed(pack.ExpectedPacks, 1),
            Numbers.Fixed(pack.PacksDeviation, 1),
            pack.Offer.Demand.ToString(),
            Numbers.Fixed(pack.PacksSold, 1),
            pack.Offer.Demand.IsUnlimited ? "-" : Numbers.Fixed(pack.PacksShort, 1),
            Numbers.Fixed(pack.PacksLeft, 1),
            Numbers.Fixed(pack.PacksFrozen, 1),
        ]));
        page.Table(["<pack", "sold " + unit, "unsold " + unit, "revenue", "from what was left"], back.Packs.Select(pack => (IReadOnlyList<string>)
        [
            Name(pack.Offer, page.Units),
            page.Units.Text(pack.Sold, 1),
            page.Units.Text(pack.Unsold, 1),
            Numbers.Fixed(pack.Revenue.Amount, 2),
            Numbers.Fixed(pack.LeftRevenue.Amount, 2),
        ]));
        if (back.NotPacked.Kilograms > 1e-6)
        {
            page.Line("In no pack: " + page.Units.Text(back.NotPacked, 1) + " " + unit + ".");
        }
    }

    private static string Name(PackOffer offer, Units units)
    {
        string from = offer.From is { } low ? " from " + units.Text(low, 2) : "", to = offer.To is { } high ? " below " + units.Text(high, 2) : "";
        return Numbers.Whole(offer.PiecesPerPack) + " " + offer.Piece + from + to + (offer.From is null && offer.To is null ? "" : " " + units.Weight);
    }

    private static void Worth(CutsAnswer answer, Page page)
    {
        PlantReturn back = answer.Return;
        string unit = page.Units.Weight;
        double PerUnit(double perKilogram) => perKilogram / page.Units.OfKilograms(1);
        page.Title("Worth (your currency; feed, chicks and killing not taken off)");
        page.Line("Revenue " + back.Revenue + ", less cutting and packing " + back.Value + " (" + answer.Light.Value + " to " + answer.Heavy.Value + " as the carcasses may be lighter or heavier): " + Numbers.Fixed(PerUnit(back.ValuePerLiveKilogram), 2) + " for a " + unit + " of full-fed live weight.");
        if (back.BreakEvenPremiumPerKilogram is { } needed && back.PremiumPerKilogram is { } reached)
        {
            page.Line("Against whole birds that would sell, cutting pays where cuts bring " + Numbers.Fixed(PerUnit(needed.Amount), 2) + " more for a " + unit + "; these bring " + Numbers.Signed(PerUnit(reached.Amount), 2)
                + ", unsold ones counted.");
        }

        if (answer.Advice is { } advice)
        {
            page.Line(advice.Reason);
            page.Table(["cut % of birds", "worth"], advice.Shares.Where((_, at) => at % 2 == 0).Select(share => (IReadOnlyList<string>)
            [
                Numbers.Percent(share.Share.Fraction), Numbers.Fixed(share.Return.Value.Amount, 2),
            ]));
        }
    }
}
