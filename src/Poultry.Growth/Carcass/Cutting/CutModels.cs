using Poultry.Growth.Evidence;

namespace Poultry.Growth.Carcass;

/// <summary>The evidence of the sets of shares.</summary>
internal static class CutModels
{
    public static ModelInfo Rudn2018 { get; } = Info(
        "cuts-rudn-2018",
        "Pieces of Cobb 500 males, bone-in, frame apart",
        "Means of one trial at two ages. Bone or skin left on a piece is the cutter's: weigh the pieces of a few birds and use your own.",
        HowKnown.ReadInSource,
        [new ValidityRange("age", 33, 42, "d"), new ValidityRange(CutSet.CarcassRange, 1.52, 2.11, "kg")],
        CutSources.Rudn,
        CutSources.Hudspeth,
        CutSources.Northcutt);

    public static ModelInfo BonelessBreast { get; } = Info(
        "cuts-boneless-breast",
        "Boneless breast, bone-in legs and wings, frame apart",
        "The boneless breast of four retail brands (20.5 to 24.0 %) put in the place of another trial's bone-in breast; the frame is what is left.",
        HowKnown.Derived,
        [new ValidityRange(CutSet.CarcassRange, 1.6, 2.0, "kg")],
        CutSources.Fletcher,
        CutSources.Rudn);

    public static ModelInfo SlowLocal { get; } = Info(
        "cuts-slow-local-2022",
        "Breast and leg muscle of a slow local type",
        "Means of one trial at two ages; muscle only, so bones, skin, wings and frame are one rest.",
        HowKnown.ReadInSource,
        [new ValidityRange("age", 90, 100, "d")],
        CutSources.SlowLocal);

    public static ModelInfo OwnRecords { get; } = Info(
        "cuts-own", "Pieces weighed by oneself", "As good as the scales and the number of birds.", HowKnown.Derived, [],
        new Citation("OwnRecords", "The user's own records", HowKnown.Derived));

    public static ModelInfo Allometry { get; } = new(
        "cuts-allometry",
        "Shares that change with the weight of the carcass",
        "p_i = a_i C^b_i, then brought to 100 %",
        [
            new ModelSymbol("p_i", "weight of all pieces of a kind", "kg"),
            new ModelSymbol("a_i", "so that the shares are the set's at the carcass weight of the set", "-"),
            new ModelSymbol("C", "carcass", "kg"),
            new ModelSymbol("b_i", "exponent: 1 by default; from two ages breast 1.024, thigh 0.989, drumstick 0.962, wing 0.869, frame 1.061", "-"),
        ],
        [CutSources.Rudn, CutSources.Hudspeth],
        "The exponents are those of two ages of one strain, males. One percentage a piece (b = 1) held over 960 birds of 450 to 2000 g in another trial.",
        HowKnown.Derived,
        [new ValidityRange(CutSet.CarcassRange, 1.52, 2.11, "kg")]);

    public static ModelInfo TenderPair { get; } = new(
        "tender-pair",
        "Both tenders of a bird",
        "m = q W",
        [new ModelSymbol("m", "both tenders", "kg"), new ModelSymbol("q", "4.0 % (3.8 to 4.2)", "-"), new ModelSymbol("W", "live weight", "kg")],
        [new Citation("TenderPair", "Own arithmetic from sources held apart; agrees with the trade's yields", HowKnown.Derived, "pair 3.8 to 4.2 % of live weight"), CutSources.Northcutt],
        "Pullets have 0.1 to 0.4 points of live weight more than cockerels. Your own figure is better.",
        HowKnown.Derived);

    private static ModelInfo Info(
        string id, string name, string accuracy, HowKnown howKnown, IReadOnlyList<ValidityRange> ranges, params Citation[] citations) => new(
        id,
        name,
        "p_i = s_i C / sum(s)",
        [new ModelSymbol("p_i", "weight of all pieces of a kind", "kg"), new ModelSymbol("s_i", "their share as printed", "%"), new ModelSymbol("sum(s)", "of all kinds, frame or rest too", "%"), new ModelSymbol("C", "carcass", "kg")],
        citations,
        accuracy,
        howKnown,
        ranges);
}
