using System.Globalization;
using System.Text;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;
using UnitsNet.Units;

namespace Poultry.Growth.Fitting;

/// <summary>A fit as text: one that a scientist accepts and a grower can read. It ends its lines with a line feed and is the same in every culture.</summary>
internal static class FitReport
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    public static string Text(GrowthFit fit, MassUnit unit, double level)
    {
        StringBuilder text = new();
        text.Append(fit.Family.Model.Name + ", " + fit.Errors.Description + "\n");
        text.Append(fit.WeighIns + "\n");
        text.Append(fit.Status + ": " + fit.Reason + "\n");
        if (fit.Curve is not null)
        {
            text.Append('\n');
            Parameters(text, fit, unit, level);
            text.Append('\n');
            Judgement(text, fit, unit);
            text.Append('\n');
            Residuals(text, fit, unit);
        }
        else if (fit.Exponential is { } exponential)
        {
            text.Append(Invariant, $"Exponential growth from {Weight(exponential.HatchWeight, unit)} at hatch by {exponential.Rate.PercentPerDay:0.00} % a day.\n");
        }

        foreach (Caution caution in fit.Cautions)
        {
            text.Append("\nCaution: " + caution.Text + "\n");
        }

        return text.ToString();
    }

    private static void Parameters(StringBuilder text, GrowthFit fit, MassUnit unit, double level)
    {
        // With a given hatch weight there are no profile limits.
        IReadOnlyList<Interval<double>>? limits = fit.HatchWeight is null ? fit.ProfileLimits(level) : null;
        string title = limits is null ? "" : string.Create(Invariant, $"{100 * level:0.#} % limits");
        text.Append(Invariant, $"{"",-15}{"estimate",11}{"std. error",12}{title,21}\n");
        for (int i = 0; i < fit.Parameters.Count; i++)
        {
            FittedParameter fitted = fit.Parameters[i];
            bool isWeight = fitted.Parameter.Unit == "kg";
            double factor = isWeight ? Mass.FromKilograms(1).As(unit) : 1;
            string range = limits is null ? "" : Number(limits[i].Low * factor) + " to " + Number(limits[i].High * factor);
            string label = isWeight ? Label(unit) : fitted.Parameter.Unit == "-" ? "" : fitted.Parameter.Unit;
            string line = string.Create(Invariant, $"{fitted.Parameter.Name,-15}{Number(factor * fitted.Value),11}{Number(factor * fitted.StandardError),12}{range,21}  {label}");
            text.Append(line.TrimEnd() + "\n");
        }
    }

    private static void Judgement(StringBuilder text, GrowthFit fit, MassUnit unit)
    {
        string scatter = fit.Errors.IsKnown ? "known beforehand"
            : fit.Errors == ErrorModel.EqualVariance ? Weight(Mass.FromKilograms(fit.ResidualStandardDeviation), unit)
            : string.Create(Invariant, $"{100 * fit.ResidualStandardDeviation:0.0} % of the weight of one bird");
        string freedom = fit.Errors.IsKnown ? "" : string.Create(Invariant, $", {fit.DegreesOfFreedom:0} degrees of freedom");
        string aicc = fit.Aicc is { } criterion ? string.Create(Invariant, $", AICc {criterion:0.00}") : "";
        text.Append(Invariant, $"scatter {scatter}; {fit.Observations:0} observations{freedom}\n");
        text.Append(Invariant, $"log-likelihood {fit.LogLikelihood:0.00} (weights in kg){aicc}\n");
    }

    private static void Residuals(StringBuilder text, GrowthFit fit, MassUnit unit)
    {
        text.Append(Invariant, $"{"age",8}{"birds",7}{"weighed",11}{"fitted",11}{"off",9}\n");
        foreach (FitResidual residual in fit.Residuals())
        {
            double percent = 100 * residual.Difference.Kilograms / residual.Fitted.Kilograms;
            string weighed = Weight(residual.WeighIn.MeanWeight, unit);
            text.Append(Invariant, $"{residual.WeighIn.Age.ToString(),8}{residual.WeighIn.BirdsWeighed,7}{weighed,11}{Weight(residual.Fitted, unit),11}{percent,7:+0.0;-0.0;0.0} %\n");
        }
    }

    private static string Weight(Mass weight, MassUnit unit) => string.Create(Invariant, $"{weight.As(unit):0.000} {Label(unit)}");

    private static string Number(double? value) => value is { } number ? number.ToString("G4", Invariant) : "open";

    private static string Label(MassUnit unit) => unit switch
    {
        MassUnit.Kilogram => "kg",
        MassUnit.Gram => "g",
        MassUnit.Pound => "lb",
        MassUnit.Ounce => "oz",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Reports are written in kg, g, lb or oz."),
    };
}
