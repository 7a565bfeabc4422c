using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using Poultry.Growth.Carcass;
using UnitsNet;

namespace Poultry.Growth.Calculators.Charts;

/// <summary>Where the weight goes: a bar for every piece that comes back and for every part that does not, in order from plate to offal.</summary>
internal static class CutsChart
{
    public static string Of(CutsAnswer answer, Units units)
    {
        CarcassBalance balance = answer.Return.Balance;
        (string Name, Mass Weight, OxyColor Colour)[] bars =
        [
            .. answer.Pieces.Select(piece => (piece.Piece, piece.Weight, ChartStyle.Curve)),
            .. CuttingLoss(answer),
            .. balance.Lines.Where(line => line.Kind == BalanceKind.NamedPart).Select(line => (line.Name, line.Weight.Likely, ChartStyle.CurveBeyond)),
            .. balance.Lines.Where(line => line.Kind is BalanceKind.Loss or BalanceKind.ByDifference).Select(line => (line.Name, line.Weight.Likely, ChartStyle.Weighed)),
        ];
        string title = "Where the weight goes: " + Numbers.Whole(answer.Return.Birds.Birds) + " birds, " + Text(balance.FullFed, units) + " full-fed";
        string water = balance.Lines.FirstOrDefault(line => line.Kind == BalanceKind.WaterIn) is { } taken ? " and " + Text(taken.Weight.Likely, units) + " of chill water" : "";
        PlotModel plot = ChartStyle.Bare(title, "blue comes back from the plant, red does not" + (water.Length > 0 ? "; the carcass holds" + water[4..] : ""));
        CategoryAxis names = new() { Position = AxisPosition.Left, TickStyle = TickStyle.None, StartPosition = 1, EndPosition = 0, TextColor = ChartStyle.Ink, GapWidth = 0.4 };
        BarSeries series = new() { LabelPlacement = LabelPlacement.Outside, TextColor = ChartStyle.Ink };
        foreach ((string name, Mass weight, OxyColor colour) in bars)
        {
            names.Labels.Add(name + ": " + Text(weight, units) + ", " + Numbers.Fixed(100 * (weight / balance.FullFed), 1) + " %");
            series.Items.Add(new BarItem(units.Of(weight)) { Color = colour });
        }

        plot.Axes.Add(names);
        plot.Axes.Add(ChartStyle.Axis(AxisPosition.Bottom, "weight of the flock, " + units.Weight, double.NaN));
        plot.Series.Add(series);
        plot.PlotMargins = new OxyThickness(300, 16, 30, 62);
        return SvgChart.Of(plot, title, title + water + ". " + string.Join(" ", names.Labels.Select(label => label + ".")));
    }

    private static IEnumerable<(string Name, Mass Weight, OxyColor Colour)> CuttingLoss(CutsAnswer answer)
    {
        double kilograms = answer.Return.Lines.Sum(line => line.CuttingLoss.Kilograms);
        return kilograms > 1e-9 ? [("lost in cutting", Mass.FromKilograms(kilograms), ChartStyle.Weighed)] : [];
    }

    private static string Text(Mass weight, Units units) => units.Text(weight, 1) + " " + units.Weight;
}
