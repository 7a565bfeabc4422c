using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Flock;

/// <summary>Birds found dead or culled on a day.</summary>
public sealed class Deaths
{
    private Deaths(Age age, int birds, int culled) => (Age, Birds, Culled) = (age, birds, culled);

    /// <summary>How old the flock was.</summary>
    public Age Age { get; }

    /// <summary>How many birds, dead and culled together; 0 or more.</summary>
    public int Birds { get; }

    /// <summary>How many of them were culled, where they were counted apart; otherwise 0.</summary>
    public int Culled { get; }

    /// <summary>So many birds at an age.</summary>
    /// <param name="age">How old the flock was.</param>
    /// <param name="birds">Dead and culled together, 0 or more.</param>
    /// <param name="culled">How many of them were culled, where they are counted apart: 0 to <paramref name="birds"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative number of birds, or more culled than all.</exception>
    public static Deaths Of(Age age, int birds, int culled = 0) => new(age, Require.AtLeast(birds, 0), (int)Require.Between(culled, 0, birds, "birds"));

    /// <summary>As in <c>12 d: 3 birds, 1 of them culled</c>, in every culture.</summary>
    public override string ToString() => Age + ": " + CountText.Of(Birds, "bird")
        + (Culled > 0 ? string.Create(CultureInfo.InvariantCulture, $", {Culled} of them culled") : "");
}
