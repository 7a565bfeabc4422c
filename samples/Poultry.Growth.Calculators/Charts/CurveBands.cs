using OxyPlot;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>A fitted curve with the interval of the mean and the wider one of single birds, in two parts: weighed and beyond.</summary>
internal sealed class CurveBands
{
    private readonly Units units;
    private readonly List<ProjectedWeight> weighed;
    private readonly List<ProjectedWeight> beyond;

    private CurveBands(Units units, List<ProjectedWeight> weighed, List<ProjectedWeight> beyond) => (this.units, this.weighed, this.beyond) = (units, weighed, beyond);

    public bool GoesBeyond => beyond.Count > 0;

    public static CurveBands Of(FitAnswer answer, Units units)
    {
        double last = answer.Fit.WeighIns[^1].Age.Days;
        double first = Math.Min(answer.Fit.WeighIns[0].Age.Days, answer.Projections[0].Age.Days);
        double end = Math.Max(Math.Max(last, answer.Projections[^1].Age.Days), answer.Target?.Age?.Value.Days ?? 0);
        return new(units, Between(answer, first, last), end > last ? Between(answer, last, end) : []);
    }

    /// <summary>Adds what there is, the widest first, so that nothing covers the curve.</summary>
    public void AddTo(PlotModel plot, string level)
    {
        if (weighed[0].Bird is not null)
        {
            plot.Series.Add(BandSeries.Band(weighed, at => at.Bird!.Interval, units, level + " interval of one bird", 28));
            plot.Series.Add(BandSeries.Band(beyond, at => at.Bird!.Interval, units, null, 16));
        }

        plot.Series.Add(BandSeries.Band(weighed, at => at.Mean.Interval, units, level + " interval of the mean", 90));
        plot.Series.Add(BandSeries.Band(beyond, at => at.Mean.Interval, units, null, 50));
        plot.Series.Add(BandSeries.Line(weighed, units, "fitted curve", ChartStyle.Curve, LineStyle.Solid));
        if (GoesBeyond)
        {
            plot.Series.Add(BandSeries.Line(beyond, units, "beyond the last weigh-in, if it is right", ChartStyle.CurveBeyond, LineStyle.LongDash));
        }
    }

    private static List<ProjectedWeight> Between(FitAnswer answer, double from, double to) =>
        [.. BandSeries.Ages(from, to).Select(age => ProjectedWeight.Of(answer.Fit, age, answer.Level)).OfType<ProjectedWeight>()];
}
