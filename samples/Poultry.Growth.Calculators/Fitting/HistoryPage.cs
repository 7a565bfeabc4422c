using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What past batches teach, as tables, a paragraph, cautions and sources.</summary>
internal static class HistoryPage
{
    public static void Print(HistoryAnswer answer, Page page)
    {
        page.Line("Past batches of " + answer.Reading.Folder + ": " + answer.Learned.Kind);
        if (answer.Learned.Batches.Count > 0)
        {
            Batches(answer, page);
            Next(answer, page);
            page.Title("What the farm's past says");
            page.Line(Said(answer, page.Units));
        }
        else
        {
            page.Line("No answer: " + answer.Learned);
        }

        page.Flagged(answer.Reading.Suspicions);
        page.Cautions(answer.Learned.Cautions);
        page.Sources(answer.Sources);
    }

    private static void Batches(HistoryAnswer answer, Page page)
    {
        Mass middle = answer.Learned.Prior.Centre.WeightAt(UsualAges.EightWeeks);
        page.Title("Batches (weight at " + UsualAges.EightWeeks + " by the curve that its weigh-ins and the other batches give each)");
        page.Table(["<batch", "weigh-ins", "birds", "from d", "to d", "at " + UsualAges.EightWeeks + ", " + page.Units.Weight, "off %"], answer.Learned.Batches.Select(batch =>
        {
            Mass weight = batch.Curve.WeightAt(UsualAges.EightWeeks);
            return (IReadOnlyList<string>)
            [
                batch.Batch.Name,
                Numbers.Whole(batch.Batch.WeighIns.Count),
                Numbers.Whole(batch.Batch.WeighIns.Sum(weighIn => weighIn.BirdsWeighed)),
                Numbers.Days(batch.Batch.WeighIns[0].Age),
                Numbers.Days(batch.Batch.WeighIns[^1].Age),
                page.Units.Text(weight, 2),
                Numbers.Signed(100 * ((weight / middle) - 1), 0),
            ];
        }));
    }

    private static void Next(HistoryAnswer answer, Page page)
    {
        string unit = page.Units.Weight;
        page.Title("Mean of the next batch, no bird of it weighed (" + Numbers.Percent(answer.Level) + " % intervals)");
        page.Table(["age d", "own past " + unit, "low", "high", "shipped prior " + unit, "low", "high", "batches differ by %"], answer.ByAge.Select(at => (IReadOnlyList<string>)
        [
            Numbers.Days(at.Own.Age),
            .. Weights(at.Own.Mean, page),
            .. Weights(at.Shipped.Mean, page),
            Numbers.Percent(answer.Learned.BetweenBatchesAt(at.Own.Age)),
        ]));
    }

    private static string[] Weights(Estimate<Mass> mean, Page page) =>
        [page.Units.Text(mean.Value, 2), page.Units.Text(mean.Interval.Low, 2), page.Units.Text(mean.Interval.High, 2)];

    /// <summary>What stands in the tables, for somebody who reads one paragraph.</summary>
    private static string Said(HistoryAnswer answer, Units units)
    {
        Age age = UsualAges.EightWeeks;
        (Estimate<Mass> own, Estimate<Mass> shipped) = (answer.Own.MeanAt(age, answer.Level), answer.Shipped.MeanAt(age, answer.Level));
        string Weight(Mass weight) => units.Text(weight, 2) + " " + units.Weight;
        string Interval(Estimate<Mass> mean) => Weight(mean.Interval.Low!.Value) + " to " + Weight(mean.Interval.High!.Value);
        double off = (own.Value / shipped.Value) - 1;
        int batches = answer.Learned.Batches.Count;
        string difference = Math.Abs(off) < 0.005 ? "the same weight" : Numbers.Percent(Math.Abs(off)) + " % " + (off < 0 ? "less" : "more");
        return Numbers.Whole(batches) + (batches == 1 ? " batch stands" : " batches stand") + " behind this. By " + (batches == 1 ? "it" : "them") + " the next batch weighs " + Weight(own.Value) + " at " + age
            + ", and with a chance of " + Numbers.Percent(answer.Level) + " % " + Interval(own) + "; batches of this kind differ by "
            + Numbers.Percent(answer.Learned.BetweenBatchesAt(age)) + " %. Without this the library would say " + Weight(shipped.Value) + ", " + Interval(shipped) + " ("
            + answer.Learned.Shipped.Name + "): the farm's own past says " + difference + ", in an interval "
            + Numbers.Percent(Width(own) / Width(shipped)) + " % as wide.";
    }

    private static double Width(Estimate<Mass> mean) => mean.Interval.High!.Value.Kilograms - mean.Interval.Low!.Value.Kilograms;
}
