using System.Globalization;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>The birds that go to the plant: how many, how heavy, how unequal, and in which state they were weighed.</summary>
public sealed class DeliveredBirds
{
    private const int MostBirds = 1_000_000;

    private DeliveredBirds(int birds, WeightDistribution weights, LiveState state)
    {
        (Birds, Weights) = (birds, weights);
        Total = LiveWeight.Of(weights.Mean * birds, state);
    }

    /// <summary>How many.</summary>
    public int Birds { get; }

    /// <summary>How heavy and how unequal.</summary>
    public WeightDistribution Weights { get; }

    /// <summary>All of them together, in the state in which they were weighed.</summary>
    public LiveWeight Total { get; }

    /// <summary>Birds for the plant.</summary>
    /// <param name="birds">1 to 1,000,000.</param>
    /// <param name="weights">Their live weights.</param>
    /// <param name="state">The state in which they were weighed.</param>
    /// <exception cref="ArgumentException">The state is not stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of its range.</exception>
    public static DeliveredBirds Of(int birds, WeightDistribution weights, LiveState state)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return new((int)Require.Between(birds, 1, MostBirds, "", nameof(birds)), weights, state);
    }

    /// <summary>In one line, as in <c>300 birds, mean 2.9 kg (6.39 lb) full-fed</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Birds} birds, mean ") + WeightText.Of(Weights.Mean.Kilograms) + " " + Total.State;
}
