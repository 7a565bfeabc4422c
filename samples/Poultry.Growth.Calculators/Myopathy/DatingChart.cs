using OxyPlot;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>When lesions were made: a bar a day before killing, and one for everything older.</summary>
internal static class DatingChart
{
    public static string Of(DateAnswer answer)
    {
        LesionDating dating = answer.Dating;
        const string Title = "When the lesions were made";
        string[] labels = [.. dating.ByDay.Select(day => Numbers.Whole(day.DaysBefore)), "14+"];
        double[] heights = [.. dating.ByDay.Select(day => day.Share.Percent), dating.OlderThan14Days.Percent];
        PlotModel plot = BarChart.Of(Title, dating.Found + "; read windows, not days", "days before killing", labels, "chance for a lesion, %", heights);
        string bars = string.Join(", ", dating.ByDay.Select(day => Numbers.Percent(day.Share.Fraction, 1) + " % around day " + Numbers.Whole(day.DaysBefore)));
        return SvgChart.Of(
            plot, Title, "Chart of the chance that a lesion was made so many days before killing. " + bars + ", " + Numbers.Percent(dating.OlderThan14Days.Fraction, 1) + " % more than 14 days. " + dating.CoarseRule);
    }
}
