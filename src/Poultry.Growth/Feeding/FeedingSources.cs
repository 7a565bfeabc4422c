using Poultry.Growth.Evidence;

namespace Poultry.Growth.Feeding;

/// <summary>The sources of this room, each named once.</summary>
internal static class FeedingSources
{
    public static Citation Sakomura2005 { get; } = new(
        "Sakomura2005", "Sakomura N.K., Longo F.A., Oviedo-Rondon E.O., Boa-Viagem C., Ferraudo A. 2005. Poult. Sci. 84:1363-1369", HowKnown.ReadInSource, "abstract");

    public static Citation Longo2006 { get; } = new(
        "Longo2006", "Longo F.A., Sakomura N.K., Rabello C.B.-V., Figueiredo A.N., Fernandes J.B.K. 2006. Rev. Bras. Zootec. 35", HowKnown.ReadInSource, "abstract");

    public static Citation CriticalTemperature { get; } = new(
        "CriticalTemperature", "Energy requirements for maintenance as a function of body weight and critical temperature in broiler chickens (authors not identified)", HowKnown.ReadInSource, "abstract: male Cobb 500, 76 groups");

    public static Citation Emmans1994 { get; } = new("Emmans1994", "Emmans G.C. 1994. Effective energy. Br. J. Nutr. 71:801-821", HowKnown.ReadInSource, "abstract");

    public static Citation Caldas2019 { get; } = new(
        "Caldas2019", "Caldas et al. 2019. Poult. Sci. 98:866-877", HowKnown.ReadInSource, "abstract: 151 birds, 1 to 60 d; g/kg fresh and kcal/g");

    public static Citation Cobb700 { get; } = new(
        "Cobb700of2024", "Br. Poult. Sci. 2024, 65:265-272, doi 10.1080/00071668.2024.2328680", HowKnown.ReadInSource, "abstract: mature weight, protein, lipid, water, ash by sex");

    public static Citation Gous1999 { get; } = new(
        "Gous1999", "Gous R.M. et al. 1999. Poult. Sci. 78:812-821", HowKnown.ReadInSource, "abstract: fat of females speeds up after 8 weeks");

    public static Citation Liu2017 { get; } = new(
        "Liu2017", "Liu W. et al. 2017. Asian-Australas. J. Anim. Sci. 30:849-856", HowKnown.ReadInSource, "abstract: males from 15 d; 594 (calorimetry), 618 (slaughter) kJ/kg^0.75");

    public static Citation Fraga2004 { get; } = new(
        "Fraga2004", "Rev. Bras. Zootec. 2004, S1516-35982004000700014 (authors not verified)", HowKnown.ReadInSource, "abstract: males 22 to 43 d; 131.12, 140.96, 131.78 kcal/kg^0.75 at high, middle, low diet energy");

    public static Citation DarmaniKuhi2003 { get; } = new(
        "DarmaniKuhi2003", "Darmani Kuhi H. et al. 2003. J. Agric. Sci.", HowKnown.ReadInSource, "abstract: 437 to 573 kJ a kg of body weight");

    public static Citation Diets2024 { get; } = new(
        "Diets2024", "Scientific Reports, doi 10.1038/s41598-024-75695-5", HowKnown.ReadInSource, "Table 1: 3000, 3100, 3200 kcal/kg at 0 to 10, 10 to 24, 24 to 42 d");

    public static Citation FeedTables { get; } = new(
        "FeedTables", "Own comparison with printed feed tables, docs/conformance/feed-tables.md", HowKnown.Derived);

    public static Citation Objectives2012 { get; } = new(
        "Objectives2012", "A breeder's performance objectives, 2012, weekly weights, in an open collection; Gompertz fits to 70 d are own arithmetic", HowKnown.Secondary, "weight and cumulative feed by sex, 0 to 10 weeks");

    public static Citation Nrc1984 { get; } = new("NRC1984", "National Research Council 1984. Nutrient Requirements of Poultry", HowKnown.Secondary, "Table 1, weight, feed and energy by sex, 1 to 9 weeks");

    public static Citation PoultryCrc { get; } = new("PoultryCRC", "Poultry CRC, weight and feed by sex", HowKnown.ReadInSource, "weight and cumulative feed by sex, 0 to 9 weeks");

    public static Citation StandardHouse { get; } = new(
        "StandardHouse", "A house at 32 °C, falling by 3 °C a week to 21 °C: what is taken to stand behind the printed feed tables", HowKnown.Assumption);
}
