using MathNet.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Numerics;

/// <summary>Chances of counts: of finding nothing, and the limits of a share that was counted.</summary>
internal static class Counting
{
    /// <summary>The value below which the beta distribution lies with a probability: sought on ln x or ln(1 - x), whichever end is nearer, so that small shares keep their digits.</summary>
    /// <param name="probability">Strictly between 0 and 1.</param>
    /// <param name="a">Above 0.</param>
    /// <param name="b">Above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static double BetaQuantile(double probability, double a, double b)
    {
        Require.Share(probability);
        Require.Positive(a, "");
        Require.Positive(b, "");
        bool mirrored = a > b;
        BetaMiss miss = mirrored ? new(1 - probability, b, a) : new(probability, a, b);
        _ = RootFinding.Bracketed(ref miss, -700, 0, tolerance: 0, out double logarithm);
        return mirrored ? 1 - Math.Exp(logarithm) : Math.Exp(logarithm);
    }

    /// <summary>The chance that birds drawn from a flock hold none of those affected: prod (N - D - i) / (N - i).</summary>
    /// <param name="flock">N.</param>
    /// <param name="affected">D, at most N.</param>
    /// <param name="drawn">At most N.</param>
    public static double NoneDrawn(int flock, int affected, int drawn)
    {
        // Drawn and affected may change places; the shorter product it is.
        (int factors, int other) = affected < drawn ? (affected, drawn) : (drawn, affected);
        if (factors + (long)other > flock)
        {
            return 0;
        }

        double chance = 1;
        for (int i = 0; i < factors; i++)
        {
            chance *= (flock - other - i) / (double)(flock - i);
        }

        return chance;
    }

    /// <summary>The same where an affected bird is overlooked with a chance: sum over the affected birds drawn of their chance times miss^d.</summary>
    public static double NoneSeen(int flock, int affected, int drawn, double miss)
    {
        if (miss == 0)
        {
            return NoneDrawn(flock, affected, drawn);
        }

        // P(d + 1) / P(d) = (D - d)(n - d) / ((d + 1)(N - D - n + d + 1)), summed in logarithms: the first chances may be too small for a number.
        int least = (int)Math.Max(0, (long)drawn + affected - flock), most = Math.Min(drawn, affected);
        double logMiss = Math.Log(miss), logChance = 0;
        LogSum all = default, unseen = default;
        for (int d = least; d <= most; d++)
        {
            all.Add(logChance);
            unseen.Add(logChance + (d * logMiss));
            logChance += Math.Log((affected - d) * (double)(drawn - d) / ((d + 1.0) * ((double)flock - affected - drawn + d + 1)));
        }

        return Math.Exp(unseen.Value - all.Value);
    }

    /// <summary>The chance of no case among n of a beta-binomial: B(a, b + n) / B(a, b), with digits to spare at any n.</summary>
    public static double NoneOfBetaBinomial(double a, double b, double n) => Math.Exp(LogRising(b, a) - LogRising(b + n, a));

    /// <summary>The same where a case is overlooked with a chance: sum over the cases of their chance times miss^d.</summary>
    public static double NoneSeenOfBetaBinomial(double a, double b, int n, double miss)
    {
        // P(d + 1) / P(d) = (n - d)(a + d) / ((d + 1)(b + n - d - 1))
        double logMiss = Math.Log(miss), logChance = 0;
        LogSum all = default, unseen = default;
        for (int d = 0; d <= n; d++)
        {
            all.Add(logChance);
            unseen.Add(logChance + (d * logMiss));
            logChance += Math.Log((n - d) * (a + d) / ((d + 1.0) * (b + n - d - 1)));
        }

        return Math.Exp(unseen.Value - all.Value);
    }

    /// <summary>ln Gamma(x + a) - ln Gamma(x): as a difference, for the two agree in all digits that matter when x is large.</summary>
    private static double LogRising(double x, double a)
    {
        const double large = 32;
        double sum = 0;
        while (x < large)
        {
            sum += Math.Log(x) - Math.Log(x + a);
            x++;
        }

        double y = x + a;
        return sum + ((x - 0.5) * LogOnePlus(a / x)) + (a * Math.Log(y)) - a + StirlingRest(y) - StirlingRest(x);
    }

    /// <summary>ln(1 + t) with all its digits: the rounding of 1 + t cancels (Kahan).</summary>
    private static double LogOnePlus(double t)
    {
        double sum = 1 + t;
        return sum == 1 ? t : Math.Log(sum) * t / (sum - 1);
    }

    /// <summary>1/12x - 1/360x³ + 1/1260x⁵ - 1/1680x⁷: Abramowitz and Stegun (1964), 6.1.41.</summary>
    private static double StirlingRest(double x)
    {
        double square = 1 / (x * x);
        return ((1 / 12.0) - (((1 / 360.0) - (((1 / 1260.0) - (square / 1680)) * square)) * square)) / x;
    }

    /// <summary>The logarithm of a sum of numbers of which the logarithms are given.</summary>
    private struct LogSum
    {
        private double highest;
        private double sum;

        public readonly double Value => highest + Math.Log(sum);

        public void Add(double logarithm)
        {
            if (sum == 0 || logarithm > highest)
            {
                (sum, highest) = ((sum * Math.Exp(highest - logarithm)) + 1, logarithm);
            }
            else
            {
                sum += Math.Exp(logarithm - highest);
            }
        }
    }

    private readonly struct BetaMiss(double probability, double a, double b) : IScalarFunction
    {
        public double At(double x)
        {
            double found = SpecialFunctions.BetaRegularized(a, b, Math.Exp(x));
            return probability < 0.5 ? Math.Log(found / probability) : found - probability;
        }
    }
}
