using System.Globalization;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Head count, differences, indices and what was learned, as tables.</summary>
internal static class ReconcilePage
{
    public static void Print(ReconcileAnswer answer, Page page)
    {
        Reconciliation reconciled = answer.Reconciled;
        page.Line("Reconciliation of " + reconciled.Plan.Name + ": killed " + Numbers.Date(reconciled.Sheet.Killed) + " at " + reconciled.Age);
        page.Line("The forecast knew: " + reconciled.Knew + ".");
        Head(reconciled, page);
        Figures(reconciled, page);
        if (reconciled.Indices is { } indices)
        {
            page.Title("Indices");
            page.Table(["<figure", "value", "<by"], FiguresPage.Rows(indices, page.Units));
        }

        Learned(answer, page);
        page.Flagged(answer.Suspicions);
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static void Head(Reconciliation reconciled, Page page)
    {
        HeadBalance head = reconciled.HeadCount;
        page.Title("Where the birds have gone (placed = all others together)");
        page.Table(["<", "birds", "<"],
        [
            Row("placed", head.Placed),
            Row("dead", head.Dead),
            Row("culled", head.Culled),
            Row("missing", head.Missing),
            Row("dead on arrival", head.DeadOnArrival),
            Row("condemned", head.Condemned, string.Join("; ", reconciled.Sheet.Condemned)),
            Row("kept", head.Kept),
            Row("sold", head.Sold),
            Row("on hand", head.OnHand),
            Row("not accounted for", head.Remainder, head.Remainder == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{head.RemainderOnFarm} on the farm, {head.RemainderAtPlant} at the plant")),
        ]);
    }

    private static void Figures(Reconciliation reconciled, Page page)
    {
        page.Title("Forecast and outcome (" + Numbers.Percent(reconciled.Figures[0].Interval.Level) + " % intervals; a difference is taken apart where that can be done exactly)");
        page.Table(
            ["<", "forecast", "low", "high", "actual", "<", "difference", "<of it"],
            reconciled.Figures.Select(figure => (IReadOnlyList<string>)
            [
                figure.Name + Unit(figure.Unit, page.Units),
                Text(figure.Forecast, figure.Forecast, figure.Unit, page.Units),
                Text(figure.Interval.Low, figure.Forecast, figure.Unit, page.Units),
                Text(figure.Interval.High, figure.Forecast, figure.Unit, page.Units),
                figure.Unit == ReconciledUnit.Birds && figure.Actual is { } birds ? Numbers.Whole(birds) : Text(figure.Actual, figure.Forecast, figure.Unit, page.Units),
                figure.IsInside switch { true => "inside", false => "OUTSIDE", _ => "not measured" },
                Signed(figure.Difference, figure, page.Units),
                Parts(figure, page.Units),
            ]));
    }

    private static string Parts(ReconciledFigure figure, Units units) => figure.Actual is null || figure.Parts.Count == 0
        ? ""
        : string.Join(", ", figure.Parts.Select(part => part.Cause + " " + Signed(part.Difference, figure, units)))
            + (Math.Abs(figure.LeftOpen!.Value) < 0.0005 * Math.Abs(figure.Forecast) ? "" : ", left open " + Signed(figure.LeftOpen, figure, units));

    private static void Learned(ReconcileAnswer answer, Page page)
    {
        page.Title("What the next batch learns");
        if (answer.After is not { } after)
        {
            page.Line("Nothing: name a folder with --history, and the next plan reads it.");
            return;
        }

        page.Line("Added to " + answer.History + ", now " + after + ".");
        page.Table(
            ["<", "before", "low", "high", "now", "low", "high", "own batches"],
            answer.Learned.Select(change => (IReadOnlyList<string>)
            [
                change.Name + Unit(change.Unit, page.Units),
                Text(change.Before, change.Before, change.Unit, page.Units),
                Text(change.BeforeInterval.Low, change.Before, change.Unit, page.Units),
                Text(change.BeforeInterval.High, change.Before, change.Unit, page.Units),
                Text(change.After, change.Before, change.Unit, page.Units),
                Text(change.AfterInterval.Low, change.Before, change.Unit, page.Units),
                Text(change.AfterInterval.High, change.Before, change.Unit, page.Units),
                Numbers.Whole(change.Batches),
            ]));
    }

    private static IReadOnlyList<string> Row(string name, int birds, string detail = "") => [name, Numbers.Whole(birds), detail];

    private static string Unit(ReconciledUnit unit, Units units) => unit switch
    {
        ReconciledUnit.Kilograms => ", " + units.Weight,
        ReconciledUnit.Percent => ", %",
        _ => "",
    };

    /// <summary>With as many digits as the size of the figure bears.</summary>
    private static string Text(double? value, double size, ReconciledUnit unit, Units units) => value is { } known ? Numbers.Fixed(Shown(known, unit, units), Decimals(size, unit)) : "-";

    private static string Signed(double? value, ReconciledFigure figure, Units units) =>
        value is { } known ? Numbers.Signed(Shown(known, figure.Unit, units), Decimals(figure.Forecast, figure.Unit)) : "-";

    private static double Shown(double value, ReconciledUnit unit, Units units) => unit == ReconciledUnit.Kilograms ? units.Of(UnitsNet.Mass.FromKilograms(value)) : value;

    private static int Decimals(double size, ReconciledUnit unit) => unit switch
    {
        ReconciledUnit.Kilograms => size < 20 ? 2 : size < 1000 ? 1 : 0,
        ReconciledUnit.Percent => size < 2 ? 2 : 1,
        ReconciledUnit.Money => 0,
        _ => 1,
    };
}
