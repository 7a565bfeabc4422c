using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// How much wing flapping a disturbance caused: the share of birds that flapped and the cycles of each, as low, likely and high. Always the user's guess:
/// nobody has published flaps per bird in the field.
/// </summary>
public sealed class FlappingDose
{
    private FlappingDose(Doubt share, Doubt cycles) => (ShareDoubt, CyclesDoubt) = (share, cycles);

    /// <summary>The share of birds that flapped, low guess.</summary>
    public Probability LowShare => Probability.FromFraction(ShareDoubt.Low);

    /// <summary>The share of birds that flapped, likely guess.</summary>
    public Probability LikelyShare => Probability.FromFraction(ShareDoubt.Likely);

    /// <summary>The share of birds that flapped, high guess.</summary>
    public Probability HighShare => Probability.FromFraction(ShareDoubt.High);

    /// <summary>Cycles of a bird that flapped, low guess; one is a bout of 4 to 6 flaps.</summary>
    public double LowCycles => CyclesDoubt.Low;

    /// <summary>Cycles of a bird that flapped, likely guess.</summary>
    public double LikelyCycles => CyclesDoubt.Likely;

    /// <summary>Cycles of a bird that flapped, high guess.</summary>
    public double HighCycles => CyclesDoubt.High;

    internal Doubt ShareDoubt { get; }

    internal Doubt CyclesDoubt { get; }

    /// <summary>A dose that is known: in a trial, say.</summary>
    /// <param name="share">Of the birds, 0 to 100 %.</param>
    /// <param name="cycles">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Cycles below 0 or not finite.</exception>
    public static FlappingDose Of(Probability share, double cycles) => Between(share, share, share, cycles, cycles, cycles);

    /// <summary>A guess: half of the doubt lies below the likely value, half above.</summary>
    /// <param name="lowShare">Of the birds, not above the likely one.</param>
    /// <param name="likelyShare">Of the birds.</param>
    /// <param name="highShare">Of the birds, not below the likely one.</param>
    /// <param name="lowCycles">0 or more, not above the likely ones.</param>
    /// <param name="likelyCycles">Of a bird that flapped, between the other two.</param>
    /// <param name="highCycles">Not below the likely ones.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, not finite, or out of order.</exception>
    public static FlappingDose Between(
        Probability lowShare, Probability likelyShare, Probability highShare, double lowCycles, double likelyCycles, double highCycles)
    {
        Require.Between(likelyShare.Fraction, lowShare.Fraction, highShare.Fraction, "", nameof(likelyShare));
        Require.NotNegative(lowCycles, "cycles");
        Require.Finite(highCycles, "cycles");
        Require.Between(likelyCycles, lowCycles, highCycles, "cycles");
        return new(new(lowShare.Fraction, likelyShare.Fraction, highShare.Fraction), new(lowCycles, likelyCycles, highCycles));
    }

    /// <summary>As in <c>10 % of birds, 15 cycles</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{LikelyShare.Percent:0.##} % of birds, {LikelyCycles:0.##} cycles");
}
