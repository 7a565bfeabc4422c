using Poultry.Growth.Carcass;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>The figures of a reconciliation, each with its parts.</summary>
internal static class Differences
{
    public static IReadOnlyList<ReconciledFigure> Of(Reconciliation reconciled, ReconciledDraws draws, Sample sample)
    {
        PlantSheet sheet = reconciled.Sheet;
        HeadBalance head = reconciled.HeadCount;
        BatchOutcome outcome = reconciled.Outcome;
        double? packed = sheet.Packs.Count > 0 ? sheet.Packed.Kilograms : null;
        double? yield = packed is { } weight && sheet.LiveWeight is { } live ? 100 * weight / live.Kilograms : null;
        (double Head, double Kilograms, double Packed) forecast = (Sample.Mean(draws.Head), Sample.Mean(draws.MeanKilograms), Sample.Mean(draws.Packed));
        ReconciledFigure Figure(string code, string name, ReconciledUnit unit, double[] values, double? actual, IReadOnlyList<DifferencePart>? parts = null) =>
            new(code, name, unit, sample.Estimate(values, value => value), actual) { Parts = parts ?? [] };

        double? revenue = Revenue(reconciled);
        (string Cause, double Ratio)[] causes = Causes(reconciled, forecast, packed);
        return
        [
            Figure("head", "birds at loading", ReconciledUnit.Birds, draws.Head, sheet.Delivered + sheet.OnHand),
            Figure("losses", "lost on the farm, of those placed", ReconciledUnit.Percent, draws.Losses, head.Lost >= 0 ? 100.0 * head.Lost / head.Placed : null),
            Figure("mean-weight", "mean live weight, full-fed", ReconciledUnit.Kilograms, draws.MeanKilograms, outcome.MeanFullFedKilograms),
            Figure("feed", "feed eaten", ReconciledUnit.Kilograms, draws.FeedKilograms, reconciled.EatenKilograms, FeedParts(reconciled, Sample.Mean(draws.FeedKilograms))),
            Figure("dead-on-arrival", "dead on arrival", ReconciledUnit.Birds, draws.DeadBirds, sheet.DeadOnArrival),
            Figure("condemned", "condemned whole", ReconciledUnit.Birds, draws.CondemnedBirds, sheet.CondemnedBirds),
            Figure("packed", "packed weight", ReconciledUnit.Kilograms, draws.Packed, packed, Parts(forecast.Packed, packed, causes)),
            .. Packs(reconciled, draws, sample),
            Figure("dressing", "packed of live weight at killing", ReconciledUnit.Percent, draws.Yield, yield),
            Figure("revenue", sheet.Packs.All(pack => pack.Money is not null) ? "revenue, as taken" : "revenue at the file's prices and likely demand", ReconciledUnit.Money, draws.Revenue, revenue, Parts(Sample.Mean(draws.Revenue), revenue, causes)),
            .. sheet.Opened > 0 ? [Figure("lesions", "dead tenders among the birds opened", ReconciledUnit.Birds, draws.LesionsFound, sheet.Lesions?.Total ?? 0)] : Array.Empty<ReconciledFigure>(),
        ];
    }

    /// <summary>ln N/N', ln W/W' and ln y/y' as ratios; without a scale weight and yield cannot be told apart.</summary>
    private static (string Cause, double Ratio)[] Causes(Reconciliation reconciled, (double Head, double Kilograms, double Packed) forecast, double? packed)
    {
        double head = reconciled.Sheet.Delivered / Math.Min(forecast.Head, reconciled.Date.Terms.MostBirds ?? double.MaxValue);
        if (packed is not { } weight || weight == 0)
        {
            return [];
        }

        double all = weight / forecast.Packed;
        return reconciled.Outcome.MeanFullFedKilograms is { } mean
            ? [("head", head), ("weight", mean / forecast.Kilograms), ("yield", all / head / (mean / forecast.Kilograms))]
            : [("head", head), ("weight and yield", all / head)];
    }

    /// <summary>P - P' = L (ln N/N' + ln W/W' + ln y/y'), L = (P - P')/(ln P - ln P')</summary>
    private static IReadOnlyList<DifferencePart> Parts(double forecast, double? actual, (string Cause, double Ratio)[] causes)
    {
        if (actual is not { } found || found <= 0 || forecast <= 0)
        {
            return [];
        }

        double log = Math.Log(found / forecast), mean = Math.Abs(log) < 1e-12 ? forecast : (found - forecast) / log;
        return [.. causes.Select(cause => new DifferencePart(cause.Cause, mean * Math.Log(cause.Ratio)))];
    }

    private static IReadOnlyList<DifferencePart> FeedParts(Reconciliation reconciled, double forecast)
    {
        BatchOutcome outcome = reconciled.Outcome;
        return Parts(forecast, reconciled.EatenKilograms, [("head", outcome.FeedForHead / outcome.FeedForForecast), ("weight", outcome.FeedForBoth / outcome.FeedForHead)]);
    }

    /// <summary>One a kind of pack: by weight classes where the sheet gives the same as the prices, otherwise a piece at a time.</summary>
    private static IEnumerable<ReconciledFigure> Packs(Reconciliation reconciled, ReconciledDraws draws, Sample sample)
    {
        IReadOnlyList<PackOffer> offers = reconciled.Plan.Offers;
        foreach (IGrouping<(string Piece, int PerPack), int> kind in Enumerable.Range(0, offers.Count).GroupBy(at => (offers[at].Piece.ToUpperInvariant(), offers[at].PiecesPerPack)))
        {
            PackedLine[] lines = [.. reconciled.Sheet.Packs.Where(line => line.PiecesPerPack == kind.Key.PerPack && line.Piece.Equals(kind.Key.Piece, StringComparison.OrdinalIgnoreCase))];
            bool byWeight = lines.All(line => kind.Any(at => Matches(line, offers[at])));
            foreach (int[] group in byWeight ? kind.Select(at => new[] { at }) : [[.. kind]])
            {
                double[] sum = new double[draws.Packed.Length];
                foreach (int at in group)
                {
                    for (int draw = 0; draw < sum.Length; draw++)
                    {
                        sum[draw] += draws.Packs[at][draw];
                    }
                }

                double actual = lines.Where(line => !byWeight || Matches(line, offers[group[0]])).Sum(line => line.Weight.Kilograms);
                string name = byWeight ? offers[group[0]].ToString() : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{kind.Key.PerPack} {offers[group[0]].Piece}");
                yield return new("pack", name, ReconciledUnit.Kilograms, sample.Estimate(sum, value => value), reconciled.Sheet.Packs.Count > 0 ? actual : null);
            }
        }
    }

    /// <summary>Money taken where all of it is known; otherwise what the packs bring at the prices stated, each as far as it is likely to sell; null where they are of other kinds than the prices.</summary>
    private static double? Revenue(Reconciliation reconciled)
    {
        IReadOnlyList<PackedLine> packs = reconciled.Sheet.Packs;
        if (packs.Count == 0)
        {
            return null;
        }

        if (packs.All(pack => pack.Money is not null))
        {
            return packs.Sum(pack => pack.Money!.Value.Amount);
        }

        double sum = 0;
        foreach (PackedLine pack in packs.Where(pack => pack.Packs > 0))
        {
            if (reconciled.Plan.Offers.FirstOrDefault(offer => Matches(pack, offer)) is not { } offer)
            {
                return null;
            }

            double kilograms = pack.Weight.Kilograms / pack.Packs, sold = Math.Min(pack.Packs, offer.Demand.Packs?.Likely ?? double.PositiveInfinity);
            double price = offer.PricePerPack?.Amount ?? (kilograms * offer.Price!.Value.AmountPerKilogram);
            sum += (sold * price) + (Math.Min(pack.Packs - sold, offer.FreezerPacks) * kilograms * offer.LeftPrice.AmountPerKilogram);
        }

        return sum;
    }

    private static bool Matches(PackedLine line, PackOffer offer) =>
        line.PiecesPerPack == offer.PiecesPerPack && line.Piece.Equals(offer.Piece, StringComparison.OrdinalIgnoreCase) && Same(line.From, offer.From) && Same(line.To, offer.To);

    /// <summary>To a gram: one of them may have been written in pounds.</summary>
    private static bool Same(Mass? one, Mass? other) => one is { } a ? other is { } b && Math.Abs(a.Kilograms - b.Kilograms) < 0.001 : other is null;
}
