using Poultry.Growth.Evidence;

namespace Poultry.Growth.Carcass;

/// <summary>Sources that several sets of this room share.</summary>
internal static class CutSources
{
    public static Citation Rudn { get; } = new(
        "Rudn2018", "RUDN Journal of Agronomy and Animal Industries, December 2018", HowKnown.ReadInSource, "abstract: Cobb 500 males at 33 and 42 d");

    public static Citation Biesiada { get; } = new(
        "Biesiada2011", "Biesiada-Drzazga B. et al. 2011. Acta Sci. Pol. Zootech. 10(3):11-20", HowKnown.ReadInSource, "abstract: Ross 308, 42 d, 1697 g of 2229.9 g live");

    public static Citation SlowLocal { get; } = new(
        "SlowLocal2022", "Animals 2022, 12(18):2422", HowKnown.ReadInSource, "Table 3: 90 and 100 d");

    public static Citation Wannan { get; } = new(
        "Wannan2019", "Poult. Sci. 2019, 98:6602-6610", HowKnown.ReadInSource, "Table 3: Wannan Yellow, 0 to 42 days on range");

    public static Citation Extension { get; } = new(
        "Extension2014", "Reply of an extension expert, 2014", HowKnown.Secondary, "70 % carcass without giblets, game hen 65 %; breast 23-25 % of live, 34 % of carcass");

    public static Citation Fletcher { get; } = new(
        "Fletcher1993", "Fletcher D.L., Carpenter J.A. 1993. Poult. Sci. 72:2347-2352", HowKnown.ReadInSource, "abstract: boneless breast 20.5, 20.8, 20.9, 24.0 % of carcasses of 1.6-2.0 kg, four retail brands");

    public static Citation Hudspeth { get; } = new(
        "Hudspeth1973", "Hudspeth J.P. et al. 1973. J. Food Sci.", HowKnown.ReadInSource, "abstract: one mean percentage a piece held over 960 birds of 450-2000 g, eight cutting methods");

    public static Citation Northcutt { get; } = new(
        "Northcutt1999", "Northcutt J.K. et al. 1999", HowKnown.ReadInSource, "abstract: of live weight, drumstick 0.3-0.6 points more in males, tender 0.1-0.4 more in females; none on wing, thigh, fillet");
}
