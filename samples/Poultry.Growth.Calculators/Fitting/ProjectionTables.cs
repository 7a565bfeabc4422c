using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Weights by age and the age at a weight, by a fit or by a projection.</summary>
internal static class ProjectionTables
{
    private const int MostWeightDecimals = 3;

    public static void ByAge(IReadOnlyList<ProjectedWeight> projections, BatchCalendar calendar, double level, Page page)
    {
        string unit = page.Units.Weight;
        int decimals = projections.Max(projection => Numbers.Decimals(HalfWidth(projection.Mean.Interval, page), MostWeightDecimals));
        page.Title("Weight by age (" + Numbers.Percent(level) + " % intervals)");
        page.Table(["age d", "date", "mean " + unit, "low", "high", "one bird: low", "high"], projections.Select(projection => (IReadOnlyList<string>)
        [
            (projection.Beyond is null ? "" : "* ") + Numbers.Days(projection.Age),
            Numbers.Date(calendar.DateAt(projection.Age)),
            page.Units.Text(projection.Mean.Value, decimals),
            page.Units.Text(projection.Mean.Interval.Low, decimals),
            page.Units.Text(projection.Mean.Interval.High, decimals),
            page.Units.Text(projection.Bird?.Interval.Low, Math.Min(decimals, 2)),
            page.Units.Text(projection.Bird?.Interval.High, Math.Min(decimals, 2)),
        ]));
    }

    public static void Target(WeightTarget? target, BatchCalendar calendar, double level, Page page)
    {
        if (target is null)
        {
            return;
        }

        string weight = page.Units.Text(target.Weight, 2) + " " + page.Units.Weight;
        page.Title("Target");
        if (target.Age is not { } age)
        {
            page.Line(weight + ": " + target.Explanation);
            return;
        }

        string Bound(Age? bound) => Numbers.Bound(bound?.Days, 1);
        string star = target.Beyond is null ? "" : "* ";
        string date = calendar.DateAt(age.Value) is { } day ? ", by " + Numbers.Date(day) : "";
        page.Line(star + "Mean of " + weight + " at " + Numbers.Fixed(age.Value.Days, 1) + " d (" + Numbers.Percent(level) + " %: "
            + Bound(age.Interval.Low) + " to " + Bound(age.Interval.High) + ")" + date);
    }

    private static double HalfWidth(Interval<Mass> interval, Page page) =>
        (page.Units.Of(interval.High!.Value) - page.Units.Of(interval.Low ?? Mass.Zero)) / 2;
}
