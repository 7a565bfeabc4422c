using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>The figures by which a fit is judged.</summary>
internal sealed class FitNumbers
{
    /// <summary>The objective at the optimum: the sum of squares that was made least.</summary>
    public required double LeastSum { get; init; }

    /// <summary>Weighted squares of all observations about the curve: kg² for equal variance, a pure number else.</summary>
    public required double Scatter { get; init; }

    public required double Observations { get; init; }

    /// <summary>Infinite where the scatter is known beforehand.</summary>
    public required double DegreesOfFreedom { get; init; }

    public required double LogLikelihood { get; init; }

    /// <summary>Null where there are too few observations for it.</summary>
    public required double? Aicc { get; init; }

    public required double Certificate { get; init; }

    /// <summary>Standard deviation of an observation of weight 1: kg for equal variance, a fraction of the weight for proportional models, 1 where known.</summary>
    public double Sigma => double.IsInfinity(DegreesOfFreedom) ? 1 : Math.Sqrt(Scatter / DegreesOfFreedom);

    public static FitNumbers At(
        in FitData data, WeighInColumns columns, ErrorModel errors, CurveShape shape, int free, in ShapePoint point, ReadOnlySpan<double> q)
    {
        Span<double> log = new double[data.Count];
        shape.Evaluate(q, data.Origin, data.AgeDays, log, default);
        bool relative = errors != ErrorModel.EqualVariance;
        (double scatter, double logLikelihood) = (0, 0);
        for (int i = 0; i < columns.Count; i++)
        {
            double logFitted = log[i] + point.LogScale;
            double fitted = Math.Exp(logFitted);
            double counts = columns.Weights[i];
            if (errors.IsKnown)
            {
                double off = data.LogKilograms[i] - logFitted;
                scatter += counts * off * off;
                logLikelihood -= (Math.Log(2 * Math.PI / counts) / 2) + (counts * off * off / 2) + data.LogKilograms[i];
                continue;
            }

            double difference = data.Kilograms[i] - fitted;
            double squares = (counts * difference * difference) + data.Within[i];
            scatter += relative ? squares / (fitted * fitted) : squares;

            // The density of a weight, or of a mean of n birds without their spread, in 1/kg.
            double perMean = data.Observations[i] > 1 ? 1 : counts;
            logLikelihood += relative ? (Math.Log(perMean) / 2) - (data.Observations[i] * logFitted) : 0;
        }

        double n = columns.Observations;
        if (!errors.IsKnown)
        {
            logLikelihood -= n / 2 * (Math.Log(2 * Math.PI * scatter / n) + 1);
        }

        double parameters = free + (errors.IsKnown ? 0 : 1);
        double spare = n - parameters - 1;
        return new FitNumbers
        {
            LeastSum = point.SumOfSquares,
            Scatter = scatter,
            Observations = n,
            DegreesOfFreedom = errors.IsKnown ? double.PositiveInfinity : n - free,
            LogLikelihood = logLikelihood,
            Aicc = spare > 0 ? (2 * parameters) - (2 * logLikelihood) + (2 * parameters * (parameters + 1) / spare) : null,
            Certificate = point.Certificate,
        };
    }

    /// <summary>How many standard errors either way hold the truth with this chance.</summary>
    public double Quantile(double level) => Distributions.StudentQuantile((1 + Require.Share(level)) / 2, DegreesOfFreedom);

    /// <summary>
    /// The objective that a profile must not exceed. Least squares: S (1 + t²/df) with S the scatter; the same rule on the profiled
    /// likelihood; where the scatter is known, S + z².
    /// </summary>
    public double ProfileCut(ResidualScale scale, double level)
    {
        double q = Quantile(level);
        return scale switch
        {
            ResidualScale.Kilograms => LeastSum + (Scatter * q * q / DegreesOfFreedom),
            ResidualScale.Logarithm => LeastSum + (q * q),
            _ => LeastSum * (1 + (q * q / DegreesOfFreedom)),
        };
    }
}
