using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>How the birds of a batch are sold: what is deboned at the plant shows its lesions there, what is sold whole or on the bone carries them to the customer.</summary>
public sealed class SaleSplit
{
    private SaleSplit(int deboned, int onTheBone) => (DebonedBirds, BirdsOnTheBone) = (deboned, onTheBone);

    /// <summary>Birds of which the plant cuts out breast and tenders.</summary>
    public int DebonedBirds { get; }

    /// <summary>Birds sold whole, or with the breast on the bone.</summary>
    public int BirdsOnTheBone { get; }

    /// <summary>So many of each.</summary>
    /// <param name="debonedBirds">0 or more.</param>
    /// <param name="birdsOnTheBone">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative.</exception>
    public static SaleSplit Of(int debonedBirds, int birdsOnTheBone) => new(Require.AtLeast(debonedBirds, 0), Require.AtLeast(birdsOnTheBone, 0));

    /// <summary>As in <c>120 birds deboned, 300 on the bone</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{DebonedBirds} birds deboned, {BirdsOnTheBone} on the bone");
}
