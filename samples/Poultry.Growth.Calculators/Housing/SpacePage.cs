using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>A floor as tables, cautions and sources.</summary>
internal static class SpacePage
{
    public static void Print(SpaceAnswer answer, Page page)
    {
        HousingUnits units = HousingUnits.Of(page.Units);
        SpaceQuestion question = answer.Question;
        page.Line("Floor of " + Numbers.Fixed(units.Of(question.Floor), 1) + " " + units.Floor + ", birds leave at " + page.Units.Text(question.Weight, 2) + " " + page.Units.Weight
            + (question.Age is { } age ? ", " + age : ""));
        page.Title("Room");
        page.Table(["<", "", "<"], Room(answer, page.Units, units));
        if (answer.ByAge.Count > 0)
        {
            page.Title("By age (" + (question.Mortality is null ? "no bird dies" : "birds die as expected") + ")");
            ByAge(answer, page, units);
            page.Line(answer.Reached is { } reached
                ? (reached.IsFromTheStart ? "Passed from the start" : "Passed after " + reached.Age) + ": " + units.Of(reached.Limit.Limit) + " of " + reached.Limit.Limit.Instrument.Name + "."
                : "No binding limit is passed before " + question.Age + ".");
        }

        LimitsTable.Print(page, "Limits on space", answer.Verdict.Limits, question.Keeping);
        if (answer.FormLimits.Any(verdict => verdict.Binds || verdict.IsChosen))
        {
            LimitsTable.Print(page, "Limits on flock, house, run and age", answer.FormLimits, question.Keeping);
        }

        Equipment(answer, page, units);
        page.Flagged(question.Suspicions);
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static IEnumerable<IReadOnlyList<string>> Room(SpaceAnswer answer, Units weights, HousingUnits units)
    {
        StockingVerdict verdict = answer.Verdict;
        if (answer.Question.Birds is { } birds)
        {
            yield return ["density of " + Numbers.Whole(birds) + " birds when they leave", Numbers.Fixed(units.Of(verdict.Density), 2), units.Density];
            yield return ["floor of each bird", Numbers.Fixed(units.Of(verdict.BirdDensity.AreaPerBird!.Value), 3), units.Floor];
        }

        if (verdict.BirdsAtLimit is not { } most)
        {
            yield return ["birds at the limit", "unknown", "no limit is known to bind: give --limit, --standard, or --country with --system and --birds"];
            yield break;
        }

        yield return ["birds at the limit", Numbers.Whole(most), "by " + units.Of(verdict.Binding!.Limit) + ", " + verdict.Binding.Limit.Instrument.Name + (verdict.Binding.Limit.IsUnverified ? ", unverified" : "")];
        yield return ["chicks to place, safe if none dies", Numbers.Whole(most), ""];
        if (answer.Chicks is { } chicks)
        {
            yield return ["chicks if deaths are as expected", Numbers.Whole(chicks.AsExpected), "too many birds with a chance of " + Numbers.Percent(chicks.ChanceOfTooMany.Fraction) + " %"];
            yield return ["chicks for a chance of " + Numbers.Percent(answer.Question.Risk.Fraction, 0) + " %", Numbers.Whole(chicks.AtChance(answer.Question.Risk)), ""];
        }

        if (verdict.BirdsTooMany > 0)
        {
            yield return ["birds too many when they leave, if none dies", Numbers.Whole(verdict.BirdsTooMany), "to place fewer, or to take out before"];
        }

        if (answer.MortalityLimitPercent is { } percent && answer.Verdict.Limits.Any(verdict => verdict.Limit.Requires == "annex-v" && verdict.Applies != Applicability.No && answer.Question.Keeping.Place is not null))
        {
            yield return ["EU mortality limit for its highest step", Numbers.Fixed(percent, 2), "%, sum of daily rates, strictly below"];
        }
    }

    private static void ByAge(SpaceAnswer answer, Page page, HousingUnits units) => page.Table(
        ["age d", "birds", "mean " + page.Units.Weight, "density " + units.Density, units.Floor + " a bird", "birds at limit", "<binding limit", "days left", "chance over %"],
        answer.ByAge.Select(row => (IReadOnlyList<string>)
        [
            Numbers.Days(row.At.Age),
            Numbers.Whole(row.At.Verdict.Birds),
            Numbers.Fixed(page.Units.Of(row.At.Verdict.Weight), 2),
            Numbers.Fixed(units.Of(row.At.Verdict.Density), 2),
            Numbers.Fixed(units.Of(row.At.Verdict.BirdDensity.AreaPerBird!.Value), 3),
            row.At.Verdict.BirdsAtLimit is { } most ? Numbers.Whole(most) : "-",
            row.At.Verdict.Binding is { } binding ? units.Of(binding.Limit) : "none known",
            answer.Reached is { } reached ? Numbers.Fixed(Math.Max(0, (reached.Age - row.At.Age).Days), 1) : "-",
            row.ChanceOver is { } chance ? Numbers.Percent(chance.Fraction) : "-",
        ]));

    private static void Equipment(SpaceAnswer answer, Page page, HousingUnits units)
    {
        EquipmentNeed[] needs = [.. answer.Equipment.Where(need => need.Verdict.Applies == Applicability.Yes || need.Verdict.IsChosen)];
        if (needs.Length == 0)
        {
            return;
        }

        page.Title("Feeders, drinkers and air that these texts ask for");
        page.Table(["<item", "amount", "<unit", "<text"], needs.Select(need => (IReadOnlyList<string>)
        [
            need.Item,
            need.Edge is { } edge ? Numbers.Whole(Math.Ceiling(units.Of(edge) - 1e-9)) : need.Pieces is { } pieces ? Numbers.Whole(pieces) : Numbers.Whole(units.Of(need.AirCapacity!.Value)),
            need.Edge is not null ? units.Edge : need.Pieces is not null ? "pieces" : units.AirFlow,
            need.Verdict.Limit.Instrument.Name + ", " + need.Verdict.Limit.Scope + (need.Verdict.Limit.IsUnverified ? " (unverified)" : ""),
        ]));
    }
}
