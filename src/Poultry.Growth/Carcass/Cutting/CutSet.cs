using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>Into which pieces a carcass is cut, and what share of it each kind of piece is. The shares of a set are 100 % together.</summary>
public sealed class CutSet
{
    /// <summary>How far the shares as printed may miss 100 % and still be the roundings of a table.</summary>
    private const double Rounding = 0.02;

    /// <summary>The quantity whose range the evidence of a set states.</summary>
    internal const string CarcassRange = "carcass";

    private readonly double[] shares;
    private readonly double[]? exponents;
    private readonly double referenceKilograms;

    private CutSet(string name, BackCut back, IReadOnlyList<CutPiece> pieces, ModelInfo model, double[]? exponents = null, double referenceKilograms = 0)
    {
        (Name, Back, Model) = (name, back, model);
        double sum = pieces.Sum(piece => piece.ShareFraction);
        Pieces = [.. pieces.Select(piece => CutPiece.Of(piece.Name, piece.PerBird, Probability.FromFraction(piece.ShareFraction / sum)))];
        shares = [.. Pieces.Select(piece => piece.ShareFraction)];
        (this.exponents, this.referenceKilograms) = (exponents, referenceKilograms);
    }

    /// <summary>How it is called.</summary>
    public string Name { get; }

    /// <summary>Where the back goes.</summary>
    public BackCut Back { get; }

    /// <summary>The kinds of piece, with their shares at the carcass weight of the source.</summary>
    public IReadOnlyList<CutPiece> Pieces { get; }

    /// <summary>Where the shares come from.</summary>
    public ModelInfo Model { get; }

    /// <summary>The sex it was measured on; mixed where both or not stated.</summary>
    public Sex Sex { get; private init; }

    /// <summary>The age it was measured at; null where it is not stated.</summary>
    public Age? Age { get; private init; }

    /// <summary>Whether the shares change with the weight of the carcass.</summary>
    public bool IsAllometric => exponents is not null;

    /// <summary>A set of one's own.</summary>
    /// <param name="name">How to call it.</param>
    /// <param name="back">Where the back goes.</param>
    /// <param name="pieces">At least two kinds; their shares within 98 and 102 % together, they are brought to 100.</param>
    /// <param name="model">Where the shares come from; one's own records where null.</param>
    /// <exception cref="ArgumentException">Fewer than two pieces, a name twice (in upper or lower case), or shares that are not 100 % together.</exception>
    public static CutSet Of(string name, BackCut back, IReadOnlyList<CutPiece> pieces, ModelInfo? model = null)
    {
        Require.AtLeast(Require.Some(pieces).Count, 2, nameof(pieces));
        Require.Between(100 * pieces.Sum(piece => piece.ShareFraction), 100 * (1 - Rounding), 100 * (1 + Rounding), "%", nameof(pieces));
        return new(Require.Text(name), Require.Named(back), Distinct(pieces, nameof(pieces)), model ?? CutSets.OwnRecords);
    }

    /// <summary>The same set with shares that change with the weight of the carcass: part = a carcass^b, brought to 100 %.</summary>
    /// <param name="exponents">b of every piece, by name. No general set of them is published: they are the user's, or <see cref="CutSets.TwoPointExponents"/>.</param>
    /// <param name="reference">The carcass weight at which the shares are those of the set, above 0.</param>
    /// <exception cref="ArgumentException">A piece has no exponent, or one is so small that a heavier bird would give less of the piece.</exception>
    public CutSet Growing(IReadOnlyDictionary<string, double> exponents, Mass reference)
    {
        ArgumentNullException.ThrowIfNull(exponents);
        Require.Positive(reference.Kilograms, "kg", nameof(reference));
        double[] all = [.. Pieces.Select(piece => exponents.TryGetValue(piece.Name, out double exponent)
            ? Require.Finite(exponent, "", nameof(exponents))
            : throw new ArgumentException("The piece \"" + piece.Name + "\" has no exponent, and none is published that would fit every set; expected one for every piece.", nameof(exponents)))];
        return all.Min() > all.Max() - 1
            ? new(Name, Back, Pieces, Model, all, reference.Kilograms) { Sex = Sex, Age = Age }
            : throw new ArgumentException("The exponents lie 1 or more apart, so that a heavier bird could give less of a piece; expected them closer together.", nameof(exponents));
    }

    /// <summary>The set with the tenders taken off the boneless breast: they are packed, priced and lost to muscle disease apart.</summary>
    /// <param name="breast">The name of the boneless breast in this set. Tenders can't be told from the meat of a breast on the bone.</param>
    /// <param name="pairShareOfCarcass">Both tenders as a share of the carcass; above 0, at most nine tenths of the breast. See <see cref="CutSets.TenderPairOfLive"/>.</param>
    /// <exception cref="ArgumentException">There is no such piece, the tenders would be all of it, or the set has them already.</exception>
    /// <exception cref="InvalidOperationException">The shares change with the weight of the carcass: take the tenders off first.</exception>
    public CutSet WithTenders(string breast, Probability pairShareOfCarcass)
    {
        int at = IndexOf(breast);
        CutPiece whole = at < 0 ? throw new ArgumentException("The set has no piece \"" + breast + "\".", nameof(breast)) : Pieces[at];
        Require.Positive(pairShareOfCarcass.Fraction, "", nameof(pairShareOfCarcass));
        Require.Between(pairShareOfCarcass.Fraction, 0, 0.9 * whole.ShareFraction, "", nameof(pairShareOfCarcass));
        CutPiece fillet = CutPiece.Of("fillet", 2, Probability.FromFraction(whole.ShareFraction - pairShareOfCarcass.Fraction));
        List<CutPiece> pieces = [.. Pieces];
        pieces.RemoveAt(at);
        pieces.InsertRange(at, [fillet, CutPiece.Of("tender", 2, pairShareOfCarcass)]);
        return Regrouped(Name + " with tenders", Distinct(pieces, nameof(breast)));
    }

    /// <summary>The shares at a carcass weight, in the order of <see cref="Pieces"/>.</summary>
    /// <param name="carcass">Weight of a carcass, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public IReadOnlyList<Probability> SharesAt(Mass carcass)
    {
        Require.Positive(carcass.Kilograms, "kg", nameof(carcass));
        return [.. Enumerable.Range(0, Pieces.Count).Select(at => Probability.FromFraction(ShareAt(at, carcass.Kilograms)))];
    }

    /// <summary>What to mind when it is used for a batch.</summary>
    /// <param name="sex">The birds' sex.</param>
    /// <param name="age">Their age; null where it is not known.</param>
    /// <param name="carcass">The mean weight of their carcasses, any; null where it is not known.</param>
    public IReadOnlyList<Caution> CautionsFor(Sex sex, Age? age, Mass? carcass)
    {
        List<Caution> cautions = [];
        if (Sex != Sex.Mixed && sex != Sex)
        {
            cautions.Add(new("cuts-other-sex", "The shares of " + Name
                + " were measured on birds of another sex. Pullets have about a point more breast and 0.1 to 0.4 points of live weight more tender, cockerels 0.3 to 0.6 points more drumstick."));
        }

        if (Age is { } measured && age is { } asked && Math.Abs((asked - measured).Days) > 7)
        {
            cautions.Add(new("cuts-other-age", "The shares of " + Name + " were measured at " + measured
                + ". With age the share of breast and thigh rises and that of wing and drumstick falls a little; nobody has published by how much at your age."));
        }

        if (carcass is { } mean && Model.Ranges.FirstOrDefault(range => range.Quantity == CarcassRange) is { } weights && !weights.Contains(mean.Kilograms))
        {
            cautions.Add(new("cuts-other-weight", "The shares of " + Name + " were measured on carcasses of " + WeightText.Of(weights.Low) + " to " + WeightText.Of(weights.High)
                + "; yours weigh " + WeightText.Of(mean.Kilograms) + "."));
        }

        return cautions;
    }

    /// <summary>Name and pieces in one line, in every culture.</summary>
    public override string ToString() => Name + ": " + string.Join(", ", Pieces);

    /// <summary>Where a piece stands in the set; -1 where it does not.</summary>
    internal int IndexOf(string piece)
    {
        for (int at = 0; at < Pieces.Count; at++)
        {
            if (Pieces[at].Name.Equals(piece, StringComparison.OrdinalIgnoreCase))
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>The normal law of an uneven flock has a few birds of no weight or less, for which no exponent holds: theirs are the shares of the set.</summary>
    internal double ShareAt(int piece, double carcassKilograms) =>
        exponents is null || carcassKilograms <= 0 ? shares[piece] : Allometric(shares, exponents, carcassKilograms / referenceKilograms, piece);

    internal static CutSet Published(string name, ModelInfo model, IReadOnlyList<CutPiece> pieces, Sex sex = Sex.Mixed, double? ageDays = null) =>
        new(name, BackCut.SeparateFrame, pieces, model) { Sex = sex, Age = ageDays is { } days ? Primitives.Age.FromDays(days) : null };

    /// <summary>The same birds in other pieces, which have no exponents of their own: to lose those of the set without a word would be wrong.</summary>
    internal CutSet Regrouped(string name, IReadOnlyList<CutPiece> pieces) => !IsAllometric
        ? new(name, Back, pieces, Model) { Sex = Sex, Age = Age }
        : throw new InvalidOperationException("The shares of " + Name + " change with the weight of the carcass, by exponents of its own pieces; expected other pieces first, and Growing last.");

    /// <summary>Offers and orders find pieces in upper and lower case alike, so no two may differ in that alone.</summary>
    private static IReadOnlyList<CutPiece> Distinct(IReadOnlyList<CutPiece> pieces, string argument) =>
        pieces.DistinctBy(piece => piece.Name, StringComparer.OrdinalIgnoreCase).Count() == pieces.Count
            ? pieces
            : throw new ArgumentException("A piece stands twice in the set; expected every name once.", argument);

    /// <summary>s_i r^(b_i - 1) / sum of s_j r^(b_j - 1), r being carcass over reference: part_i = a_i carcass^b_i, renormalised.</summary>
    private static double Allometric(double[] s, double[] b, double r, int i)
    {
        double sum = 0;
        for (int j = 0; j < s.Length; j++)
        {
            sum += s[j] * Math.Pow(r, b[j] - 1);
        }

        return s[i] * Math.Pow(r, b[i] - 1) / sum;
    }
}
