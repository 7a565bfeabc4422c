
namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Heat as lines, a table, cautions and sources.</summary>
internal static class HeatPage
{
    public static void Print(HeatAnswer answer, Page page)
    {
        page.Line("Air " + page.Units.Text(answer.DryBulb, 1) + ", wet bulb " + page.Units.Text(answer.WetBulb, 1) + (answer.FromHumidity ? " (from humidity)" : ""));
        page.Title("How hot it is for the birds");
        page.Line("Temperature and humidity (THI): " + page.Units.Text(answer.Thi, 1));
        page.Line("With moving air (THVI): " + (answer.Thvi is { } thvi ? page.Units.Text(thvi, 1) : answer.Wind is null ? "needs --wind" : "no value here"));
        if (answer.GivenOff is { } heat)
        {
            page.Line("One bird of " + page.Units.Text(answer.Weight, 2) + " " + page.Units.Weight + " gives off " + Numbers.Fixed((double)heat.Total.Watts, 1) + " W and "
                + Numbers.Fixed(heat.Moisture.GramsPerHour, 1) + " g of water an hour");
        }

        if (answer.Comfort.Count > 0)
        {
            page.Title("Comfortable, as sources say");
            page.Table(["<source", "temperature"], answer.Comfort.Select(comfort => (IReadOnlyList<string>)[comfort.Source, page.Units.Text(comfort.Comfortable, 1)]));
        }

        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }
}
