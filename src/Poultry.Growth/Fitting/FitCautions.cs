using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>What a reader of a fit must mind.</summary>
internal static class FitCautions
{
    private const double Level = 0.95;

    /// <summary>Scatter so unlikely by chance is no chance.</summary>
    private const double Unlikely = 0.01;

    /// <summary>Nothing weighed shows how far birds lie apart.</summary>
    public static Caution SpreadAssumed => new("spread-assumed", string.Create(
        CultureInfo.InvariantCulture,
        $"No single birds and no standard deviations were given: a spread of {100 * ErrorModel.AssumedCoefficientOfVariation:0} % between birds is assumed."));

    public static IReadOnlyList<Caution> Of(GrowthFit fit)
    {
        List<Caution> cautions = [];
        if (fit.Outcome is not { Shape: { } shape, Numbers: { } numbers })
        {
            return cautions;
        }

        AboutMatureWeight(fit, cautions);
        if (numbers.DegreesOfFreedom < 1 + shape.Free && !fit.Errors.IsKnown)
        {
            cautions.Add(new("few-weigh-ins", string.Create(
                CultureInfo.InvariantCulture,
                $"Only {CountText.Of((long)numbers.DegreesOfFreedom, "observation")} more than parameters: how well the curve fits can hardly be judged.")));
        }

        if (fit.Errors is { IsKnown: true, CoefficientOfVariation: null } && fit.WeighIns.PooledCoefficientOfVariation is null)
        {
            cautions.Add(SpreadAssumed);
        }

        if (ScatterChance(fit, numbers, shape) is { } chance and < Unlikely)
        {
            cautions.Add(new("weigh-ins-scatter", string.Create(
                CultureInfo.InvariantCulture,
                $"The means lie further from the curve than the birds' own spread explains (chance {chance:0.0E+0}): weigh-ins have an error of their own (scale, place, time of day) or the curve is wrong. Intervals are too narrow; use known sampling error with an error of the weigh-in.")));
        }

        return cautions;
    }

    public static IReadOnlyList<Caution> At(GrowthFit fit, double days)
    {
        double last = fit.WeighIns[^1].AgeDays;
        return days <= last ? fit.Cautions : [.. fit.Cautions, BeyondLastWeighIn(fit, last)];
    }

    private static Caution BeyondLastWeighIn(GrowthFit fit, double last) => new("beyond-last-weigh-in", string.Create(
        CultureInfo.InvariantCulture,
        $"Beyond the last weigh-in ({last:0.##} d) this assumes that the {fit.Family.Model.Name} is exactly right: the interval is too narrow. Plan with a projection (Projection, or the command project)."));

    private static void AboutMatureWeight(GrowthFit fit, List<Caution> cautions)
    {
        double mature = fit.Parameters[0].Value;
        double heaviest = fit.WeighIns.Max(weighIn => weighIn.MeanKilograms);
        bool doubtful = fit.Parameters[0].StandardError > 0.15 * mature && FitProfile.MatureWeightIsUnbounded(fit, Level);
        if (doubtful)
        {
            cautions.Add(new("mature-weight-unbounded", string.Create(
                CultureInfo.InvariantCulture,
                $"The weights hardly bend: growth without any mature weight fits them within {100 * Level:0} % limits. The {WeightText.Of(mature)} of the curve mean nothing, and neither does a long projection.")));
        }
        else if (mature > 1.2 * heaviest)
        {
            cautions.Add(new("mature-weight-extrapolated", string.Create(
                CultureInfo.InvariantCulture,
                $"The mature weight of {WeightText.Of(mature)} is where this curve tends to, far beyond the heaviest mean weighed, {WeightText.Of(heaviest)}; it is no measurement.")));
        }
    }

    /// <summary>
    /// The chance of means so far from the curve, given how far birds lie apart: an F test of lack of fit where birds were weighed singly or
    /// with SD, a chi-square test where the scatter is known; null where neither can be made, as where all birds of a weigh-in weigh the same.
    /// </summary>
    private static double? ScatterChance(GrowthFit fit, FitNumbers numbers, FittedShape shape)
    {
        double between = 0;
        double within = 0;
        double birdsToSpare = 0;
        foreach (WeighIn weighIn in fit.WeighIns)
        {
            double fitted = shape.At(weighIn.AgeDays)!.Value.Kilograms;
            double off = (weighIn.MeanKilograms / fitted) - 1;
            between += weighIn.BirdsWeighed * off * off;
            double spread = (weighIn.StandardDeviationKilograms ?? 0) / fitted;
            within += (weighIn.BirdsWeighed - 1) * spread * spread;
            birdsToSpare += weighIn.StandardDeviationKilograms is null ? 0 : weighIn.BirdsWeighed - 1;
        }

        double spare = fit.WeighIns.Count - shape.Free;
        if (spare < 1 || fit.Errors == ErrorModel.EqualVariance)
        {
            return null;
        }

        if (fit.Errors.IsKnown)
        {
            return Distributions.ChiSquareUpperTail(numbers.Scatter, spare);
        }

        return birdsToSpare >= 5 && within > 0 ? Distributions.FUpperTail(between / spare / (within / birdsToSpare), spare, birdsToSpare) : null;
    }
}
