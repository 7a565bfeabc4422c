using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>A fitted curve in the coordinates of the fit, with its errors, in plain numbers.</summary>
public sealed class FittedCurveRecord
{
    /// <summary>Origin of the coordinates in days.</summary>
    public required double OriginDays { get; init; }

    /// <summary>Logarithm of the scale of the curve in kg.</summary>
    public required double LogScale { get; init; }

    /// <summary>The family's coordinates, in the order in which the family is fitted.</summary>
    public required IReadOnlyList<double> Coordinates { get; init; }

    /// <summary>Covariance of the free coordinates, row by row.</summary>
    public required IReadOnlyList<double> Covariance { get; init; }

    /// <summary>Statistical weight of each weigh-in at the optimum.</summary>
    public required IReadOnlyList<double> Weights { get; init; }

    /// <summary>The objective at the optimum.</summary>
    public required double LeastSum { get; init; }

    /// <summary>Weighted squares about the curve: kg² for equal variance, else a pure number.</summary>
    public required double Scatter { get; init; }

    /// <summary>Number of observations.</summary>
    public required double Observations { get; init; }

    /// <summary>Degrees of freedom; null where the scatter is known beforehand.</summary>
    public required double? DegreesOfFreedom { get; init; }

    /// <summary>Log-likelihood of weights in kg.</summary>
    public required double LogLikelihood { get; init; }

    /// <summary>Corrected Akaike criterion; null where there are too few observations.</summary>
    public required double? Aicc { get; init; }

    /// <summary>Certificate of the optimum.</summary>
    public required double Certificate { get; init; }

    internal static FittedCurveRecord Of(FitOutcome outcome)
    {
        (FittedShape shape, FitNumbers numbers) = (outcome.Shape!, outcome.Numbers!);
        return new FittedCurveRecord
        {
            OriginDays = shape.Origin,
            LogScale = shape.LogScale,
            Coordinates = [.. shape.Coordinates],
            Covariance = [.. shape.Covariance],
            Weights = [.. outcome.Weights],
            LeastSum = numbers.LeastSum,
            Scatter = numbers.Scatter,
            Observations = numbers.Observations,
            DegreesOfFreedom = double.IsInfinity(numbers.DegreesOfFreedom) ? null : numbers.DegreesOfFreedom,
            LogLikelihood = numbers.LogLikelihood,
            Aicc = numbers.Aicc,
            Certificate = numbers.Certificate,
        };
    }

    internal FitOutcome Restore(CurveFamily family, double hatchKilograms, int weighIns)
    {
        int free = FittedShape.FreeCoordinates(family.Shape, hatchKilograms);
        Require.SameLength(family.Shape.Count, Coordinates.Count);
        Require.SameLength(free * free, Covariance.Count);
        Require.SameLength(weighIns, Weights.Count);
        FitNumbers numbers = new()
        {
            LeastSum = LeastSum,
            Scatter = Scatter,
            Observations = Observations,
            DegreesOfFreedom = DegreesOfFreedom ?? double.PositiveInfinity,
            LogLikelihood = LogLikelihood,
            Aicc = Aicc,
            Certificate = Certificate,
        };
        FittedShape shape = new(family, OriginDays, hatchKilograms, LogScale, [.. Coordinates], [.. Covariance]);
        return FitOutcome.Found(shape, numbers, [.. Weights]);
    }
}
