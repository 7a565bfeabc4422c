using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Flock means that simulated batches really follow, in kg by age in days.</summary>
internal static class TrueGrowth
{
    /// <summary>Published tables: means and standard deviations of ln W35, ln W35/W14 and ln W56/W35.</summary>
    public static readonly double[] PublishedCentre = [Math.Log(2.05), 1.48, 0.64];
    public static readonly double[] PublishedSpread = [0.12, 0.10, 0.07];

    /// <summary>A ~ N(6, 0.8) kg above 3, k ~ U(0.038, 0.050)/d, t* ~ U(38, 45) d.</summary>
    public static Func<double, double> Gompertz(ref RandomStream random) => Weights(0, DrawGompertz(ref random));

    /// <summary>A Richards curve of a shape whose other parameters are fitted to ln W of a Gompertz, twice a week from 7 to 56 d.</summary>
    public static Func<double, double> Matched(ref RandomStream random, double shape)
    {
        Func<double, double>? matched;
        do
        {
            matched = MatchedTo(DrawGompertz(ref random), shape);
        }
        while (matched is null);
        return matched;
    }

    /// <summary>A Richards curve of a shape with the Gompertz draws of A, k and t*; not below 20 g at 7 d.</summary>
    public static Func<double, double> Same(ref RandomStream random, double shape)
    {
        while (true)
        {
            Func<double, double> weights = Weights(shape, DrawGompertz(ref random));
            if (weights(7) >= 0.020)
            {
                return weights;
            }
        }
    }

    /// <summary>Like published tables: ln W35 ~ N(ln 2.05, .12), ln W35/W14 ~ N(1.48, .10), ln W56/W35 ~ N(.64, .07), a Richards curve through the three.</summary>
    public static Func<double, double> PublishedLike(ref RandomStream random, double shape)
    {
        while (true)
        {
            double middle = PublishedCentre[0] + (PublishedSpread[0] * random.NextNormal());
            double early = PublishedCentre[1] + (PublishedSpread[1] * random.NextNormal());
            double late = PublishedCentre[2] + (PublishedSpread[2] * random.NextNormal());
            if (ThroughWeights([middle, early, late], shape) is { } weights)
            {
                return weights;
            }
        }
    }

    /// <summary>The Richards curve of a shape with these ln W35, ln W35/W14 and ln W56/W35; null where there is none from 7 d on.</summary>
    public static Func<double, double>? ThroughWeights(double[] x, double shape) =>
        Through(shape, [14, 35, 56], [x[0] - x[1], x[0], x[0] + x[2]], [Math.Log(6), Math.Log(0.044), 38], exactly: true) is { } theta && Weights(shape, theta)(7) > 0
            ? Weights(shape, theta)
            : null;

    /// <summary>A López curve fitted to ln W of a Gompertz, daily from 7 to 56 d.</summary>
    public static Func<double, double> Lopez(ref RandomStream random)
    {
        while (true)
        {
            Func<double, double> gompertz = Weights(0, DrawGompertz(ref random));
            WeighInSeries daily = WeighInSeries.Of(Enumerable.Range(7, 50).Select(day =>
                WeighIn.Mean(Age.FromDays(day), Mass.FromKilograms(gompertz(day)), 1)));
            if (GrowthFit.Of(daily, CurveFamilies.Lopez, ErrorModel.Sampling(0.1)).Curve is { } curve)
            {
                return days => curve.WeightAt(Age.FromDays(days)).Kilograms;
            }
        }
    }

    /// <summary>A Gompertz whose log growth is cut by 5 to 25 % from a day in 24 to 49 on.</summary>
    public static Func<double, double> SlowDown(ref RandomStream random)
    {
        Func<double, double> whole = Gompertz(ref random);
        return SlowDown(ref random, whole);
    }

    /// <summary>Growth cut by 5 to 25 % from a day in 24 to 49 on.</summary>
    public static Func<double, double> SlowDown(ref RandomStream random, Func<double, double> whole)
    {
        double from = 24 + (25 * random.NextUniform());
        double left = 1 - (0.05 + (0.20 * random.NextUniform()));
        return days => days <= from ? whole(days) : whole(from) * Math.Pow(whole(days) / whole(from), left);
    }

    /// <summary>Fast birds outdoors: ln W56 ~ N(ln 3.0, .11), k ~ U(0.035, 0.044)/d, t* ~ U(35, 43) d; for a shape other than 0 the Richards curve fitted to that, twice a week from 7 to 56 d.</summary>
    public static Func<double, double> Outdoor(ref RandomStream random, double shape)
    {
        double log = Math.Log(3.0) + (0.11 * random.NextNormal());
        double rate = 0.035 + (0.009 * random.NextUniform());
        double inflection = 35 + (8 * random.NextUniform());
        double[] gompertz = [log + Math.Exp(-rate * (56 - inflection)), Math.Log(rate), inflection];
        return MatchedTo(gompertz, shape) ?? throw new InvalidOperationException("No curve of this shape follows the Gompertz.");
    }

    /// <summary>The curve of a shape nearest to ln W of a Gompertz, twice a week from 7 to 56 d.</summary>
    public static Func<double, double>? MatchedTo(double[] gompertz, double shape)
    {
        double[] days = [.. Enumerable.Range(0, 15).Select(i => 7 + (3.5 * i))];
        double[] logs = [.. days.Select(day => Math.Log(Weights(0, gompertz)(day)))];
        return Through(shape, days, logs, gompertz, exactly: false) is { } theta ? Weights(shape, theta) : null;
    }

    private static double[] DrawGompertz(ref RandomStream random)
    {
        double mature;
        do
        {
            mature = 6 + (0.8 * random.NextNormal());
        }
        while (mature <= 3);
        double rate = 0.038 + (0.012 * random.NextUniform());
        return [Math.Log(mature), Math.Log(rate), 38 + (7 * random.NextUniform())];
    }

    public static Func<double, double> Weights(double shape, double[] theta) =>
        days => Richards(shape, theta, days, out double log, out _, out _) ? Math.Exp(log) : 0;

    /// <summary>ln A, ln k and t* of the curve of a shape nearest to logarithmic weights; null where there is none, or where it misses them and must not.</summary>
    private static double[]? Through(double shape, double[] days, double[] logs, double[] start, bool exactly)
    {
        double[] theta = [.. start];
        if (shape < 0)
        {
            theta[2] = Math.Min(theta[2], days[0] + (Math.Log(0.8 / -shape) / Math.Exp(theta[1])));
        }

        LogProblem problem = new(shape, days, logs);
        LeastSquaresResult result = LeastSquares.Solve(ref problem, theta, new double[LeastSquares.WorkspaceLength(days.Length, 3)], default);
        bool found = result.Status is LeastSquaresStatus.Converged or LeastSquaresStatus.ExactFit || result.SumOfSquares < 1e-16;
        return found && (!exactly || result.SumOfSquares < 1e-16) ? theta : null;
    }

    /// <summary>ln W = ln A - ln(1 + v E)/v, E = exp(-k (t - t*)), of theta = (ln A, ln k, t*), and its slopes by ln k and t*; false where there is no weight.</summary>
    private static bool Richards(double shape, ReadOnlySpan<double> theta, double days, out double log, out double byLogRate, out double byInflection)
    {
        double rate = Math.Exp(theta[1]);
        double e = Math.Exp(-rate * (days - theta[2]));
        double opening = 1 + (shape * e);
        log = theta[0] - (shape == 0 ? e : Math.Log(opening) / shape);
        byInflection = -rate * e / opening;
        byLogRate = (theta[2] - days) * byInflection;
        return opening > 0.001 && double.IsFinite(log);
    }

    private readonly struct LogProblem(double shape, double[] days, double[] logs) : ILeastSquaresProblem
    {
        public int Residuals => days.Length;

        public int Parameters => 3;

        public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
        {
            bool sound = true;
            int n = days.Length;
            for (int i = 0; i < n; i++)
            {
                sound &= Richards(shape, parameters, days[i], out double log, out double byLogRate, out double byInflection);
                residuals[i] = log - logs[i];
                if (!jacobian.IsEmpty)
                {
                    (jacobian[i], jacobian[n + i], jacobian[(2 * n) + i]) = (1, byLogRate, byInflection);
                }
            }

            return sound;
        }
    }
}
