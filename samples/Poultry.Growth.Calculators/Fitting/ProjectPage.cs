using Poultry.Growth.Fitting;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A projection as tables, cautions and sources.</summary>
internal static class ProjectPage
{
    public static void Print(ProjectAnswer answer, Page page)
    {
        page.Line(answer.Reading is { Series: { } series } reading
            ? "Projection of " + reading.File + ": " + series
            : "Projection by the prior alone: no bird of the batch is weighed yet");
        if (answer.Reading is { } passed)
        {
            page.PassedOver(passed);
        }

        page.Line("Prior: " + Prior(answer.Projection.Prior, page));
        page.Line("Spread between birds of one sex: " + Numbers.Percent(answer.Projection.CoefficientOfVariation, 1) + " %");
        ProjectionTables.ByAge(answer.Projections, answer.Calendar, answer.Level, page);
        ProjectionTables.Target(answer.Target, answer.Calendar, answer.Level, page);
        AtTarget(answer, page);
        Birds(answer, page);
        NextWeighIns(answer, page);
        if (answer.Reading is not null)
        {
            Families(answer.Projection, page);
        }

        page.Flagged(answer.Suspicions);
        page.Cautions(answer.Cautions, answer.Beyond);
        page.Sources(answer.Sources);
    }

    private static string Prior(GrowthPrior prior, Page page) => prior.Name + ", " + Codes.Of(prior.Sex) + ": about "
        + page.Units.Text(prior.Centre.WeightAt(UsualAges.EightWeeks), 1) + " " + page.Units.Weight + " at " + UsualAges.EightWeeks;

    private static void AtTarget(ProjectAnswer answer, Page page)
    {
        if (answer.Target is { } target)
        {
            page.Title("At " + page.Units.Text(target.Weight, 2) + " " + page.Units.Weight + " or above");
            page.Table(["age d", "date", "chance of the mean %", "share of the birds %"], answer.Flock.Select(flock => (IReadOnlyList<string>)
            [
                Numbers.Days(flock.Age),
                Numbers.Date(answer.Calendar.DateAt(flock.Age)),
                Numbers.Percent(flock.ChanceAtTarget!.Value.Fraction),
                Numbers.Percent(flock.ShareAtTarget!.Value.Fraction),
            ]));
        }
    }

    private static void Birds(ProjectAnswer answer, Page page)
    {
        string[] bands = [.. answer.BookedDay.Bands.Select(band => Band(band, page.Units))];
        page.Title(bands.Length == 0 ? "Birds by age" : "Birds by age and weight (% of the birds)");
        page.Table(["age d", "within 10 % of mean, %", .. bands], answer.Flock.Select(flock => (IReadOnlyList<string>)
        [
            Numbers.Days(flock.Age), Numbers.Percent(flock.Uniformity.Fraction), .. flock.Bands.Select(band => Numbers.Percent(band.Share.Fraction)),
        ]));
    }

    private static string Band(WeightBand band, Units units)
    {
        string Limit(Mass weight) => units.Text(weight, 2) + " " + units.Weight;
        return band.From is not { } from ? "below " + Limit(band.To!.Value) : band.To is { } to ? units.Text(from, 2) + " to " + Limit(to) : Limit(from) + " or above";
    }

    private static void NextWeighIns(ProjectAnswer answer, Page page)
    {
        if (answer.NextWeighIns.Count > 0)
        {
            string unit = page.Units.Weight;
            string booked = answer.BookedDay.Age.ToString();
            page.Title("Next weigh-in: the mean that it will show, and the width of the interval at " + booked + " that it will leave");
            page.Table(["age d", "birds", "mean " + unit, "low", "high", "width now %", "width then %"], answer.NextWeighIns.Select(next => (IReadOnlyList<string>)
            [
                Numbers.Days(next.Worth.Age),
                Numbers.Whole(next.Worth.Birds),
                page.Units.Text(next.Mean.Value, 2),
                page.Units.Text(next.Mean.Interval.Low, 2),
                page.Units.Text(next.Mean.Interval.High, 2),
                Numbers.Percent(next.Worth.WidthNowFraction),
                Numbers.Percent(next.Worth.WidthThenFraction),
            ]));
        }
    }

    /// <summary>The kinds of curve that count for something; the rest is told as one.</summary>
    private static void Families(Projection projection, Page page)
    {
        const double Least = 0.05;
        FamilyWeight[] told = [.. projection.FamilyWeights.Where(family => family.Prior is not null || family.After.Fraction >= Least)];
        string rest = Numbers.Percent(1 - told.Sum(family => family.After.Fraction));
        page.Title("Kinds of curve (chance of each before the weigh-ins and after)");
        page.Table(["<curve", "before %", "after %"], told.Select(family => (IReadOnlyList<string>)
        [
            family.Prior is { } prior ? prior == projection.Prior ? "Gompertz, as the prior says" : "Gompertz, as the wider prior says" : "shape " + Numbers.Fixed(family.Shape, 1) + ", hardly held",
            Numbers.Percent(family.Before.Fraction),
            Numbers.Percent(family.After.Fraction),
        ]).Append(["others", Numbers.Percent(1 - told.Sum(family => family.Before.Fraction)), rest]));
    }
}
