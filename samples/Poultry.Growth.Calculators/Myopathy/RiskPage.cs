using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The risk of a batch as tables, cautions and sources.</summary>
internal static class RiskPage
{
    public static void Print(RiskAnswer answer, Page page)
    {
        SpreadTable.Open(answer.Prevalence.Cautions, page);
        page.Line("Deep pectoral myopathy in a batch of " + Numbers.Whole(answer.Question.Birds) + " birds killed at " + answer.Question.Batch.KillAge
            + (answer.Question.Farm is { } farm ? ", by the farm's own record: " + farm : ", by two surveys of birds indoors"));
        SpreadTable.Print("Share of birds with a lesion, %", answer.Prevalence, answer.Level, page);
        OneFarm(answer, page);
        page.Title("Birds and meat (" + Numbers.Percent(answer.Level) + " % of flocks)");
        Counts(answer, page);
        Assumptions(answer, page);
        page.Title("How much each figure moves the answer, share of birds %");
        Sensitivity(answer, page);
        page.Title("Risk factors");
        page.Table(["<factor", "<verdict", "<what is done"], RiskFactors.All.Select(factor => (IReadOnlyList<string>)[factor.Code, Codes.Of(factor.Verdict), factor.Use]));
        Factor(answer, page);
        page.Title("What may be said");
        foreach (LesionStatement statement in LesionStatement.All)
        {
            page.Line("- " + statement.Text);
        }

        page.Line("- Trade report, \"" + TradeReport.QuarterOfABadFlock.Says + "\": " + TradeReport.QuarterOfABadFlock.Verdict);
        SpreadTable.Cautions(answer.Cautions, page);
        page.Sources(answer.Sources);
    }

    private static void OneFarm(RiskAnswer answer, Page page)
    {
        if (answer.Farm is { } farm)
        {
            Interval<BirdPrevalence> range = farm.IntervalAt(answer.Level);
            page.Line("One farm over many such batches: " + SpreadTable.Percent(farm.Median) + " % in the middle, " + SpreadTable.Percent(range.Low) + " to " + SpreadTable.Percent(range.High)
                + " %; the worst of ten batches of a farm has 5 % or more with a chance of " + Numbers.Percent(farm.ChanceWorstAbove(BirdPrevalence.FromPercent(5), 10).Fraction, 1) + " %.");
        }
    }

    private static void Counts(RiskAnswer answer, Page page)
    {
        string unit = page.Units.Weight;
        page.Table(["<what", "mean", "low", "high"], Rows());
        page.Line("No bird affected at all: " + Numbers.Percent(answer.Affected.ChanceOfNone.Fraction) + " % of such flocks.");
        if (answer.Question.Deboned > 0)
        {
            page.Line(answer.Loss.Record == TrimRecord.ContainsLesions
                ? "Your packed ratio or trim figure holds lesions already: nothing is taken off again."
                : "Cut away of an affected bird: " + page.Units.Text(answer.PerAffectedBird, 3) + " " + unit + ".");
        }

        if (answer.Question.Refund.Amount > 0)
        {
            page.Line("Refunds, if every customer finds the lesion: " + Numbers.Fixed(answer.Loss.ExpectedRefunds.Amount, 2) + " a batch on average.");
        }

        if (answer.Change is { } change)
        {
            page.Line("A change that multiplies the odds by " + SpreadTable.Two(answer.Question.ChangeOdds!.Value) + " spares " + SpreadTable.Two(change.SparedBirds) + " birds a batch"
                + (answer.Question.Refund.Amount > 0 ? ", worth " + Numbers.Fixed(change.PerBatch.Amount, 2) + " at the refund" : "")
                + "; to see whether it does takes " + (change.BatchesToSee is { } batches ? Numbers.Whole(batches) + " batches before it and as many after, every bird opened." : "for ever: there is nothing to see."));
        }

        IEnumerable<IReadOnlyList<string>> Rows()
        {
            yield return Row("birds affected", answer.Affected);
            if (answer.Question.Deboned > 0)
            {
                yield return
                [
                    "lost at the plant, " + unit,
                    page.Units.Text(answer.Loss.LostAtPlant.Value, 2),
                    page.Units.Text(answer.Loss.LostAtPlant.Interval.Low, 2),
                    page.Units.Text(answer.Loss.LostAtPlant.Interval.High, 2),
                ];
            }

            if (answer.Loss.Hidden is { } hidden)
            {
                yield return Row("of them sold on the bone, hidden", hidden);
            }
        }
    }

    private static string[] Row(string name, AffectedBirds birds) =>
        [name, SpreadTable.Two(birds.ExpectedBirds), Numbers.Whole(birds.Interval.Low!.Value), Numbers.Whole(birds.Interval.High!.Value)];

    private static void Assumptions(RiskAnswer answer, Page page)
    {
        if (answer.Prevalence.OddsRatios.Count > 0)
        {
            page.Title("Odds ratios of this batch");
            page.Table(["<for", "odds x", "low", "high", "<known"], answer.Prevalence.OddsRatios.Select(ratio => (IReadOnlyList<string>)
                [ratio.Name, Numbers.Fixed(ratio.Value, 2), Numbers.Fixed(ratio.Low, 2), Numbers.Fixed(ratio.High, 2), Numbers.Words(ratio.HowKnown)]));
        }
    }

    private static void Sensitivity(RiskAnswer answer, Page page)
    {
        page.Table(
            ["<figure", "from", "to", "mean from", "to", "95 % below: from", "to"],
            answer.Sensitivity.Select(row => (IReadOnlyList<string>)
            [
                row.Name,
                Numbers.Fixed(row.Low, 2),
                Numbers.Fixed(row.High, 2),
                SpreadTable.Percent(row.AtLow.Mean),
                SpreadTable.Percent(row.AtHigh.Mean),
                SpreadTable.Percent(row.AtLow.IntervalAt(0.9).High),
                SpreadTable.Percent(row.AtHigh.IntervalAt(0.9).High),
            ]).Append(["all ranges at once", "-", "-", SpreadTable.Percent(answer.AllRanges.Mean), "-", SpreadTable.Percent(answer.AllRanges.IntervalAt(0.9).High), "-"]));
    }

    private static void Factor(RiskAnswer answer, Page page)
    {
        if (answer.Question.Factor is { } factor)
        {
            page.Title("Asked for: " + factor.Name);
            page.Line("For: " + factor.InFavour + ".");
            page.Line("Against: " + factor.Against + ".");
            page.Line("Here: " + factor.Use + ".");
        }
    }
}
