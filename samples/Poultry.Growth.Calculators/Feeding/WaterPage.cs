
namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Water as a table, cautions and sources.</summary>
internal static class WaterPage
{
    public static void Print(WaterAnswer answer, Page page)
    {
        string Litres(UnitsNet.MassFlow rate) => Numbers.Fixed(page.Units.OfLitres(answer.Birds * rate.KilogramsPerDay), 1);
        page.Line("Water of " + Numbers.Whole(answer.Birds) + (answer.Birds == 1 ? " bird" : " birds") + (answer.Age is { } age ? " at " + age : "") + ", " + page.Units.Text(answer.Temperature, 0));
        page.Title("By source (low and high are the range of the source, no chance)");
        page.Table(["<source", "mL a bird a day", page.Units.Volume + " a day", "low", "high"], answer.ByModel.Select(model => (IReadOnlyList<string>)
        [
            model.Name, Numbers.Whole(model.Amount.PerBird.GramsPerDay), Litres(model.Amount.PerBird), Litres(model.Amount.Low), Litres(model.Amount.High),
        ]));
        if (answer.NippleFlow is { } flow)
        {
            page.Line("Flow of a nipple drinker at this age: " + Numbers.Whole(flow.MillilitersPerMinute) + " mL a minute");
        }

        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }
}
