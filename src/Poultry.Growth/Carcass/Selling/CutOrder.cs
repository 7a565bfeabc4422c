using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>What is to be done with the birds: which of them stay whole, which are cut up and into what.</summary>
public sealed class CutOrder
{
    private CutOrder(CutOrderRule rule, IReadOnlyList<CutOrderLine> lines)
    {
        (Rule, Lines) = (rule, lines);
        CutSet[] sets = [.. lines.Select(line => line.Set).OfType<CutSet>()];
        foreach (CutSet trade in sets.Where(set => set.Back == BackCut.InThePieces))
        {
            if (sets.FirstOrDefault(farm => farm.Back == BackCut.SeparateFrame && farm.Pieces.Any(piece => trade.IndexOf(piece.Name) >= 0)) is { } farm)
            {
                throw new ArgumentException(
                    "A " + farm.Pieces.First(piece => trade.IndexOf(piece.Name) >= 0).Name + " of " + trade.Name + " has its part of the back, one of " + farm.Name
                        + " has not; expected sets of one kind, or other names for the pieces.",
                    nameof(lines));
            }
        }
    }

    /// <summary>Every bird whole.</summary>
    public static CutOrder AllWhole { get; } = new(CutOrderRule.AsTheyCome, [CutOrderLine.Of(null, Probability.FromFraction(1))]);

    /// <summary>Which birds go to which line.</summary>
    public CutOrderRule Rule { get; }

    /// <summary>The lines, the heaviest birds first where the rule says so.</summary>
    public IReadOnlyList<CutOrderLine> Lines { get; }

    /// <summary>The heaviest birds to the first line, the heaviest of the rest to the next.</summary>
    /// <param name="lines">Shares of the birds, 100 % together.</param>
    /// <exception cref="ArgumentException">There is no line, the shares are not 100 % together, or pieces with and without back have one name.</exception>
    public static CutOrder HeaviestFirst(params IReadOnlyList<CutOrderLine> lines) => Shared(CutOrderRule.HeaviestFirst, lines);

    /// <summary>Birds to lines as they come.</summary>
    /// <inheritdoc cref="HeaviestFirst"/>
    public static CutOrder AsTheyCome(params IReadOnlyList<CutOrderLine> lines) => Shared(CutOrderRule.AsTheyCome, lines);

    /// <summary>Birds to lines by their live weight.</summary>
    /// <param name="lines">Bands of weight that follow each other without gap, from no limit to no limit.</param>
    /// <exception cref="ArgumentException">There is no line, a weight has none or two, or pieces with and without back have one name.</exception>
    public static CutOrder ByWeight(params IReadOnlyList<CutOrderLine> lines)
    {
        CutOrderLine[] byWeight = [.. Require.Some(lines).OrderBy(line => line.FromKilograms)];
        bool closed = byWeight[0].FromKilograms == 0 && double.IsPositiveInfinity(byWeight[^1].ToKilograms)
            && byWeight.Zip(byWeight.Skip(1)).All(pair => pair.First.ToKilograms == pair.Second.FromKilograms);
        return closed
            ? new(CutOrderRule.ByWeight, byWeight)
            : throw new ArgumentException("The bands of weight leave a gap or overlap; expected each to start where the one below ends, the first without lower and the last without upper limit.", nameof(lines));
    }

    /// <summary>Which birds and into what, as in <c>heaviest first: 40 % half chicken, 60 % whole</c>, in every culture.</summary>
    public override string ToString() => Rule switch
    {
        CutOrderRule.HeaviestFirst => "heaviest first: " + string.Join(", ", Lines.Select(line => line.Shared)),
        CutOrderRule.AsTheyCome => "as they come: " + string.Join(", ", Lines.Select(line => line.Shared)),
        _ => "by live weight: " + string.Join(", ", Lines.Select(line => line.Banded)),
    };

    private static CutOrder Shared(CutOrderRule rule, IReadOnlyList<CutOrderLine> lines)
    {
        double sum = Require.Some(lines).Sum(line => line.ShareFraction);
        return Math.Abs(sum - 1) < 1e-6
            ? new(rule, [.. lines])
            : throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"The shares of the birds are {100 * sum:0.##} % together; expected 100 %."), nameof(lines));
    }
}
