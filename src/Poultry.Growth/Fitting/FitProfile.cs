using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>Profile limits of a fit's parameters.</summary>
internal static class FitProfile
{
    /// <summary>Scatter below this share of the weights is rounding: no scale weighs so well.</summary>
    private const double RoundingShare = 1e-6;

    public static Interval<double>[] Limits(GrowthFit fit, double level)
    {
        (FittedShape shape, FitNumbers numbers) = fit.Found();
        if (fit.HatchWeight is not null)
        {
            throw new InvalidOperationException("Profile limits are not available with a given hatch weight; use the standard errors.");
        }

        FitData data = Data(fit, new WeighInColumns(fit.WeighIns, fit.Errors));
        double cut = numbers.ProfileCut(data.Scale, level);
        double limitSum = LeastSumWithoutMatureWeight(shape, data);
        double quantile = numbers.Quantile(level);
        bool exact = IsExact(fit, numbers);
        Interval<double>[] limits = new Interval<double>[fit.Parameters.Count];
        for (int i = 0; i < limits.Length; i++)
        {
            FittedParameter parameter = fit.Parameters[i];
            (double? low, double? high) = exact ? (parameter.Value, parameter.Value) : ProfileSearch.Limits(shape, data, i, parameter.Value, quantile * parameter.StandardError, cut, limitSum);
            limits[i] = Interval<double>.Of(low, high, level);
        }

        return limits;
    }

    /// <summary>Whether growth without any mature weight lies inside the limits: then nothing bounds the mature weight from above.</summary>
    public static bool MatureWeightIsUnbounded(GrowthFit fit, double level)
    {
        (FittedShape shape, FitNumbers numbers) = fit.Found();
        FitData data = Data(fit, new WeighInColumns(fit.WeighIns, fit.Errors));
        return LeastSumWithoutMatureWeight(shape, data) < numbers.ProfileCut(data.Scale, level);
    }

    /// <summary>Whether the scatter is rounding: then a profile rises out of noise, and every limit is the estimate itself.</summary>
    private static bool IsExact(GrowthFit fit, FitNumbers numbers)
    {
        double size = fit.Errors == ErrorModel.EqualVariance ? fit.WeighIns.Max(weighIn => weighIn.MeanKilograms) : 1;
        return !fit.Errors.IsKnown && numbers.Sigma <= RoundingShare * size;
    }

    private static FitData Data(GrowthFit fit, WeighInColumns columns)
    {
        double[] weights = new double[columns.Data.Count];
        fit.Outcome.Weights.CopyTo(weights, 0);
        return columns.Data with { Weights = weights };
    }

    private static double LeastSumWithoutMatureWeight(FittedShape fit, in FitData data)
    {
        CurveShape shape = fit.Family.Shape;
        double[] q = [.. fit.Coordinates];
        double[] workspace = new double[ShapeFit.WorkspaceLength(data.Count, shape)];
        HeldValue limit = HeldValue.Only(fit.HatchKilograms).And(shape, CurveShape.NoMatureWeight);
        return ShapeFit.Improve(data, shape, limit, q, workspace).SumOfSquares;
    }
}
