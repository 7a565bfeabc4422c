using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Figures of a batch as a table with their definitions, cautions and sources.</summary>
internal static class FiguresPage
{
    public static IReadOnlyList<Citation> SourcesOf(BatchFigures figures) =>
        [.. BatchFigures.Model.Citations.Concat(figures.WeightCorrected.SelectMany(corrected => corrected.Rule.Model.Citations)).DistinctBy(source => source.ToString())];

    public static void Print(BatchFigures figures, Page page)
    {
        FinishedBatch batch = figures.Batch;
        page.Line(Numbers.Whole(batch.Sold) + " of " + Numbers.Whole(batch.Placed) + " birds sold at " + batch.AgeAtSale + ", " + page.Units.Text(batch.LiveWeight, 1) + " " + page.Units.Weight
            + " together, " + page.Units.Text(figures.MeanLiveWeight, 3) + " " + page.Units.Weight + " a bird; feed " + page.Units.Text(batch.Feed, 1) + " " + page.Units.Weight);
        page.Title("Figures");
        page.Table(["<figure", "value", "<by"], Rows(figures, page.Units));
        page.Cautions(figures.Cautions);
        page.Sources(SourcesOf(figures));
    }

    public static IEnumerable<IReadOnlyList<string>> Rows(BatchFigures figures, Units units)
    {
        string Ratio(FeedConversion? conversion) => conversion is { } known ? Numbers.Fixed(known.Ratio, 3) : "-";
        yield return ["livability %", Numbers.Fixed(figures.Livability.Percent, 1), "sold / placed"];
        yield return ["average daily gain " + units.DailyWeight, units == Units.Metric ? Numbers.Fixed(figures.AverageDailyGain.GramsPerDay, 1) : Numbers.Fixed(figures.AverageDailyGain.PoundsPerDay, 3),
            figures.Batch.ChickWeight is null ? "live weight / age (chicks not weighed)" : "(live weight - chick) / age"];
        yield return ["feed conversion, live", Ratio(figures.ByLiveWeight), "feed / live weight sold"];
        yield return ["feed conversion, gain", Ratio(figures.ByGain), "feed / (live weight sold - chicks placed)"];
        yield return ["feed conversion, mortality-adjusted", Ratio(figures.MortalityAdjusted), "feed / (live weight sold + dead)"];
        foreach (WeightCorrectedConversion corrected in figures.WeightCorrected)
        {
            yield return [(corrected.Caution is null ? "" : "(") + "feed conversion at " + units.Text(corrected.Rule.Reference, units == Units.Metric ? 1 : 2) + " " + units.Weight + (corrected.Caution is null ? "" : ")"),
                Numbers.Fixed(corrected.Ratio, 3), corrected.Rule.Model.Equation + (corrected.Caution is null ? "" : ": does not fit these weights")];
        }

        yield return ["caloric conversion kcal/" + units.Weight, figures.CaloricConversion is { } caloric ? Numbers.Whole(Kilocalories.PerUnit(caloric, units)) : "-", "conversion, live x energy of the feed"];
        yield return ["production efficiency factor", Numbers.Whole(figures.ProductionEfficiencyFactor), "livability % x live weight kg / (age d x conversion, live) x 100"];
        yield return ["broiler index", Numbers.Whole(figures.BroilerIndex), "daily gain g x livability % / (10 x conversion, live)"];
    }
}
