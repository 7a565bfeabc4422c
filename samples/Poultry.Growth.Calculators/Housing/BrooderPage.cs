
namespace Poultry.Growth.Calculators.Housing;

/// <summary>Brooding guides side by side.</summary>
internal static class BrooderPage
{
    public static void Print(BrooderAnswer answer, Page page)
    {
        HousingUnits units = HousingUnits.Of(page.Units);
        page.Line(Numbers.Whole(answer.Chicks) + " chicks at " + answer.Age);
        page.Title("Warmth, floor, feeder and drinker for all of them");
        page.Table(
            ["<guide", "from " + units.Degree, "to " + units.Degree, "floor " + units.Floor, "feeder " + units.Edge, "drinker " + units.Edge, "<known"],
            answer.Guides.Select(one => (IReadOnlyList<string>)
            [
                one.Guide.Model.Citations[0].Key,
                one.Stage.Temperature is { } warmth ? Numbers.Fixed(units.Of(warmth.Low), 1) : "-",
                one.Stage.Temperature is { } warm ? Numbers.Fixed(units.Of(warm.High), 1) : "-",
                one.Stage.FloorPerBird is { } floor ? Range(answer.Chicks * units.Of(floor.Least), answer.Chicks * units.Of(floor.Ample)) : "-",
                one.Stage.FeederPerBird is { } feeder ? Range(answer.Chicks * units.Of(feeder.Least), answer.Chicks * units.Of(feeder.Ample)) : "-",
                one.Stage.DrinkerPerBird is { } drinker ? Range(answer.Chicks * units.Of(drinker.Least), answer.Chicks * units.Of(drinker.Ample)) : "-",
                Numbers.Words(one.Guide.Model.HowKnown),
            ]));
        page.Line("Heat lamps of 250 W, while they need warmth: " + Numbers.Whole(answer.Lamps.Fewest) + " to " + Numbers.Whole(answer.Lamps.Most));
        page.Cautions(BrooderAnswer.Cautions);
        page.Sources(answer.Sources);
    }

    private static string Range(double least, double ample) => Numbers.Fixed(least, 1) + (ample > least * 1.0001 ? " to " + Numbers.Fixed(ample, 1) : "");
}
