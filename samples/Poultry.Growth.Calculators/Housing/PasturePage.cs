using Poultry.Growth.Housing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>A season on pasture as tables, cautions and sources.</summary>
internal static class PasturePage
{
    public static void Print(PastureAnswer answer, Page page)
    {
        HousingUnits units = HousingUnits.Of(page.Units);
        PasturePlan plan = answer.Plan;
        page.Line(Numbers.Whole(plan.Birds) + " birds in " + Numbers.Whole(plan.Shelters) + " shelter" + (plan.Shelters == 1 ? "" : "s") + " of " + Numbers.Fixed(units.Of(plan.Shelter), 1) + " " + units.Floor
            + ", " + Numbers.Days(plan.From) + " to " + Numbers.Days(plan.To) + " d of age");
        page.Title("Ground");
        page.Table(["<", "", "<"], Ground(answer, units));
        if (answer.Nitrogen is not null)
        {
            page.Title("What stays on the land");
            page.Table(["<", "", "<"], Load(answer, page.Units, units));
        }

        LimitsTable.Print(page, "Limits and advice", answer.Limits, answer.Keeping);
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static IEnumerable<IReadOnlyList<string>> Ground(PastureAnswer answer, HousingUnits units)
    {
        (PasturePlan plan, PastureSeason season) = (answer.Plan, answer.Season);
        yield return ["under the shelter, a bird", Numbers.Fixed(units.Of(plan.Density.AreaPerBird!.Value), 3), units.Floor];
        yield return ["fresh ground a bird in its first day", Numbers.Fixed(units.Of(plan.GroundPerBirdAndDay(plan.From)), 3), units.Floor];
        yield return ["fresh ground a bird in its last day", Numbers.Fixed(units.Of(plan.GroundPerBirdAndDay(plan.To)), 3), units.Floor];
        yield return ["positions of each shelter", Numbers.Whole(plan.Moves.Positions(plan.From, plan.To)), ""];
        yield return ["fresh ground of a bird", Numbers.Fixed(units.Of(plan.GroundPerBird), 2), units.Floor];
        yield return ["fresh ground of the batch", Numbers.Whole(Math.Ceiling(units.Of(plan.GroundPerBatch) - 1e-6)), units.Floor];
        if (season.Batches > 1)
        {
            yield return ["of " + Numbers.Whole(season.Batches) + " batches, every use counted", Numbers.Whole(Math.Ceiling(units.Of(season.GroundPerSeason) - 1e-6)), units.Floor];
        }

        yield return ["land for a rest of " + Numbers.Whole(season.Rest.Days) + " d", Numbers.Whole(Math.Ceiling(units.Of(season.Land) - 1e-6)), units.Floor];
        yield return ["birds on it in the season", Numbers.Whole(units.Floor == "ft2" ? season.BirdsOnLand.BirdsPerAcre : season.BirdsOnLand.BirdsPerHectare), "birds/" + units.Ground];
    }

    private static IEnumerable<IReadOnlyList<string>> Load(PastureAnswer answer, Units weights, HousingUnits units)
    {
        bool us = weights == Units.Us;
        string Small(Mass mass) => Numbers.Fixed(us ? mass.Ounces : mass.Grams, us ? 2 : 1);
        string unit = us ? "oz" : "g";
        if (answer.Nitrogen!.Balance is { } balance)
        {
            yield return ["nitrogen eaten by a bird", Small(balance.Eaten), unit];
            yield return ["nitrogen kept", Small(balance.Retained), unit];
        }

        yield return [answer.Nitrogen.IsSpreadable ? "spreadable nitrogen of a bird" : "nitrogen left by a bird", Small(answer.Nitrogen.Amount), unit];
        if (answer.NitrogenOfPass is { } pass && answer.NitrogenPerYear is { } year)
        {
            yield return ["nitrogen of one pass", Numbers.Whole(units.Of(pass)), units.Load];
            yield return ["nitrogen of the year", Numbers.Whole(units.Of(year)), units.Load + (answer.Limit is { } limit ? year > limit ? ", above your limit" : ", within your limit" : "")];
        }

        if (answer.PhosphorusOfPass is { } mineral)
        {
            yield return ["phosphorus of one pass", Numbers.Whole(units.Of(mineral)), units.Load];
        }

        if (answer.BirdsPerHectareAndYear is { } birds)
        {
            yield return ["most birds a year under your limit", Numbers.Whole(Math.Floor(us ? birds / 2.4710538 : birds)), "birds/" + units.Ground];
            if (birds > 0)
            {
                yield return ["land of each", Numbers.Fixed(units.Of(Area.FromSquareMeters(10_000.0 / birds)), 2), units.Floor];
            }
        }
    }
}
