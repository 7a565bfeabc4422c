using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>At most so many birds at an age: the plant's head, the places of the shelters.</summary>
public sealed class BirdLimit
{
    private BirdLimit(string name, int birds, Age age) => (Name, Birds, Age) = (name, birds, age);

    /// <summary>As the farm calls it.</summary>
    public string Name { get; }

    /// <summary>The most birds, 1 or more.</summary>
    public int Birds { get; }

    /// <summary>The age at which it counts.</summary>
    public Age Age { get; }

    /// <summary>A limit.</summary>
    /// <param name="name">As the farm calls it.</param>
    /// <param name="birds">The most birds, 1 or more.</param>
    /// <param name="age">The age at which it counts.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public static BirdLimit Of(string name, int birds, Age age) => new(Require.Text(name), Require.AtLeast(birds, 1), age);

    /// <summary>As in <c>plant: at most 300 birds at 56 d</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name}: at most {Birds} birds at {Age}");
}
