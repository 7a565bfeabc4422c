using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>The published sets of shares, and what can be derived from them. All leave the back as a separate frame: no set with the back on the pieces is published.</summary>
public static class CutSets
{
    private const string Breast = "breast", Thigh = "thigh", Drumstick = "drumstick", Wing = "wing", Frame = "frame", BonelessBreast = "boneless breast";

    /// <summary>Carcass of the two ages: 994 g of muscle are 65.57 %, 1410 g are 66.95 %.</summary>
    private const double Kilograms33 = 0.994 / 0.6557, Kilograms42 = 1.410 / 0.6695;

    /// <summary>Cobb 500 males at 42 d, bone-in: the set for eight pieces and a frame until one's own is known.</summary>
    public static CutSet Rudn42Days { get; } = CutSet.Published(
        "rudn-42d", Rudn2018, [Piece(Breast, 2, 36.23), Piece(Thigh, 2, 17.09), Piece(Drumstick, 2, 14.20), Piece(Wing, 2, 10.68), Piece(Frame, 1, 21.80)], Sex.Male, 42);

    /// <summary>The same at 33 d.</summary>
    public static CutSet Rudn33Days { get; } = CutSet.Published(
        "rudn-33d", Rudn2018, [Piece(Breast, 2, 35.95), Piece(Thigh, 2, 17.15), Piece(Drumstick, 2, 14.38), Piece(Wing, 2, 11.15), Piece(Frame, 1, 21.37)], Sex.Male, 33);

    /// <summary>
    /// Boneless breast, bone-in legs and wings: the mean of four retail brands (20.5, 20.8, 20.9, 24.0 %) in the place of the bone-in breast, whose
    /// bones and skin go to the frame by difference. Two sources put together.
    /// </summary>
    public static CutSet BonelessBreastSet { get; } = CutSet.Published(
        "boneless-breast",
        BonelessBreastModel,
        [Piece(BonelessBreast, 2, 21.55), Piece(Thigh, 2, 17.09), Piece(Drumstick, 2, 14.20), Piece(Wing, 2, 10.68), Piece(Frame, 1, 36.48)],
        Sex.Male,
        42);

    /// <summary>Breast and leg muscle of a slow local type at 90 d; bones, skin and the rest by difference.</summary>
    public static CutSet SlowLocal90Days { get; } = Muscle("slow-local-90d", 18.01, 23.56, 90);

    /// <summary>The same at 100 d.</summary>
    public static CutSet SlowLocal100Days { get; } = Muscle("slow-local-100d", 18.84, 24.84, 100);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CutSet> All { get; } = [Rudn42Days, Rudn33Days, BonelessBreastSet, SlowLocal90Days, SlowLocal100Days];

    /// <summary>
    /// Exponents of part = a carcass^b from the two ages of <see cref="Rudn2018"/>: one strain, males, 1.5 to 2.1 kg. The shape is usable, the figures are thin.
    /// </summary>
    public static IReadOnlyDictionary<string, double> TwoPointExponents { get; } = Rudn42Days.Pieces.Zip(Rudn33Days.Pieces).ToDictionary(
        pair => pair.First.Name, pair => TwoPointExponent(Kilograms33 * pair.Second.ShareFraction, Kilograms42 * pair.First.ShareFraction));

    /// <summary>The carcass weight at which the shares of <see cref="Rudn42Days"/> were measured.</summary>
    public static Mass Rudn42DaysCarcass => Mass.FromKilograms(Kilograms42);

    /// <summary>Both tenders as a share of the live weight; divide by the dressing ratio for a share of the carcass.</summary>
    public static LikelyRange<Probability> TenderPairOfLive { get; } = LikelyRange<Probability>.Of(
        Probability.FromPercent(3.8), Probability.FromPercent(4.0), Probability.FromPercent(4.2));

    /// <summary>Where the bone-in shares come from.</summary>
    public static ModelInfo Rudn2018 => CutModels.Rudn2018;

    /// <summary>The published set of a name; null where there is none.</summary>
    public static CutSet? Named(string name) => All.FirstOrDefault(set => set.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>A bone-in set with separate frame, cut into so many pieces beside the frame.</summary>
    /// <param name="set">A set with breast, thigh, drumstick, wing and frame.</param>
    /// <param name="pieces">
    /// 4: breast with wing and leg, two of each. 6: breast, thigh, drumstick, two of each; the wings stay apart. 8: wings too. 10: each half breast cut across.
    /// </param>
    /// <exception cref="ArgumentException">The set has other pieces, or the number is not one of these: shares of the nine-piece cut with its keel piece are not published.</exception>
    /// <exception cref="InvalidOperationException">It would be cut into other pieces, and its shares change with the weight of the carcass: <see cref="CutSet.Growing"/> comes last.</exception>
    public static CutSet InPieces(CutSet set, int pieces)
    {
        ArgumentNullException.ThrowIfNull(set);
        double[] share = [.. new[] { Breast, Thigh, Drumstick, Wing, Frame }.Select(name => set.IndexOf(name) is >= 0 and var at
            ? 100 * set.Pieces[at].ShareFraction
            : throw new ArgumentException("The set \"" + set.Name + "\" has no piece \"" + name + "\"; expected breast, thigh, drumstick, wing and frame.", nameof(set)))];
        return pieces switch
        {
            4 => set.Regrouped(set.Name + " in 4", [Piece("breast with wing", 2, share[0] + share[3]), Piece("leg", 2, share[1] + share[2]), Piece(Frame, 1, share[4])]),
            6 or 8 => set,
            10 => set.Regrouped(set.Name + " in 10", [Piece(Breast, 4, share[0]), Piece(Thigh, 2, share[1]), Piece(Drumstick, 2, share[2]), Piece(Wing, 2, share[3]), Piece(Frame, 1, share[4])]),
            9 => throw new ArgumentException(
                "The share of the keel piece of a nine-piece cut is not published; expected 4, 6, 8 or 10, or a set of your own: weigh the pieces of a few birds.", nameof(pieces)),
            _ => throw new ArgumentException("A bird is cut into 4, 6, 8, 9 or 10 pieces, of which 9 needs a set of your own.", nameof(pieces)),
        };
    }

    internal static ModelInfo OwnRecords => CutModels.OwnRecords;

    /// <summary>b = ln(part2/part1) / ln(carcass2/carcass1).</summary>
    internal static double TwoPointExponent(double part1, double part2) => Math.Log(part2 / part1) / Math.Log(Kilograms42 / Kilograms33);

    private static ModelInfo BonelessBreastModel => CutModels.BonelessBreast;

    private static CutSet Muscle(string name, double breast, double leg, double ageDays) => CutSet.Published(
        name, CutModels.SlowLocal, [Piece("breast muscle", 2, breast), Piece("leg muscle", 2, leg), Piece("bones, skin and rest", 1, 100 - breast - leg)], Sex.Mixed, ageDays);

    private static CutPiece Piece(string name, int perBird, double percent) => CutPiece.Of(name, perBird, Probability.FromPercent(percent));
}
