using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>An inspection as tables, cautions and sources.</summary>
internal static class InspectPage
{
    public static void Print(InspectAnswer answer, Page page)
    {
        if (answer.Posterior is not null)
        {
            SpreadTable.Open(answer.Cautions, page);
        }

        if (answer.ToOpen is { } toOpen)
        {
            string asked = "to find lesions of " + SpreadTable.Two(100 * answer.Question.Prevalence!.Value) + " % of birds with a chance of " + Numbers.Percent(answer.Question.Confidence, 1) + " %";
            page.Line(toOpen.Birds is { } birds
                ? "Birds to open " + asked + ": " + Numbers.Whole(birds) + (answer.Question.Flock is { } flock ? " of " + Numbers.Whole(flock) : "")
                : "No number of birds is enough " + asked + ": not attainable, " + toOpen.Reason);
            page.Line("Finding nothing although they are there then has a chance of " + Numbers.Percent(toOpen.ChanceOfNone.Fraction, 1) + " %.");
        }

        if (answer.Rate is { } rate)
        {
            page.Title("The count by itself: " + Numbers.Whole(answer.Question.Found!.Value) + " of " + Numbers.Whole(answer.Question.Opened!.Value) + " birds, " + SpreadTable.Percent(rate.Estimate) + " % (" + Numbers.Percent(answer.Level) + " % intervals)");
            page.Table(["<rule", "low %", "high %"],
            [
                Row("Wilson", rate.Wilson), Row("Wilson, corrected", rate.WilsonCorrected), Row("Clopper-Pearson", rate.ClopperPearson), Row("Jeffreys", rate.Jeffreys),
            ]);
        }

        if (answer.Posterior is { } posterior)
        {
            SpreadTable.Print("With what was known beforehand (" + (answer.Question.Farm is null ? "published figures" : "the farm's own record") + "), share of birds %", posterior, answer.Level, page);
        }

        SpreadTable.Cautions(answer.Cautions, page);
        page.Sources(answer.Sources);
    }

    private static string[] Row(string name, Interval<BirdPrevalence> interval) => [name, SpreadTable.Percent(interval.Low), SpreadTable.Percent(interval.High)];
}
