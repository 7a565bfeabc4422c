using MathNet.Numerics.Distributions;

namespace Poultry.Growth.Numerics;

/// <summary>How many of n birds are so and so, each with the same chance: the whole law at once, by recurrence from its highest point.</summary>
internal static class BinomialCounts
{
    /// <summary>Chances smaller than this against the highest are taken for none.</summary>
    private const double Nothing = 1e-18;

    /// <summary>Fills the chances of 0 to n.</summary>
    /// <param name="chance">Of each bird, 0 to 1.</param>
    /// <param name="law">n + 1 numbers; they sum to 1.</param>
    public static void Fill(double chance, Span<double> law)
    {
        int n = law.Length - 1;
        law.Clear();
        if (chance is <= 0 or >= 1 || n == 0)
        {
            law[chance >= 1 ? n : 0] = 1;
            return;
        }

        int mode = Math.Min(n, (int)((n + 1) * chance));
        double odds = chance / (1 - chance), top = Math.Exp(Binomial.PMFLn(chance, n, mode)), sum = top;
        law[mode] = top;
        for (int k = mode; k < n && law[k] > Nothing * top; k++)
        {
            sum += law[k + 1] = law[k] * (n - k) / (k + 1) * odds;
        }

        for (int k = mode; k > 0 && law[k] > Nothing * top; k--)
        {
            sum += law[k - 1] = law[k] * k / (n - k + 1) / odds;
        }

        foreach (ref double probability in law)
        {
            probability /= sum;
        }
    }
}
