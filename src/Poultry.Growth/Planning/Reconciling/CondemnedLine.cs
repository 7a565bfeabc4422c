using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What the inspector took out for one reason: whole birds, or parts of birds that passed.</summary>
public sealed class CondemnedLine
{
    private CondemnedLine(string reason, int birds, Mass? weight, bool isWholeBirds) => (Reason, Birds, Weight, IsWholeBirds) = (reason, birds, weight, isWholeBirds);

    /// <summary>The reason, in the inspector's words.</summary>
    public string Reason { get; }

    /// <summary>Birds taken out whole, or birds of which a part was taken.</summary>
    public int Birds { get; }

    /// <summary>What it weighed; null where that is not stated.</summary>
    public Mass? Weight { get; }

    /// <summary>Whether the whole bird is gone.</summary>
    public bool IsWholeBirds { get; }

    /// <summary>Whole birds, taken out before or after killing.</summary>
    /// <param name="reason">In the inspector's words.</param>
    /// <param name="birds">0 or more.</param>
    /// <exception cref="ArgumentException">There is no reason.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A negative number of birds.</exception>
    public static CondemnedLine Whole(string reason, int birds) => new(Require.Text(reason).Trim(), Require.AtLeast(birds, 0), null, isWholeBirds: true);

    /// <summary>Parts of birds that passed otherwise.</summary>
    /// <param name="reason">In the inspector's words.</param>
    /// <param name="birds">Birds of which a part was taken, 0 or more.</param>
    /// <param name="weight">All parts together, 0 or more; null where that is not stated.</param>
    /// <exception cref="ArgumentException">There is no reason.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative.</exception>
    public static CondemnedLine Parts(string reason, int birds, Mass? weight = null) => new(
        Require.Text(reason).Trim(),
        Require.AtLeast(birds, 0),
        weight is { } stated ? Mass.FromKilograms(Require.NotNegative(stated.Kilograms, "kg", nameof(weight))) : null,
        isWholeBirds: false);

    /// <summary>As in <c>2 whole: airsacculitis</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Birds} {(IsWholeBirds ? "whole" : "in part")}: {Reason}");
}
