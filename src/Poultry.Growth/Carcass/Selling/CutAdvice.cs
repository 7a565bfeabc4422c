using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>How many birds to have cut: the value of every share from none to all, the heaviest birds first, at what will really sell.</summary>
public sealed class CutAdvice
{
    private CutAdvice(IReadOnlyList<(Probability Share, PlantReturn Return)> shares)
    {
        Shares = shares;
        Best = shares.MaxBy(share => share.Return.Value.Amount);
        All = shares[^1];
    }

    /// <summary>Every share tried, from none to all.</summary>
    public IReadOnlyList<(Probability Share, PlantReturn Return)> Shares { get; }

    /// <summary>The share worth most.</summary>
    public (Probability Share, PlantReturn Return) Best { get; }

    /// <summary>Every bird cut.</summary>
    public (Probability Share, PlantReturn Return) All { get; }

    /// <summary>What to do, and what would stay unsold if every bird were cut; in every culture.</summary>
    public string Reason
    {
        get
        {
            int birds = All.Return.Birds.Birds;
            int cut = (int)Math.Round(Best.Share.Fraction * birds, MidpointRounding.AwayFromZero);
            string advice = cut == 0 ? "Leave every bird whole"
                : cut == birds ? "Cut every bird"
                : string.Create(CultureInfo.InvariantCulture, $"Cut the {cut} heaviest of {birds} birds ({Best.Share.Percent:0} %)");
            string worth = string.Create(
                CultureInfo.InvariantCulture, $": worth {Best.Return.Value.Amount:0.00}, none cut {Shares[0].Return.Value.Amount:0.00}, all cut {All.Return.Value.Amount:0.00}.");
            string[] left = [.. All.Return.Packs.Where(pack => pack.PacksLeft >= 1).OrderByDescending(pack => pack.Unsold.Kilograms)
                .Select(pack => CountText.Of((long)Math.Round(pack.PacksLeft, MidpointRounding.AwayFromZero), "pack") + " of " + pack.Offer)];
            return advice + worth + (cut == birds || left.Length == 0 ? "" : " With all cut, unsold: " + string.Join(", ", left) + ".");
        }
    }

    /// <summary>Tries shares of birds to be cut.</summary>
    /// <param name="birds">The birds delivered.</param>
    /// <param name="plant">What happens to them.</param>
    /// <param name="set">The pieces they would be cut into.</param>
    /// <param name="offers">The packs, whole birds too, their prices and their demand.</param>
    /// <param name="charges">What cutting and packing cost; nothing where null.</param>
    /// <param name="steps">How many shares between none and all, 2 to 100.</param>
    /// <exception cref="ArgumentException"><see cref="PlantReturn.Of"/> refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of steps is out of its range.</exception>
    public static CutAdvice Of(
        DeliveredBirds birds, PlantConditions plant, CutSet set, IReadOnlyList<PackOffer> offers, PlantCharges? charges = null, int steps = 20)
    {
        ArgumentNullException.ThrowIfNull(set);
        Require.Between(steps, 2, 100, "", nameof(steps));
        return new([.. Enumerable.Range(0, steps + 1).Select(step => Probability.FromFraction((double)step / steps)).Select(share => (share, PlantReturn.Of(
            birds,
            plant,
            CutOrder.HeaviestFirst(CutOrderLine.Of(set, share), CutOrderLine.Of(null, Probability.FromFraction(1 - share.Fraction))),
            offers,
            charges)))]);
    }

    /// <summary>The reason.</summary>
    public override string ToString() => Reason;
}
