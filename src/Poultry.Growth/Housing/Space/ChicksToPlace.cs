using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>
/// How many chicks to place so that no more than so many birds are there in the end: the number that is safe if none dies, and beside it, never alone, the number
/// that fits if deaths are as expected, with its chance of too many birds.
/// </summary>
public sealed class ChicksToPlace
{
    private readonly Survival survival;
    private readonly Age placed;
    private readonly Age end;

    private ChicksToPlace(int mostBirds, Survival survival, Age placed, Age end)
    {
        (this.survival, this.placed, this.end) = (survival, placed, end);
        SafeWithNoDeaths = mostBirds;
        AsExpected = (int)Math.Min(int.MaxValue, Math.Floor(mostBirds / survival.ShareAliveInBatch(placed, end, 0).Fraction * (1 + 1e-12)));
    }

    /// <summary>Equation and where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "chicks-to-place",
        "Chicks to place for a floor",
        "chicks = floor(birds/(1 - m))",
        [
            new("chicks", "chicks to place alive", "birds"),
            new("birds", "the most birds that fit in the end", "birds"),
            new("m", "share of the placed birds lost by then, in the usual batch", "-"),
        ],
        [new Citation("NFACC2016", "NFACC Code of Practice 2016, as told by Chicken Farmers of Canada", HowKnown.ReadInSource, "inputs: floor, shipping weight, mean mortality; the division by 1 - m is ours")],
        "As good as the expected losses. In about half of the batches fewer birds die than usual, and then there are too many.",
        HowKnown.Assumption);

    /// <summary>What to read before placing more than fit.</summary>
    public static Caution Overplacing { get; } = new(
        "overplacing",
        "Placing for expected deaths overstocks every batch that fares better than usual. The number that is safe if none dies is the one to place unless birds can be sold or moved in time.");

    /// <summary>The most birds that may be there in the end: safe whatever happens.</summary>
    public int SafeWithNoDeaths { get; }

    /// <summary>The chicks of which, in the usual batch, no more than that are left.</summary>
    public int AsExpected { get; }

    /// <summary>The chance that of <see cref="AsExpected"/> chicks too many birds are left.</summary>
    public Probability ChanceOfTooMany => ChanceOfTooManyOf(AsExpected);

    /// <summary>From losses over a life.</summary>
    /// <param name="mostBirds">The most birds that fit in the end, 0 or more.</param>
    /// <param name="survival">How birds die off.</param>
    /// <param name="placed">Age at placement.</param>
    /// <param name="end">Age in the end, not before placement.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or the end lies before placement.</exception>
    public static ChicksToPlace For(int mostBirds, Survival survival, Age placed, Age end)
    {
        ArgumentNullException.ThrowIfNull(survival);
        Require.Between(end.Days, placed.Days, double.MaxValue, "d", nameof(end));
        return new(Require.AtLeast(mostBirds, 0), survival, placed, end);
    }

    /// <summary>From the share of birds lost in the usual batch; batches differ as <see cref="Survival.FastGrowingOutdoor"/> has it.</summary>
    /// <param name="mostBirds">The most birds that fit in the end, 0 or more.</param>
    /// <param name="lost">Share of the placed chicks lost by then, below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    /// <exception cref="ArgumentException">All birds are lost.</exception>
    public static ChicksToPlace For(int mostBirds, Probability lost) =>
        For(mostBirds, Survival.ByWeek([lost], Survival.FastGrowingOutdoor.LogSpread), Age.Hatch, Age.FromWeeks(1));

    /// <summary>The chance that of so many chicks too many birds are left.</summary>
    /// <param name="chicks">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public Probability ChanceOfTooManyOf(int chicks) =>
        Probability.FromFraction(Math.Max(0, 1 - survival.ChanceAtMost(SafeWithNoDeaths, Require.AtLeast(chicks, 0), placed, end).Fraction));

    /// <summary>The most chicks of which too many birds are left with at most this chance; never below the number that is safe if none dies.</summary>
    /// <param name="chance">The chance to live with.</param>
    public int AtChance(Probability chance)
    {
        (int low, int high) = (SafeWithNoDeaths, Math.Min(SafeWithNoDeaths, int.MaxValue - 1) + 1);
        while (ChanceOfTooManyOf(high) <= chance && high < int.MaxValue / 2)
        {
            (low, high) = (high, 2 * high);
        }

        while (high - low > 1)
        {
            int middle = low + ((high - low) / 2);
            (low, high) = ChanceOfTooManyOf(middle) <= chance ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Both numbers in one line, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{SafeWithNoDeaths} chicks if none dies; {AsExpected} if deaths are as expected, with a chance of {ChanceOfTooMany} of too many birds");
}
