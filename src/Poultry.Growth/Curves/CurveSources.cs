using Poultry.Growth.Evidence;

namespace Poultry.Growth.Curves;

/// <summary>Where the forms of the curves come from. The forms are mathematics that anyone can check; the references were not at hand.</summary>
internal static class CurveSources
{
    public static Citation Gompertz1825 { get; } = new(
        "Gompertz1825", "Gompertz B. 1825. On the nature of the function expressive of the law of human mortality. Phil. Trans. R. Soc. 115:513-585", HowKnown.Memory);

    public static Citation Winsor1932 { get; } = new(
        "Winsor1932", "Winsor C.P. 1932. The Gompertz curve as a growth curve. Proc. Natl. Acad. Sci. 18:1-8", HowKnown.Memory);

    public static Citation DuanYai1999 { get; } = new(
        "DuanYai1999", "Duan-yai et al. 1999. Asian-Aus. J. Anim. Sci. 12:1177-1180", HowKnown.ReadInSource, "abstract: both Gompertz forms give identical estimates");

    public static Citation Verhulst1838 { get; } = new(
        "Verhulst1838", "Verhulst P.F. 1838. Notice sur la loi que la population suit dans son accroissement. Corr. Math. Phys. 10:113-121", HowKnown.Memory);

    public static Citation VonBertalanffy1957 { get; } = new(
        "VonBertalanffy1957", "von Bertalanffy L. 1957. Quantitative laws in metabolism and growth. Q. Rev. Biol. 32:217-231", HowKnown.Memory);

    public static Citation Richards1959 { get; } = new(
        "Richards1959", "Richards F.J. 1959. A flexible growth function for empirical use. J. Exp. Bot. 10:290-301", HowKnown.Memory);

    public static Citation Lopez2000 { get; } = new(
        "Lopez2000", "López S. et al. 2000. A generalized Michaelis-Menten equation for the analysis of growth. J. Anim. Sci. 78:1816-1828", HowKnown.Memory);

    public static Citation FritschCarlson1980 { get; } = new(
        "FritschCarlson1980", "Fritsch F.N., Carlson R.E. 1980. Monotone piecewise cubic interpolation. SIAM J. Numer. Anal. 17:238-246", HowKnown.Memory);

    public static Citation LimitOfFamilies { get; } = new(
        "Limit", "Limit of the Gompertz, logistic and Richards curves as the mature weight grows without bound; own arithmetic", HowKnown.Derived);

    public const string FormAccuracy =
        "A form without figures of its own: how well it agrees with birds is a matter of its parameters. See docs/conformance for its fits to published tables.";

    public static ModelSymbol Weight { get; } = new("W", "live weight", "kg");

    public static ModelSymbol Age { get; } = new("t", "age", "d");
}
