using Poultry.Growth.Evidence;

namespace Poultry.Growth.Myopathy;

/// <summary>The sources of this room, each once. Nearly all are known from their abstracts: the tables inside were not read.</summary>
internal static class LesionSources
{
    private const string Abstract = "abstract";

    public static Citation Bianchi2006 { get; } = new(
        "Bianchi2006", "Bianchi M., Petracci M., Franchini A., Cavani C. 2006. Poultry Science 85:1843-1846", HowKnown.ReadInSource, Abstract);

    public static Citation Yalcin2018 { get; } = new(
        "Yalcin2018", "Yalcin S. et al. 2018. The occurrence of deep pectoral myopathy in broilers and associated changes in breast meat quality. British Poultry Science 59:55-62",
        HowKnown.ReadInSource, Abstract);

    public static Citation Kijowski2009 { get; } = new(
        "Kijowski2009", "Kijowski J., Kupinska E., Kaczmarek A., Stangierski J., Popiol A. 2009. Medycyna Weterynaryjna 65:466-471", HowKnown.ReadInSource, Abstract);

    public static Citation Kijowski2013 { get; } = new(
        "Kijowski2013", "Kijowski J., Kupinska E. 2013. Zywnosc 6(91):32-44, a review", HowKnown.Secondary, Abstract);

    public static Citation Georgopoulou { get; } = new(
        "Georgopoulou", "Georgopoulou et al. Journal of the Hellenic Veterinary Medical Society, doi 10.12681/jhvms.15088", HowKnown.ReadInSource, Abstract);

    public static Citation Lien2012 { get; } = new(
        "Lien2012", "Lien et al. 2012. Journal of Applied Poultry Research", HowKnown.ReadInSource, "abstract, in part");

    public static Citation Kijowski2012 { get; } = new(
        "Kijowski2012", "Kijowski J., Kupinska E. 2012. Bulletin of the Veterinary Institute in Pulawy 56:217", HowKnown.ReadInSource, Abstract);

    public static Citation Siller1979 { get; } = new(
        "Siller1979", "Siller W.G., Wight P.A.L., Martindale L. 1978/79. Veterinary Science Communications, doi 10.1007/bf02291463", HowKnown.ReadInSource, Abstract);

    public static Citation Wight1979 { get; } = new(
        "Wight1979", "Wight P.A.L., Siller W.G., Martindale L., Filshie J.H. 1979. Avian Pathology 8:115-121", HowKnown.ReadInSource, Abstract);

    public static Citation Martindale1979 { get; } = new(
        "Martindale1979", "Martindale L., Siller W.G., Wight P.A.L. 1979. Avian Pathology 8:425-436", HowKnown.ReadInSource, Abstract);

    public static Citation Doustar { get; } = new(
        "Doustar", "Doustar et al. Journal of Veterinary Clinical Pathology (Tabriz)", HowKnown.ReadInSource, Abstract);

    public static Citation Auburn2013 { get; } = new(
        "Auburn2013", "Auburn University, USPOULTRY project 664, summary of 2013", HowKnown.Secondary);

    public static Citation Bilgili2008 { get; } = new("Bilgili2008", "Bilgili S.F., Hess J.B. 2008, a leaflet", HowKnown.Secondary);

    public static Citation Bilgili2000 { get; } = new("Bilgili2000", "Bilgili 2000, quoted elsewhere", HowKnown.Secondary);

    public static Citation PoultryScience1985 { get; } = new("PoultryScience1985", "Poultry Science 1985, 64:1591-1595", HowKnown.ReadInSource, Abstract);

    public static Citation Bailey2015 { get; } = new("Bailey2015", "Bailey R.A. et al. 2015. Poultry Science 94:2870", HowKnown.ReadInSource, Abstract);

    public static Citation Bailey2020 { get; } = new("Bailey2020", "Bailey R.A. et al. 2020. Frontiers in Physiology, doi 10.3389/fphys.2020.01041", HowKnown.ReadInSource, Abstract);

    public static Citation Kong2021 { get; } = new("Kong2021", "Kong 2021. Frontiers in Physiology, doi 10.3389/fphys.2021.711711", HowKnown.ReadInSource, Abstract);

    public static Citation Granquist2019 { get; } = new("Granquist2019", "Granquist 2019, doi 10.1017/S1751731119000466", HowKnown.ReadInSource, Abstract);

    public static Citation MerckManual { get; } = new("MerckManual", "Merck Veterinary Manual, Exertional myopathy in poultry", HowKnown.ReadInSource, "its page");

    public static Citation Extension { get; } = new(
        "Extension", "Mississippi State University Extension IS1976, and the national extension page on green muscle disease in poultry", HowKnown.Secondary);

    public static Citation Tabler2019 { get; } = new("Tabler2019", "Tabler 2019, trade opinion", HowKnown.Secondary);

    public static Citation DeLima2019 { get; } = new("DeLima2019", "de Lima 2019, handling at catching", HowKnown.ReadInSource, Abstract);

    public static Citation Northcutt1999 { get; } = new("Northcutt1999", "Northcutt et al. 1999, yields of parts", HowKnown.ReadInSource, Abstract);

    public static Citation Aaap2016 { get; } = new("Aaap2016", "American Association of Avian Pathologists 2016, on breast muscle diseases", HowKnown.Secondary);

    public static Citation Gracey { get; } = new("Gracey", "Gracey's Meat Hygiene, section identified by its description", HowKnown.Secondary);

    public static Citation Cfr311 { get; } = new("Cfr311", "9 CFR 311.35 (red meat)", HowKnown.ReadInSource, Abstract);

    public static Citation FsisNotices { get; } = new("FsisNotices", "FSIS notices 35-17 and 42-18, on woody breast and white striping", HowKnown.Secondary);

    public static Citation OwnArithmetic { get; } = new(
        "MyopathyArithmetic", "Own arithmetic from the surveys named beside it", HowKnown.Derived);

    public static Citation OwnAssumption { get; } = new(
        "MyopathyAssumption", "Chosen by us: no data", HowKnown.Assumption);
}
