using Poultry.Growth.Evidence;

namespace Poultry.Growth.Carcass;

/// <summary>Where the published dressing ratios come from.</summary>
internal static class DressingSources
{
    private const string OneTrial = "One trial, printed; between batches of one place ratios lie about 1.1 points apart (standard deviation of four groups). The live state is not stated.";
    private const string OneAccount = "A rule at second hand; how well it agrees is not stated.";

    public static ModelInfo OwnRecords { get; } = Info(
        "dressing-own", "Dressing ratio of one's own", "As good as the scales and the number of batches.", HowKnown.Derived,
        new Citation("OwnRecords", "The user's own records", HowKnown.Derived));

    public static ModelInfo Planning { get; } = Info(
        "dressing-planning", "Dressing ratios for planning", "A reading of the published ratios together, and a guess for heritage breeds. Your own ratio is better.", HowKnown.Assumption,
        new Citation("DressingReading", "Own reading of the published ratios: fast type at 8 weeks 70-75 %, slow type outdoors 65-70 %; heritage 62-66 % is an assumption", HowKnown.Derived),
        new Citation("PackagedPractice", "Common practice of the trade: live to packaged 67 % (slow, 10 weeks) to 75 % (fast, 8 weeks) outdoors", HowKnown.CommonPractice));

    public static ModelInfo Kokoszynski2008 { get; } = Info(
        "dressing-kokoszynski-2008", "Eviscerated carcass with neck, two genotypes", "Ratios of the printed means are 74.34 and 73.47 %, printed means of ratios 74.5 and 73.3 %.", HowKnown.ReadInSource,
        new Citation("Kokoszynski2008", "Kokoszynski D., Bernacki Z. 2008. J. Cent. Eur. Agric. 9(1):11-16", HowKnown.ReadInSource, "abstract"));

    public static ModelInfo Rudn2018 { get; } = Info(
        "dressing-rudn-2018", "Carcass of Cobb 500 males at 33 and 42 d", OneTrial, HowKnown.ReadInSource, CutSources.Rudn);

    public static ModelInfo Biesiada2011 { get; } = Info(
        "dressing-biesiada-2011", "Carcass of Ross 308 at 42 d", OneTrial, HowKnown.Derived, CutSources.Biesiada);

    public static ModelInfo Raji { get; } = Info(
        "dressing-raji", "Carcass of cockerels and pullets at six weeks", OneTrial, HowKnown.ReadInSource,
        new Citation("Raji", "Raji A.O., Igwebuike J.U., Kwari I.D., Agric. Biol. J. N. Am.", HowKnown.ReadInSource, "abstract: 74.5 and 74.34 %"));

    public static ModelInfo SlowLocal2022 { get; } = Info(
        "dressing-slow-local-2022", "Eviscerated carcass of a slow local type", OneTrial, HowKnown.ReadInSource, CutSources.SlowLocal);

    public static ModelInfo Wannan2019 { get; } = Info(
        "dressing-wannan-2019", "Carcass of Wannan Yellow by days on range", "Rises, then falls with days on range: 69.5 to 72.1 %.", HowKnown.ReadInSource, CutSources.Wannan);

    public static ModelInfo ExtensionReply { get; } = Info(
        "dressing-extension-2014", "Carcass without giblets, rule of an extension expert", OneAccount, HowKnown.Secondary, CutSources.Extension);

    public static ModelInfo MaineExtension { get; } = Info(
        "dressing-maine", "Slow-growing birds outdoors", OneAccount, HowKnown.Secondary,
        new Citation("MaineExtension", "University of Maine Extension", HowKnown.Secondary, "67 to 69 %"));

    public static ModelInfo Mercia { get; } = Info(
        "dressing-mercia", "Eviscerated fryers, roasters and hens, a handbook's rule", OneAccount, HowKnown.Secondary,
        new Citation("Mercia", "Mercia L., Raising Poultry the Modern Way", HowKnown.Secondary, "p. 161"));

    public static ModelInfo Kiepper { get; } = Info(
        "dressing-kiepper", "Edible yield of young chickens in the United States", OneAccount, HowKnown.Secondary,
        new Citation("Kiepper", "Kiepper B., University of Georgia", HowKnown.Secondary, "72 %; 103.3 units live give 74.4 ready to cook, 28.9 by-product"));

    public static ModelInfo Nass { get; } = Info(
        "dressing-nass", "All inspected poultry of the United States, ready to cook over live", "Totals of four months; with giblets, neck and retained water, turkeys among them, condemned birds already off.", HowKnown.Derived,
        Condemnation.NassSource);

    private static ModelInfo Info(string id, string name, string accuracy, HowKnown howKnown, params Citation[] citations) => new(
        id,
        name,
        "C = d W",
        [new ModelSymbol("C", "carcass, on the basis stated", "kg"), new ModelSymbol("d", "dressing ratio", "-"), new ModelSymbol("W", "live weight, in the state stated", "kg")],
        citations,
        accuracy,
        howKnown);
}
