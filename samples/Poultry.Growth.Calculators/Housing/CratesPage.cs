using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Crates as tables, cautions and sources.</summary>
internal static class CratesPage
{
    public static void Print(CratesAnswer answer, Page page)
    {
        HousingUnits units = HousingUnits.Of(page.Units);
        page.Line("Birds of " + page.Units.Text(answer.Loading.Weight, 2) + " " + page.Units.Weight + " in crates of " + Numbers.Fixed(units.Of(answer.Loading.Crate), 3) + " " + units.Floor + ", by " + answer.Loading.Standard);
        if (answer.BirdsPerCrate == 0)
        {
            page.Line("No bird fits into a crate of this floor.");
        }

        page.Title("Crates");
        page.Table(["<", "", "<"], Rows(answer, units));
        if (answer.Limits.Count > 0)
        {
            LimitsTable.Print(page, "Limits on the road", answer.Limits, answer.Keeping);
        }

        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(CratesAnswer answer, HousingUnits units)
    {
        yield return ["birds to a crate", Numbers.Whole(answer.BirdsPerCrate), answer.BirdsPerCrate < answer.Loading.Birds ? "by your rule for hot days" : "as advised, rounded down"];
        yield return ["by the text alone", Numbers.Whole(answer.Loading.BirdsByStandard), answer.Loading.Standard.IsUnverified ? "unverified" : ""];
        if (answer.Loading.AreaPerBird is not null && answer.BirdsPerCrate > 0)
        {
            yield return ["floor of each bird", Numbers.Fixed(units.Of(Area.FromSquareMeters(answer.Loading.Crate.SquareMeters / answer.BirdsPerCrate)), 4), units.Floor];
        }

        if (answer.Loading.HeightNeeded is { } height)
        {
            yield return ["least inner height", Numbers.Fixed(units.Of(height), 1), units.Edge + (answer.HeightMet == false ? ", yours is lower" : answer.HeightMet == true ? ", met" : "")];
        }

        if (answer.Crates is { } crates)
        {
            yield return ["crates for " + Numbers.Whole(answer.Flock!.Value) + " birds", Numbers.Whole(crates), ""];
        }

        if (answer.Loads is { } loads)
        {
            yield return ["loads", Numbers.Whole(loads), ""];
        }
    }
}
