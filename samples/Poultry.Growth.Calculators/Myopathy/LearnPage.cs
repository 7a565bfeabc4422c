using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>What a farm's inspections teach, as tables, cautions and sources.</summary>
internal static class LearnPage
{
    public static void Print(FarmLesionRate farm, double level, Page page)
    {
        SpreadTable.Open(farm.Cautions, page);
        page.Line("Inspections: " + Numbers.Whole(farm.Inspections.Count) + " batches, " + Numbers.Whole(farm.Found) + " of " + Numbers.Whole(farm.Opened) + " birds with a lesion");
        page.Title("Batches");
        page.Table(["<batch", "killed", "opened", "found", "found %"], farm.Inspections.Select(inspection => (IReadOnlyList<string>)
        [
            inspection.Batch,
            Numbers.Date(inspection.Killed),
            Numbers.Whole(inspection.Opened),
            Numbers.Whole(inspection.Found),
            SpreadTable.Two(100.0 * inspection.Found / inspection.Opened),
        ]));
        page.Title("The farm (" + Numbers.Percent(level) + " % intervals; before any inspection in the last columns)");
        FarmLesionRate any = FarmLesionRate.Learn();
        page.Table(["<what", "median", "low", "high", "before", "low", "high"],
        [
            Row("level: half of its batches have less, % of birds", farm.Level(level), any.Level(level), share => share.Percent),
            Row("rate in the long run, % of birds", farm.LongRunRate(level), any.LongRunRate(level), share => share.Percent),
            Row("how much batches differ (SD of the logit)", farm.BetweenBatchesLogit(level), any.BetweenBatchesLogit(level), spread => spread),
        ]);
        SpreadTable.Print("The next batch, % of birds", farm.NextBatch, level, page);
        SpreadTable.Cautions(farm.Cautions, page);
        page.Sources(FarmLesionRate.Model.Citations);
    }

    private static string[] Row<T>(string name, Estimate<T> farm, Estimate<T> any, Func<T, double> number)
        where T : struct, IComparable<T> =>
        [
            name, .. ((Estimate<T>[])[farm, any]).SelectMany(estimate => new[]
            {
                SpreadTable.Two(number(estimate.Value)), SpreadTable.Two(number(estimate.Interval.Low!.Value)), SpreadTable.Two(number(estimate.Interval.High!.Value)),
            }),
        ];
}
