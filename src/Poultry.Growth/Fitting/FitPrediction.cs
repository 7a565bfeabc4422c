using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>What a fit says about other ages, and how sure that is.</summary>
internal static class FitPrediction
{
    /// <summary>So long after the estimate a bound is looked for; a bird is not kept longer.</summary>
    private const double LongestWaitDays = 1000;

    /// <summary>Bounds of an age are found to this part of a day.</summary>
    private const double RootTolerance = 1e-9;

    /// <summary>
    /// An estimate at an age, with the deviation of what is predicted beside the error of the curve. Under equal variance the interval is
    /// symmetric in kg, and open below where it would reach 0; else in the logarithm: the error is a share of the weight.
    /// </summary>
    public static Estimate<Mass> At(GrowthFit fit, Age age, double level, Func<double, double> deviation)
    {
        (FittedShape shape, FitNumbers numbers) = fit.Found();
        (double kilograms, double relativeError) = shape.At(age.Days) ?? throw new ArgumentOutOfRangeException(
            nameof(age), age.Days, "The fitted law gives no weight above 0 so early.");
        double relative = deviation(kilograms) / kilograms;
        double reach = numbers.Quantile(level) * Math.Sqrt((relativeError * relativeError) + (relative * relative));
        (double low, double high) = Bounds(fit.Errors, kilograms, reach);
        return new Estimate<Mass>(
            Mass.FromKilograms(kilograms),
            Interval<Mass>.Of(low > 0 ? Mass.FromKilograms(low) : null, Mass.FromKilograms(high), level),
            fit.Family.Model,
            FitCautions.At(fit, age.Days));
    }

    /// <summary>Standard deviation in kg of the mean of so many birds about the flock's mean.</summary>
    public static double WeighInDeviation(GrowthFit fit, double kilograms, int birds)
    {
        ErrorModel errors = fit.Errors;
        double sigma = fit.Found().Numbers.Sigma;
        if (errors.IsKnown)
        {
            double spread = errors.BirdSpread(fit.WeighIns);
            return kilograms * Math.Sqrt((spread * spread / birds) + (errors.WeighInError * errors.WeighInError));
        }

        return errors == ErrorModel.EqualVariance
            ? OnlySingleBirds(fit) ? sigma / Math.Sqrt(birds) : sigma
            : kilograms * sigma / Math.Sqrt(birds);
    }

    /// <summary>Standard deviation in kg of one bird about the flock's mean; null where nothing weighed tells it.</summary>
    public static double? BirdDeviation(GrowthFit fit, double kilograms) =>
        fit.Errors != ErrorModel.EqualVariance || OnlySingleBirds(fit)
            ? WeighInDeviation(fit, kilograms, 1)
            : kilograms * fit.WeighIns.PooledCoefficientOfVariation;

    public static Estimate<Age>? AgeAt(GrowthFit fit, Mass weight, double level)
    {
        double target = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        (FittedShape shape, FitNumbers numbers) = fit.Found();
        if (fit.Curve!.AgeAt(weight).Age is not { } age)
        {
            return null;
        }

        double quantile = numbers.Quantile(level);
        LimitLine upper = new(shape, fit.Errors, quantile, target);
        LimitLine lower = new(shape, fit.Errors, -quantile, target);

        // Weights that lie on the curve to the last digit leave no room: there both limits are the age itself, by rounding on either side of it.
        double low = age.Days;
        if (upper.At(0) >= 0)
        {
            low = 0;
        }
        else if (upper.At(age.Days) > 0)
        {
            RootFinding.Bracketed(ref upper, 0, age.Days, RootTolerance, out low);
        }

        double? high = lower.At(age.Days) >= 0 ? age.Days : null;
        for (double days = age.Days; high is null && days < age.Days + LongestWaitDays; days++)
        {
            if (lower.At(days + 1) >= 0 && RootFinding.Bracketed(ref lower, days, days + 1, RootTolerance, out double root))
            {
                high = root;
            }
        }

        Interval<Age> interval = Interval<Age>.Of(Age.FromDays(low), high is { } latest ? Age.FromDays(latest) : null, level);
        return new Estimate<Age>(age, interval, fit.Family.Model, FitCautions.At(fit, age.Days));
    }

    public static IReadOnlyList<FitResidual> Residuals(GrowthFit fit)
    {
        if (fit.Outcome.Shape is not { } shape)
        {
            return [];
        }

        FitResidual[] residuals = new FitResidual[fit.WeighIns.Count];
        for (int i = 0; i < residuals.Length; i++)
        {
            WeighIn weighIn = fit.WeighIns[i];
            double fitted = shape.At(weighIn.AgeDays)!.Value.Kilograms;
            double deviation = WeighInDeviation(fit, fitted, weighIn.BirdsWeighed);
            residuals[i] = new FitResidual(weighIn, fitted, (weighIn.MeanKilograms - fitted) / deviation);
        }

        return residuals;
    }

    private static (double Low, double High) Bounds(ErrorModel errors, double kilograms, double reach) => errors == ErrorModel.EqualVariance
        ? (kilograms * (1 - reach), kilograms * (1 + reach))
        : (kilograms * Math.Exp(-reach), kilograms * Math.Exp(reach));

    private static bool OnlySingleBirds(GrowthFit fit) => fit.WeighIns.All(weighIn => weighIn.Kind == WeighInKind.Birds);

    /// <summary>How far a limit of the mean lies above a weight, in kg.</summary>
    private readonly struct LimitLine(FittedShape shape, ErrorModel errors, double quantile, double target) : IScalarFunction
    {
        public double At(double x)
        {
            if (shape.At(x) is not { } here)
            {
                return -target;
            }

            double reach = Math.Abs(quantile) * here.RelativeError;
            (double low, double high) = Bounds(errors, here.Kilograms, reach);
            return (quantile > 0 ? high : low) - target;
        }
    }
}
