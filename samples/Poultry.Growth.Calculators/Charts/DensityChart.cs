using OxyPlot;
using OxyPlot.Series;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Stocking density over age against the limits that bind.</summary>
internal static class DensityChart
{
    private static readonly LineStyle[] Styles = [LineStyle.Dash, LineStyle.Dot, LineStyle.DashDot, LineStyle.LongDash];

    public static string Of(SpaceAnswer answer, Units weights)
    {
        HousingUnits units = HousingUnits.Of(weights);
        PlotModel plot = ChartStyle.Plot(
            "Stocking density by age", Numbers.Whole(answer.Question.Birds!.Value) + " birds placed on " + Numbers.Fixed(units.Of(answer.Question.Floor), 1) + " " + units.Floor, weights.Weight);
        plot.Axes[1].Title = "stocking density, " + units.Density;
        DensityAtAge[] path = [.. BandSeries.Ages(answer.ByAge[0].At.Age.Days, answer.ByAge[^1].At.Age.Days).Select(answer.Path!.At)];
        LineSeries density = new() { Title = "expected density", Color = ChartStyle.Curve, StrokeThickness = 2.5 };
        density.Points.AddRange(path.Select(at => new DataPoint(at.Age.Days, units.Of(at.Verdict.Density))));
        plot.Series.Add(density);
        Limit[] limits = [.. path.SelectMany(at => at.Verdict.Limits).Where(verdict => verdict.Binds).Select(verdict => verdict.Limit).Distinct()];
        foreach ((int at, Limit limit) in limits.Index())
        {
            plot.Series.Add(Line(limit, path, units, Styles[at % Styles.Length]));
        }

        if (answer.Reached is { } reached)
        {
            ChartStyle.Mark(plot, reached.Age.Days, "limit passed");
        }

        return SvgChart.Of(plot, "Stocking density by age against its limits", Description(answer, units, limits));
    }

    /// <summary>A limit as the density that it allows: level for kg/m2, rising with the birds for birds/m2 and floor of each bird.</summary>
    private static LineSeries Line(Limit limit, DensityAtAge[] path, HousingUnits units, LineStyle style)
    {
        LineSeries line = new() { Title = units.Of(limit) + ", " + limit.Instrument.Name + (limit.IsUnverified ? ", unverified" : ""), Color = ChartStyle.Weighed, LineStyle = style, StrokeThickness = 2 };
        foreach (DensityAtAge at in path.Where(at => at.Verdict.Limits.Any(verdict => verdict.Limit == limit && verdict.Binds)))
        {
            StockingDensity? allowed = (limit.Subject, limit.Value) switch
            {
                (LimitSubject.StockingDensity, { } most) => StockingDensity.FromKilogramsPerSquareMeter(most),
                (LimitSubject.BirdsPerArea, { } most) => BirdDensity.FromBirdsPerSquareMeter(most).At(at.Verdict.Weight),
                (LimitSubject.FloorAreaPerBird, { } least) => BirdDensity.FromBirdsPerSquareMeter(1 / least).At(at.Verdict.Weight),
                _ => null,
            };
            if (allowed is { } known)
            {
                line.Points.Add(new DataPoint(at.Age.Days, units.Of(known)));
            }
        }

        return line;
    }

    private static string Description(SpaceAnswer answer, HousingUnits units, Limit[] limits) => "Chart of stocking density against age. "
        + string.Join(" ", answer.ByAge.Select(row => "At " + row.At.Age + ": " + Numbers.Fixed(units.Of(row.At.Verdict.Density), 1) + " " + units.Density + "."))
        + (limits.Length == 0 ? " No limit is known to bind." : " Limits: " + string.Join("; ", limits.Select(limit => units.Of(limit) + ", " + limit)) + ".")
        + (answer.Reached is { } reached ? " Passed after " + reached.Age + "." : " None is passed.")
        + " " + LimitVerdict.NotLegalAdvice;
}
