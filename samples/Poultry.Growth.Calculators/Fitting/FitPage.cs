using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A fit as tables, cautions and sources.</summary>
internal static class FitPage
{
    private const int MostWeightDecimals = 3;

    public static void Print(FitAnswer answer, Page page)
    {
        GrowthFit fit = answer.Fit;
        page.Line(fit.Family.Model.Name + " of " + answer.Reading.File + ": " + fit.WeighIns);
        page.PassedOver(answer.Reading);
        page.Line("Scatter: " + fit.Errors.Description);
        if (fit.Curve is null)
        {
            page.Line("No curve (" + Codes.Of(fit.Status) + "): " + fit.Reason);
            Exponential(fit.Exponential, page);
        }
        else
        {
            page.Line("Found: " + Scatter(fit, page));
            Parameters(answer, page);
            WeighIns(answer, page);
            ProjectionTables.ByAge(answer.Projections, answer.Calendar, answer.Level, page);
            ProjectionTables.Target(answer.Target, answer.Calendar, answer.Level, page);
        }

        ComparisonTable.Print(answer, page);
        page.Flagged(answer.Reading.Suspicions);
        page.Cautions(answer.Cautions, answer.Beyond is { } beyond ? [beyond] : []);
        page.Sources(answer.Sources);
    }

    private static string Scatter(GrowthFit fit, Page page)
    {
        string observations = Numbers.Whole(fit.Observations) + " observations";
        if (double.IsInfinity(fit.DegreesOfFreedom))
        {
            return observations + ", scatter taken as known";
        }

        string scatter = fit.Errors == ErrorModel.EqualVariance
            ? Numbers.Fixed(page.Units.OfKilograms(fit.ResidualStandardDeviation), MostWeightDecimals) + " " + page.Units.Weight
            : Numbers.Percent(fit.ResidualStandardDeviation, 1) + " % of the weight of a bird";
        return "SD about the curve " + scatter + "; " + observations + ", " + Numbers.Whole(fit.DegreesOfFreedom) + " degrees of freedom";
    }

    private static void Exponential(ExponentialCurve? curve, Page page)
    {
        if (curve is not null)
        {
            page.Line("What the weights support: " + Numbers.Fixed(page.Units.Of(curve.HatchWeight), MostWeightDecimals) + " " + page.Units.Weight
                + " at hatch, growing " + Numbers.Fixed(curve.Rate.PercentPerDay, 2) + " % a day.");
        }
    }

    private static void Parameters(FitAnswer answer, Page page)
    {
        string limits = Numbers.Percent(answer.Level) + " % limits";
        page.Title("Parameters (" + (answer.Limits is null ? "no limits" : limits + " by profile") + ")");
        page.Table(["<parameter", "estimate", "std. error", "low", "high", "<unit"], answer.Fit.Parameters.Select((fitted, at) =>
        {
            bool isWeight = fitted.Parameter.Unit == "kg";
            double Shown(double value) => isWeight ? page.Units.OfKilograms(value) : value;
            int decimals = Numbers.Decimals(Shown(fitted.StandardError), most: 6);
            string Limit(double? bound) => answer.Limits is null ? "-" : Numbers.Bound(bound is { } value ? Shown(value) : null, decimals);
            Interval<double>? interval = answer.Limits?[at];
            return (IReadOnlyList<string>)
            [
                fitted.Parameter.Name,
                Numbers.Fixed(Shown(fitted.Value), decimals),
                Numbers.Fixed(Shown(fitted.StandardError), decimals),
                Limit(interval?.Low),
                Limit(interval?.High),
                isWeight ? page.Units.Weight : fitted.Parameter.Unit,
            ];
        }));
    }

    private static void WeighIns(FitAnswer answer, Page page)
    {
        string unit = page.Units.Weight;
        page.Title("Weigh-ins and the curve");
        page.Table(["age d", "date", "birds", "weighed " + unit, "curve " + unit, "off %"], answer.Fit.Residuals().Select(residual => (IReadOnlyList<string>)
        [
            Numbers.Days(residual.WeighIn.Age),
            Numbers.Date(answer.Calendar.DateAt(residual.WeighIn.Age)),
            Numbers.Whole(residual.WeighIn.BirdsWeighed),
            page.Units.Text(residual.WeighIn.MeanWeight, MostWeightDecimals),
            page.Units.Text(residual.Fitted, MostWeightDecimals),
            Numbers.Signed(100 * residual.Difference.Kilograms / residual.Fitted.Kilograms),
        ]));
    }
}
