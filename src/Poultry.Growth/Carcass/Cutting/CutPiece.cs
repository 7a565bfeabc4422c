using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>A kind of piece that a bird is cut into.</summary>
public sealed class CutPiece
{
    private CutPiece(string name, int perBird, double share) => (Name, PerBird, ShareFraction) = (name, perBird, share);

    /// <summary>As the trade calls it, as in <c>thigh</c>.</summary>
    public string Name { get; }

    /// <summary>How many of them a bird gives.</summary>
    public int PerBird { get; }

    /// <summary>All of them together, as a share of the carcass.</summary>
    public Probability Share => Probability.FromFraction(ShareFraction);

    internal double ShareFraction { get; }

    /// <summary>A kind of piece.</summary>
    /// <param name="name">As the trade calls it; unique within a set.</param>
    /// <param name="perBird">How many of them a bird gives, 1 to 20.</param>
    /// <param name="share">All of them together, as a share of the carcass; above 0.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static CutPiece Of(string name, int perBird, Probability share) => new(
        Require.Text(name), (int)Require.Between(perBird, 1, 20, "", nameof(perBird)), Require.Positive(share.Fraction, "", nameof(share)));

    /// <summary>In one line, as in <c>2 thigh: 17.1 %</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerBird} {Name}: {100 * ShareFraction:0.##} %");
}
