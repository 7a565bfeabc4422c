using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A rare large loss: a predator in the shelter, birds that smother each other, a storm.</summary>
/// <remarks>How often and how large is nowhere published for small outdoor flocks: an assumption that the farm's own years replace.</remarks>
public sealed class LargeLoss
{
    private LargeLoss(Probability chance, LikelyRange<Probability> share) => (Chance, Share) = (chance, share);

    /// <summary>Never.</summary>
    public static LargeLoss Never { get; } = new(default, LikelyRange<Probability>.Exactly(default));

    /// <summary>In one batch of thirty a tenth to six tenths of the birds. An assumption.</summary>
    public static LargeLoss OneBatchInThirty { get; } = Of(
        Probability.FromFraction(1.0 / 30), LikelyRange<Probability>.Of(Probability.FromPercent(10), Probability.FromPercent(25), Probability.FromPercent(60)));

    /// <summary>The chance that it happens to a batch before it is killed.</summary>
    public Probability Chance { get; }

    /// <summary>The share of the birds alive that it takes.</summary>
    public LikelyRange<Probability> Share { get; }

    /// <summary>A loss of one's own years.</summary>
    /// <param name="chance">The chance that it happens to a batch before it is killed, 0 to 100 %.</param>
    /// <param name="share">The share of the birds alive that it takes, 0 to 100 %.</param>
    public static LargeLoss Of(Probability chance, LikelyRange<Probability> share)
    {
        ArgumentNullException.ThrowIfNull(share);
        return new(chance, share);
    }

    /// <summary>As in <c>3.3 % of batches lose 25 % (10 % to 60 %) of the birds</c>, in every culture.</summary>
    public override string ToString() => Chance == default ? "never" : Chance + " of batches lose " + Share + " of the birds";
}
