using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>Printed shares that make no whole set: muscle, skin, bone, boneless breast, parts of live weight. Shares that are only recalled are left out.</summary>
public static class PublishedShares
{
    private const string Live = "live weight", Carcass = "carcass", Unsure = "carcass (bone status not stated)", NoBase = "a base that is not recorded";

    private static readonly Citation Hubbard = DressingSources.Kokoszynski2008.Citations[0];
    private static readonly Citation Fat59Days = NamedPart.AbdominalFatModel.Citations[1];

    private static readonly Citation Havenstein = new(
        "Havenstein1994", "Havenstein G.B. et al. 1994. Poult. Sci. 73:1795-1804", HowKnown.ReadInSource, "abstract: total breast of a 1991 strain");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PublishedShare> All { get; } =
    [
        new(Hubbard, "Hubbard Evolution", Carcass, "breast and leg muscle", 45.4),
        new(Hubbard, "Hubbard Evolution", Carcass, "skin", 7.9),
        new(Hubbard, "Hubbard Evolution", Carcass, "abdominal fat", 1.5),
        new(CutSources.Rudn, "Cobb 500", Carcass, "muscle in all", 65.57, Sex.Male, 33),
        new(CutSources.Rudn, "Cobb 500", Carcass, "bone in all", 20.32, Sex.Male, 33),
        new(CutSources.Rudn, "Cobb 500", Carcass, "muscle in all", 66.95, Sex.Male, 42),
        new(CutSources.Rudn, "Cobb 500", Carcass, "bone in all", 16.52, Sex.Male, 42),
        new(CutSources.Biesiada, "Ross 308 (the three are 100.2 % as printed)", Carcass, "muscle in all", 46.7, Sex.Mixed, 42),
        new(CutSources.Biesiada, "Ross 308 (the three are 100.2 % as printed)", Carcass, "skin and fat", 11.0, Sex.Mixed, 42),
        new(CutSources.Biesiada, "Ross 308 (the three are 100.2 % as printed)", Carcass, "bone and remainder", 42.5, Sex.Mixed, 42),
        .. Wannan("0 days on range", 14.30, 15.52, 29.62, 12.64),
        .. Wannan("14 days on range", 14.60, 16.39, 29.78, 11.98),
        .. Wannan("28 days on range", 15.77, 16.26, 27.48, 11.73),
        .. Wannan("42 days on range", 16.34, 16.06, 27.44, 11.90),
        new(CutSources.Wannan, "Wannan Yellow, 0 days on range", NoBase, "abdominal fat", 1.38),
        new(CutSources.Wannan, "Wannan Yellow, 42 days on range", NoBase, "abdominal fat", 0.90),
        new(CutSources.Wannan, "Wannan Yellow, 0 days on range", NoBase, "feet", 7.38),
        new(CutSources.Wannan, "Wannan Yellow, 42 days on range", NoBase, "feet", 6.05),
        new(CutSources.Wannan, "Wannan Yellow, lowest", NoBase, "head", 5.29),
        new(CutSources.Wannan, "Wannan Yellow, highest", NoBase, "head", 5.69),
        .. new[] { 20.5, 20.8, 20.9, 24.0 }.Select((percent, at) => new PublishedShare(CutSources.Fletcher, "retail brand " + "1234"[at], Carcass, "boneless breast", percent)),
        new(Havenstein, "1991 strain", Live, "breast in all", 16.9),
        new(Fat59Days, "broilers of 2372 g", Live, "abdominal fat", 2.18, Sex.Male, 59),
        new(Fat59Days, "broilers of 1913 g", Live, "abdominal fat", 2.82, Sex.Female, 59),
        new(CutSources.Extension, "broilers, lowest", Live, "breast", 23),
        new(CutSources.Extension, "broilers, highest", Live, "breast", 25),
        new(CutSources.Extension, "broilers", "carcass without giblets", "breast", 34),
    ];

    private static IEnumerable<PublishedShare> Wannan(string days, double breast, double thigh, double leg, double wing) =>
        new[] { ("breast", breast), ("thigh", thigh), ("leg", leg), ("wing", wing) }.Select(part => new PublishedShare(CutSources.Wannan, "Wannan Yellow, " + days, Unsure, part.Item1, part.Item2));
}
