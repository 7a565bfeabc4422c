using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>A part of the birds, and what is done with them.</summary>
public sealed class CutOrderLine
{
    /// <summary>What a bird that is not cut is called among the pieces.</summary>
    public const string WholeBird = "whole";

    private CutOrderLine(CutSet? set, double share, double fromKilograms, double toKilograms)
    {
        (Set, ShareFraction, FromKilograms, ToKilograms) = (set, share, fromKilograms, toKilograms);
        WholePieces = [CutPiece.Of(WholeBird, 1, Probability.FromFraction(1))];
    }

    /// <summary>The pieces they are cut into; null for whole birds.</summary>
    public CutSet? Set { get; }

    /// <summary>How it is called: whole, or the set.</summary>
    public string Name => Set?.Name ?? WholeBird;

    /// <summary>The kinds of piece a bird gives.</summary>
    public IReadOnlyList<CutPiece> Pieces => Set?.Pieces ?? WholePieces;

    internal double ShareFraction { get; }

    internal double FromKilograms { get; }

    internal double ToKilograms { get; }

    /// <summary>As in <c>40 % whole</c>: a line by its share.</summary>
    internal string Shared => string.Create(CultureInfo.InvariantCulture, $"{100 * ShareFraction:0.##} % {Name}");

    /// <summary>As in <c>whole from 2 kg (4.41 lb)</c>: a line by its weights.</summary>
    internal string Banded => Name + (FromKilograms > 0 ? " from " + WeightText.Of(FromKilograms) : "")
        + (double.IsFinite(ToKilograms) ? " below " + WeightText.Of(ToKilograms) : "");

    private IReadOnlyList<CutPiece> WholePieces { get; }

    /// <summary>A share of the birds.</summary>
    /// <param name="set">The pieces they are cut into; null for whole birds.</param>
    /// <param name="share">Of all birds delivered, 0 to 100 %.</param>
    public static CutOrderLine Of(CutSet? set, Probability share) => new(set, share.Fraction, 0, double.PositiveInfinity);

    /// <summary>The birds of some live weights.</summary>
    /// <param name="set">The pieces they are cut into; null for whole birds.</param>
    /// <param name="from">Not below it, above 0; no limit where null.</param>
    /// <param name="to">Below it, above <paramref name="from"/>; no limit where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limits are crossed, or a weight is not above 0.</exception>
    public static CutOrderLine Of(CutSet? set, Mass? from, Mass? to)
    {
        (double low, double high) = Require.Band(from, to);
        return new(set, 1, low, high);
    }

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    /// <summary>What one piece weighs, of a carcass.</summary>
    internal double PieceKilograms(int piece, double carcassKilograms, double keptInCutting) => Set is null
        ? carcassKilograms
        : carcassKilograms * keptInCutting * Set.ShareAt(piece, carcassKilograms) / Set.Pieces[piece].PerBird;
}
