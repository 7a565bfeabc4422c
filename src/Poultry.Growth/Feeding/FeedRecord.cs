using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What a farm wrote down of the feed of a batch so far: delivered since placement, and what is left of it in bins, bags and feeders.</summary>
public sealed class FeedRecord
{
    /// <summary>The record at an age.</summary>
    /// <param name="age">When what was left was measured, any.</param>
    /// <param name="delivered">All feed delivered for this batch until then, above 0.</param>
    /// <param name="left">What of it is left, 0 or more and less than <paramref name="delivered"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight is out of range.</exception>
    public FeedRecord(Age age, Mass delivered, Mass left)
    {
        Age = age;
        Delivered = Mass.FromKilograms(Require.Positive(delivered.Kilograms, "kg", nameof(delivered)));
        Left = Mass.FromKilograms(Require.NotNegative(left.Kilograms, "kg", nameof(left)));
        Require.Above(Delivered.Kilograms, Left.Kilograms, "kg", nameof(delivered));
    }

    /// <summary>When what was left was measured.</summary>
    public Age Age { get; }

    /// <summary>All feed delivered for this batch until then.</summary>
    public Mass Delivered { get; }

    /// <summary>What of it was left.</summary>
    public Mass Left { get; }

    /// <summary>Eaten and spilt: delivered less left.</summary>
    public Mass Eaten => Delivered - Left;

    /// <summary>As in <c>310 kg eaten by 21 d</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Eaten.Kilograms:0.#} kg eaten by {Age}");
}
