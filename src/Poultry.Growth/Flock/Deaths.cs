using Poultry.Growth.Primitives;

namespace Poultry.Growth.Flock;

/// <summary>Birds found dead or culled on a day.</summary>
public sealed class Deaths
{
    private Deaths(Age age, int birds) => (Age, Birds) = (age, birds);

    /// <summary>How old the flock was.</summary>
    public Age Age { get; }

    /// <summary>How many birds, 0 or more.</summary>
    public int Birds { get; }

    /// <summary>So many birds at an age.</summary>
    /// <param name="age">How old the flock was.</param>
    /// <param name="birds">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative number of birds.</exception>
    public static Deaths Of(Age age, int birds) => new(age, Require.AtLeast(birds, 0));
}
