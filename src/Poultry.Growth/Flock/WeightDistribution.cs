using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Flock;

/// <summary>The live weights of a flock's birds on one day: normal within a sex, two sexes side by side where the flock is mixed.</summary>
/// <remarks>
/// Normal within a sex is the usual assumption; a mixed flock is a mixture and not normal. With a coefficient of variation above 0.3 the normal
/// would hold birds of no weight, so it is refused.
/// </remarks>
public sealed class WeightDistribution
{
    private const double WidestSpread = 0.3;

    private readonly double[] shares;
    private readonly double[] means;
    private readonly double[] deviations;

    private WeightDistribution(double[] shares, double[] means, double coefficientOfVariation)
    {
        (this.shares, this.means) = (shares, means);
        WithinSexCoefficientOfVariation = Require.Between(coefficientOfVariation, 0, WidestSpread, "", nameof(coefficientOfVariation));
        deviations = Array.ConvertAll(means, mean => Math.Max(coefficientOfVariation, double.Epsilon) * mean);
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
                double off = means[i] - MeanKilograms;
                squares += shares[i] * ((deviations[i] * deviations[i]) + (off * off));
            }

            return Math.Sqrt(squares) / MeanKilograms;
        }
    }

    private double MeanKilograms => shares.Zip(means, (share, mean) => share * mean).Sum();

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

    /// <summary>The share of birds lighter than a weight.</summary>
    public Probability ShareBelow(Mass weight) => Probability.FromFraction(Math.Min(1, Mixture(stackalloc double[3 * means.Length]).Below(weight.Kilograms)));

    /// <summary>The weight below which a share of the birds lies.</summary>
    /// <param name="share">Strictly between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is 0 or 1.</exception>
    public Mass WeightAt(Probability share)
    {
        Require.Share(share.Fraction, nameof(share));
        return Mass.FromKilograms(WithinSexCoefficientOfVariation == 0 ? Alike(share.Fraction) : Mixture(stackalloc double[3 * means.Length]).Quantile(share.Fraction));
    }

    /// <summary>The mean of the birds between two weights; null where there are none.</summary>
    /// <param name="low">The lighter weight; null for no bound.</param>
    /// <param name="high">The heavier weight; null for no bound.</param>
    public Mass? MeanBetween(Mass? low, Mass? high)
    {
        (double birds, double kilograms) = (0, 0);
        for (int i = 0; i < means.Length; i++)
        {
            double from = low is { } least ? (least.Kilograms - means[i]) / deviations[i] : double.NegativeInfinity;
            double to = high is { } most ? (most.Kilograms - means[i]) / deviations[i] : double.PositiveInfinity;
            double part = Distributions.NormalProbability(to) - Distributions.NormalProbability(from);
            birds += shares[i] * part;

            // The integral of w over the part is mean * part - deviation * (phi(to) - phi(from)).
            kilograms += shares[i] * ((means[i] * part) - (deviations[i] * (Distributions.NormalDensity(to) - Distributions.NormalDensity(from))));
        }

        return birds > 0 ? Mass.FromKilograms(kilograms / birds) : null;
    }

    /// <summary>Where the birds of a sex are all of one weight, the lighter sex comes first.</summary>
    private double Alike(double share)
    {
        int light = Array.IndexOf(means, means.Min());
        return share <= shares[light] || means.Length == 1 ? means[light] : means.Max();
    }

    private NormalMixture Mixture(Span<double> room)
    {
        NormalMixture mixture = NormalMixture.In(room);
        shares.CopyTo(mixture.Weights);
        means.CopyTo(mixture.Means);
        deviations.CopyTo(mixture.Deviations);
        return mixture;
    }
}
