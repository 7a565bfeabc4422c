using System.Globalization;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Flock;

/// <summary>The live weights of a flock's birds on one day: normal within a sex, two sexes side by side where the flock is mixed; or of its heaviest or lightest by themselves.</summary>
/// <remarks>
/// Normal within a sex is the usual assumption; a mixed flock is a mixture and not normal. With a coefficient of variation above 0.3 the normal
/// would hold birds of no weight, so it is refused.
/// </remarks>
public sealed class WeightDistribution
{
    private const double WidestSpread = 0.3;

    /// <summary>Birds that are all of one weight differ by so little, so that one rule holds for all.</summary>
    private const double Alike = 1e-12;

    /// <summary>A smaller part of a flock is lost in the last digits.</summary>
    private const double FewestBirds = 1e-8;

    private readonly double[] shares;
    private readonly double[] means;
    private readonly double[] deviations;

    /// <summary>Birds lighter or heavier than these are taken out; without limit for a whole flock.</summary>
    private readonly double lowest, highest;

    /// <summary>The share of the whole flock below the lowest weight, and the share that is left between.</summary>
    private readonly double below, inside;

    private WeightDistribution(
        double[] shares, double[] means, double coefficientOfVariation, double lowest = double.NegativeInfinity, double highest = double.PositiveInfinity)
    {
        (this.shares, this.means, this.lowest, this.highest) = (shares, means, lowest, highest);
        WithinSexCoefficientOfVariation = Require.Between(coefficientOfVariation, 0, WidestSpread, "", nameof(coefficientOfVariation));
        deviations = Array.ConvertAll(means, mean => Math.Max(coefficientOfVariation, Alike) * mean);
        below = double.IsFinite(lowest) ? Mixture(stackalloc double[3 * means.Length]).Below(lowest) : 0;
        inside = (double.IsFinite(highest) ? Mixture(stackalloc double[3 * means.Length]).Below(highest) : 1) - below;
        Require.Above(inside, FewestBirds, "of all birds", "share");
        MeanKilograms = Part(lowest, highest).Kilograms / inside;
    }

    /// <summary>Standard deviation over mean among birds of one sex.</summary>
    public double WithinSexCoefficientOfVariation { get; }

    /// <summary>The mean of all birds.</summary>
    public Mass Mean => Mass.FromKilograms(MeanKilograms);

    /// <summary>Standard deviation over mean among all birds.</summary>
    public double CoefficientOfVariation
    {
        get
        {
            double squares = 0;
            for (int i = 0; i < means.Length; i++)
            {
                // The integral of (w - M)^2 between the limits a and b in standard deviations, m off M:
                // s^2 (P + a phi(a) - b phi(b)) + 2 m s (phi(a) - phi(b)) + m^2 P.
                double off = means[i] - MeanKilograms;
                (double a, double b) = ((lowest - means[i]) / deviations[i], (highest - means[i]) / deviations[i]);
                (double atA, double atB) = (Distributions.NormalDensity(a), Distributions.NormalDensity(b));
                double part = Between(a, b);
                squares += shares[i]
                    * ((deviations[i] * deviations[i] * (part + Tail(a, atA) - Tail(b, atB))) + (2 * off * deviations[i] * (atA - atB)) + (off * off * part));
            }

            return Math.Sqrt(Math.Max(0, squares / inside)) / MeanKilograms;

            static double Tail(double at, double density) => density == 0 ? 0 : at * density;
        }
    }

    private double MeanKilograms { get; }

    /// <summary>Birds of one sex, or of a mixed flock taken as one crowd.</summary>
    /// <param name="mean">Above 0.</param>
    /// <param name="coefficientOfVariation">Standard deviation over mean, 0 to 0.3.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static WeightDistribution Of(Mass mean, double coefficientOfVariation) =>
        new([1], [Require.Positive(mean.Kilograms, "kg", nameof(mean))], coefficientOfVariation);

    /// <summary>Cockerels and pullets together.</summary>
    /// <param name="male">Mean of the cockerels, above 0.</param>
    /// <param name="female">Mean of the pullets, above 0.</param>
    /// <param name="males">The share of cockerels.</param>
    /// <param name="coefficientOfVariation">Standard deviation over mean within either sex, 0 to 0.3.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static WeightDistribution OfSexes(Mass male, Mass female, Probability males, double coefficientOfVariation) => new(
        [males.Fraction, 1 - males.Fraction],
        [Require.Positive(male.Kilograms, "kg", nameof(male)), Require.Positive(female.Kilograms, "kg", nameof(female))],
        coefficientOfVariation);

    /// <summary>The heaviest birds by themselves, as where they are caught first.</summary>
    /// <param name="share">Their share of the birds, strictly between 0 and 1; of the whole flock more than one in a hundred million.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is 0 or 1, or next to nothing.</exception>
    public WeightDistribution Heaviest(Probability share) =>
        new(shares, means, WithinSexCoefficientOfVariation, WeightAt(Probability.FromFraction(1 - Require.Share(share.Fraction, nameof(share)))).Kilograms, highest);

    /// <summary>The lightest birds by themselves, as where the heaviest are gone.</summary>
    /// <inheritdoc cref="Heaviest"/>
    public WeightDistribution Lightest(Probability share) => new(shares, means, WithinSexCoefficientOfVariation, lowest, WeightAt(share).Kilograms);

    /// <summary>The share of birds lighter than a weight.</summary>
    /// <param name="weight">Any; nobody weighs 0 or less.</param>
    public Probability ShareBelow(Mass weight) =>
        Probability.FromFraction(Math.Clamp((Mixture(stackalloc double[3 * means.Length]).Below(weight.Kilograms) - below) / inside, 0, 1));

    /// <summary>The weight below which a share of the birds lies.</summary>
    /// <param name="share">Strictly between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is 0 or 1.</exception>
    public Mass WeightAt(Probability share)
    {
        double ofFlock = below + (inside * Require.Share(share.Fraction, nameof(share)));
        return Mass.FromKilograms(Mixture(stackalloc double[3 * means.Length]).Quantile(ofFlock));
    }

    /// <summary>As in <c>mean 2.5 kg (5.51 lb), CV 12 %</c>, in every culture.</summary>
    public override string ToString() => "mean " + WeightText.Of(MeanKilograms) + string.Create(CultureInfo.InvariantCulture, $", CV {100 * CoefficientOfVariation:0.#} %");

    /// <summary>The mean of the birds between two weights; null where there are none.</summary>
    /// <param name="low">The lighter weight, any; null for no bound.</param>
    /// <param name="high">The heavier weight, any; null for no bound.</param>
    public Mass? MeanBetween(Mass? low, Mass? high)
    {
        (double birds, double kilograms) = Part(Math.Max(lowest, low?.Kilograms ?? lowest), Math.Min(highest, high?.Kilograms ?? highest));
        return birds > 0 ? Mass.FromKilograms(kilograms / birds) : null;
    }

    /// <summary>Birds between two weights, as a part of the whole flock, and what they weigh together.</summary>
    private (double Birds, double Kilograms) Part(double low, double high)
    {
        (double birds, double kilograms) = (0, 0);
        for (int i = 0; i < means.Length; i++)
        {
            (double from, double to) = ((low - means[i]) / deviations[i], (high - means[i]) / deviations[i]);
            double part = Between(from, to);
            birds += shares[i] * part;

            // The integral of w over the part is mean * part - deviation * (phi(to) - phi(from)).
            kilograms += shares[i] * ((means[i] * part) - (deviations[i] * (Distributions.NormalDensity(to) - Distributions.NormalDensity(from))));
        }

        return (birds, kilograms);
    }

    /// <summary>The share of a normal between two points in standard deviations; beyond the middle by the upper tail, which keeps the digits of few birds.</summary>
    private static double Between(double from, double to) => from > 0
        ? Distributions.NormalProbability(-from) - Distributions.NormalProbability(-to)
        : Distributions.NormalProbability(to) - Distributions.NormalProbability(from);

    private NormalMixture Mixture(Span<double> room)
    {
        NormalMixture mixture = NormalMixture.In(room);
        shares.CopyTo(mixture.Weights);
        means.CopyTo(mixture.Means);
        deviations.CopyTo(mixture.Deviations);
        return mixture;
    }
}
