using Poultry.Growth.Housing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Air as tables, cautions and sources.</summary>
internal static class AirPage
{
    public static void Print(AirAnswer answer, Page page)
    {
        HousingUnits units = HousingUnits.Of(page.Units);
        page.Line(Numbers.Whole(answer.Birds) + " birds of " + page.Units.Text(answer.Weight, 2) + " " + page.Units.Weight);
        page.Title("Air");
        page.Table(["<", "", "<"], Rows(answer, units, page.Units));
        LimitsTable.Print(page, "Limits on air, light and dark", answer.Limits, answer.Keeping);
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(AirAnswer answer, HousingUnits units, Units weights)
    {
        yield return ["least ventilation by weight", Numbers.Whole(Math.Ceiling(units.Of(answer.MinimumByWeight))), units.AirFlow];
        yield return ["ventilation by carbon dioxide", answer.Ventilation is { } flow ? Numbers.Whole(Math.Ceiling(units.Of(flow))) : "-", answer.Ventilation is null ? "give --inside-co2 and --outside-co2" : units.AirFlow];
        yield return ["carbon dioxide given off", Numbers.Fixed(units.Of(answer.CarbonDioxideGiven), 2), units.AirFlow];
        if (answer.Given is { } given)
        {
            yield return ["heat of the birds", Numbers.Fixed(answer.Birds * (double)given.Total.Kilowatts, 2), "kW"];
            yield return ["moisture of the birds", Numbers.Fixed(weights.Of(Mass.FromKilograms(answer.Birds * given.Moisture.KilogramsPerHour)), 2), weights.Weight + "/h, unverified"];
        }

        foreach (EquipmentNeed need in answer.Capacity.Where(need => need.Verdict.Applies == Applicability.Yes))
        {
            yield return ["air that must be movable", Numbers.Whole(Math.Ceiling(units.Of(need.AirCapacity!.Value) - 1e-9)), units.AirFlow + " by " + need.Verdict.Limit.Instrument.Name];
        }
    }
}
