using System.Globalization;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>What a farm's own past batches dressed to: packed weight that came back, over the live weight of all birds delivered.</summary>
public sealed class PastDressing
{
    private PastDressing(double meanPercent, double squaresPercent, int batches, int batchesWithSpread, CarcassBasis basis, LiveState measuredOn)
    {
        (MeanPercent, SquaresPercent, Batches, BatchesWithSpread) = (meanPercent, squaresPercent, batches, batchesWithSpread);
        (Basis, MeasuredOn) = (basis, measuredOn);
    }

    /// <summary>The mean of the batches, in percent of live weight.</summary>
    public double MeanPercent { get; }

    /// <summary>How many batches stand behind it.</summary>
    public int Batches { get; }

    /// <summary>What the carcass is.</summary>
    public CarcassBasis Basis { get; }

    /// <summary>The state in which the live birds were weighed.</summary>
    public LiveState MeasuredOn { get; }

    /// <summary>Sum of squared deviations of the batches from their mean, in squared points.</summary>
    internal double SquaresPercent { get; }

    /// <summary>How many batches show that spread; 1 where only the mean is known.</summary>
    internal int BatchesWithSpread { get; }

    /// <summary>The mean ratio of so many batches.</summary>
    /// <param name="mean">40 to 95 %.</param>
    /// <param name="batches">1 or more.</param>
    /// <param name="basis">What the carcass is.</param>
    /// <param name="measuredOn">The state in which the live birds were weighed.</param>
    /// <exception cref="ArgumentException">The state is not stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mean or the number of batches makes no sense.</exception>
    public static PastDressing Of(Probability mean, int batches, CarcassBasis basis, LiveState measuredOn)
    {
        ArgumentNullException.ThrowIfNull(basis);
        return new(Require.Between(mean.Percent, 40, 95, "%", nameof(mean)), 0, Require.AtLeast(batches, 1), 1, basis, Stated(measuredOn));
    }

    /// <summary>Batches one by one: live weight delivered, and carcass weight that came back.</summary>
    /// <param name="batches">At least one; all carcasses on one basis. Live weights are brought to the state of the first.</param>
    /// <param name="withdrawal">What birds lose off feed; the trade's usual where null.</param>
    /// <exception cref="ArgumentException">There is none, or the bases differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A ratio lies outside 40 to 95 %.</exception>
    public static PastDressing Weighed(IReadOnlyList<(LiveWeight Live, CarcassWeight Carcass)> batches, FeedWithdrawal? withdrawal = null)
    {
        (LiveWeight first, CarcassWeight carcass) = Require.Some(batches)[0];
        if (batches.Any(batch => !batch.Carcass.Basis.Equals(carcass.Basis)))
        {
            throw new ArgumentException("The carcasses were weighed on different bases; expected one.", nameof(batches));
        }

        double[] percent = [.. batches.Select(batch => Require.Between(
            100 * batch.Carcass.Kilograms / batch.Live.In(first.State, withdrawal).Kilograms, 40, 95, "%", nameof(batches)))];
        double mean = percent.Average();
        return new(mean, percent.Sum(one => (one - mean) * (one - mean)), percent.Length, percent.Length, carcass.Basis, first.State);
    }

    /// <summary>As in <c>71.4 %, mean of 4 batches: …; of live weight, full-fed</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{MeanPercent:0.##} %, mean of {CountText.Batches(Batches)}: {Basis}; of live weight, {MeasuredOn}");

    private static LiveState Stated(LiveState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.IsStated ? state : throw new ArgumentException("An own ratio needs the state of the live birds; expected full-fed, or hours off feed.", nameof(state));
    }
}
