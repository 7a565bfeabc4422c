using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>The dating of lesions as tables, cautions and sources.</summary>
internal static class DatePage
{
    public static void Print(DateAnswer answer, Page page)
    {
        LesionDating dating = answer.Dating;
        SpreadTable.Open(dating.Cautions, page);
        page.Line("Lesions found: " + dating.Found + "; killed " + Numbers.Date(answer.Killed));
        page.Line(dating.CoarseRule);
        if (!dating.IsAnswered)
        {
            page.Line("No answer: " + (dating.Prior == DatingPrior.Log ? "no logged disturbance" : "no day since the birds became susceptible") + " can have made lesions of this look.");
        }
        else
        {
            Days(answer, page);
        }

        if (dating.Events.Count > 0)
        {
            page.Title("Logged disturbances, the likeliest first");
            page.Table(
                ["<what", "date", "days before", "chance for a lesion %", "birds", "<all by itself"],
                dating.Events.Select(row => (IReadOnlyList<string>)
                [
                    row.Disturbance.What,
                    Numbers.Date(row.Date),
                    Numbers.Whole(row.DaysBefore),
                    Numbers.Percent(row.Share.Fraction),
                    Numbers.Fixed(row.ExpectedBirds, 1),
                    row.ExplainsAll ? "possible" : "no",
                ]));
        }

        SpreadTable.Cautions(dating.Cautions, page);
        page.Sources(DateAnswer.Sources);
    }

    private static void Days(DateAnswer answer, Page page)
    {
        LesionDating dating = answer.Dating;
        string high = answer.Days!.High is { } day ? Numbers.Whole(day) + " d" : "more than 14 d";
        string low = answer.Days.Low is { } first ? Numbers.Whole(first) : "more than 14";
        page.Title("When a lesion was made (" + (dating.Prior switch
        {
            DatingPrior.Log => "only logged days, each alike beforehand",
            DatingPrior.Susceptibility => "days beforehand by susceptibility",
            _ => "every susceptible day alike beforehand",
        }) + ")");
        page.Table(["days before", "date", "chance %"], dating.ByDay.Where(row => dating.Prior != DatingPrior.Log || row.Share.Fraction > 0).Select(row => (IReadOnlyList<string>)
            [Numbers.Whole(row.DaysBefore), Numbers.Date(row.Date), Numbers.Percent(row.Share.Fraction, 1)])
            .Append(["over 14", "-", Numbers.Percent(dating.OlderThan14Days.Fraction, 1)]));
        page.Line("With a chance of " + Numbers.Percent(answer.Level) + " % between " + low + " and " + high + " before killing. Read windows, not days.");
    }
}
