using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The need of a bird as tables, cautions and sources.</summary>
internal static class EnergyPage
{
    public static void Print(EnergyAnswer answer, Page page)
    {
        string level = Numbers.Percent(answer.Question.Level) + " %: ";
        page.Line(Codes.Of(answer.Question.Sex) + ", " + page.Units.Text(answer.Question.Weight, 2) + " " + page.Units.Weight + ", gaining " + page.Units.DailyText(Day(answer.Question.Gain))
            + " " + page.Units.DailyWeight + " a day, at " + page.Units.Text(answer.Temperature, 0) + ", feed of " + Diet(answer.Diet, page.Units));
        page.Line("By " + EnergyModels.NameOf(answer.Need.Model) + ": " + Numbers.Whole(Kilocalories.PerDay(answer.Need.Total)) + " kcal a day, feed " + page.Units.DailyText(answer.Feed.Value) + " "
            + page.Units.DailyWeight + " (" + level + page.Units.DailyText(answer.Feed.Interval.Low) + " to " + page.Units.DailyText(answer.Feed.Interval.High) + ")");
        page.Title("By model (kcal a bird a day)");
        page.Table(["<model", "heat or maintenance", "temperature", "gain", "all", "feed " + page.Units.DailyWeight, "low", "high"], answer.ByModel.Select(need => (IReadOnlyList<string>)
        [
            (need.Model == answer.Need.Model ? "> " : "") + EnergyModels.NameOf(need.Model),
            Numbers.Whole(Kilocalories.PerDay(need.Maintenance)),
            Term(need),
            Numbers.Whole(Kilocalories.PerDay(need.Gain)),
            Numbers.Whole(Kilocalories.PerDay(need.Total)),
            .. Feed(need.FeedPerDay(answer.Diet, answer.Question.Level), page.Units),
        ]));
        page.Line("> the model asked for. Heat holds all that a fed bird gives off, growth included; maintenance does not: compare the sums, not the parts.");
        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static string[] Feed(Estimate<UnitsNet.Mass> feed, Units units) =>
        [units.DailyText(feed.Value), units.DailyText(feed.Interval.Low), units.DailyText(feed.Interval.High)];

    private static string Diet(UnitsNet.SpecificEnergy energy, Units units) => Numbers.Whole(Kilocalories.PerUnit(energy, units)) + " kcal/" + units.Weight;

    private static UnitsNet.Mass Day(UnitsNet.MassFlow rate) => UnitsNet.Mass.FromGrams(rate.GramsPerDay);

    private static string Term(EnergyNeed need) =>
        Kilocalories.PerDay(need.TemperatureTerm) is var term && term != 0 ? Numbers.Signed(term, 0) : "-";
}
