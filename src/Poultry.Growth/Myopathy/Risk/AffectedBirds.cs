using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>How many of so many birds may have a lesion.</summary>
public sealed class AffectedBirds
{
    internal AffectedBirds(int birds, double expectedBirds, Interval<int> interval, Probability chanceOfNone) =>
        (Birds, ExpectedBirds, Interval, ChanceOfNone) = (birds, expectedBirds, interval, chanceOfNone);

    /// <summary>How many birds there are.</summary>
    public int Birds { get; }

    /// <summary>The mean number over flocks like this one; most flocks have fewer.</summary>
    public double ExpectedBirds { get; }

    /// <summary>Whole birds that the number lies between.</summary>
    public Interval<int> Interval { get; }

    /// <summary>The chance that not one is affected.</summary>
    public Probability ChanceOfNone { get; }

    /// <summary>As in <c>2.3 of 300 birds (90 %: 0 to 9)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{ExpectedBirds:G2} of {Birds} birds ({100 * Interval.Level:0.##} %: {Interval.Low} to {Interval.High})");
}
