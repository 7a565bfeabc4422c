using Poultry.Growth.Evidence;

namespace Poultry.Growth.Myopathy;

/// <summary>Something that may be said about lesions and food, inspection or welfare, as far as the evidence goes and no further.</summary>
public sealed class LesionStatement
{
    private LesionStatement(string code, string text, params IReadOnlyList<Citation> sources) => (Code, Text, Sources) = (code, text, sources);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<LesionStatement> All { get; } =
    [
        new("no-pathogen", "By accounts (second hand) no germ is involved, the condition is not harmful, and only the affected part is condemned. Whether a carcass or a part passes is the inspector's word.", LesionSources.Aaap2016, LesionSources.Gracey),
        new("not-visible-whole", "It does not show on a whole bird and is found at deboning. How many are found depends on trimmers who know the fresh, red stages.", LesionSources.Bilgili2008),
        new("no-rule-known", "No rule of any country about these lesions was obtained, and none is claimed. By analogy only: a rule for red meat removes localised lesions and passes the rest; notices on other breast diseases trim inflamed tissue. Ask the plant's inspector.", LesionSources.Cfr311, LesionSources.FsisNotices),
        new("meat-around", "Meat around a lesion was found to have a higher pH, to be redder and to drip more when fresh, and to hold more fat.", LesionSources.Yalcin2018),
        new("catch-both-legs", "Welfare: catch in dim light, hold both legs or the body, support the breast, never let a bird hang and flap. It spares the birds pain whatever the tenders look like.", LesionSources.DeLima2019),
        new("lame-birds", "Welfare: birds that cannot walk, or move on their wings, suffer now. Treat or cull them today, with your vet.", LesionSources.MerckManual),
        new("vet", "Many lesions, lame birds or deaths are a matter for a vet; a bruise, an infection and this lesion can look alike.", LesionSources.OwnAssumption),
    ];

    /// <summary>Stable, for programs.</summary>
    public string Code { get; }

    /// <summary>Plain sentences.</summary>
    public string Text { get; }

    /// <summary>What it rests on.</summary>
    public IReadOnlyList<Citation> Sources { get; }

    /// <summary>The text.</summary>
    public override string ToString() => Text;
}
