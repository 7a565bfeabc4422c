namespace Poultry.Growth.Myopathy;

/// <summary>Every risk factor that is talked about, with its verdict.</summary>
public static class RiskFactors
{
    /// <summary>All of them, the best known first.</summary>
    public static IReadOnlyList<RiskFactor> All { get; } =
    [
        new(
            "flapping", "bouts of wing flapping", FactorVerdict.Used,
            "more cycles, more lesions: 0, 0, 7 and 33 % of muscles at 0, 5, 10 and 20 cycles; longer forced flapping, more and worse lesions; two short episodes sufficed in hens",
            "none", "the events model, with cycles that the user must guess; seconds of flapping are never turned into cycles",
            [LesionSources.Lien2012, LesionSources.Kijowski2012, LesionSources.Siller1979]),
        new(
            "age", "age", FactorVerdict.Used,
            "first lesions at 26 d in cockerels and 36 d in pullets; older birds more susceptible",
            "a leaflet says any age or weight; breast diseases as a group are reported from 2 weeks",
            "no risk before the first susceptible age, full risk from 45 d; no slope after 45 d, where nothing is known",
            [LesionSources.Lien2012, LesionSources.PoultryScience1985, LesionSources.Bilgili2008, LesionSources.Aaap2016]),
        new(
            "strain", "strain", FactorVerdict.Used,
            "two crosses in one survey, 1.27 and 0.35 % of carcasses: odds 3.66 apart for fresh and for old lesions; none of six light hens",
            "heritability below 0.1, more than 65 % of the variance is not genetic: farm and management may be mixed into the survey",
            "odds 1 for any current strain; 1.9 or 0.52 when the user says that a strain is prone or not", [LesionSources.Bianchi2006, LesionSources.Siller1979, LesionSources.Bailey2015]),
        new(
            "weight", "live weight at the same age", FactorVerdict.Null,
            "trade opinion: heavier birds, more lesions", "no effect of slaughter weight in 116,250 carcasses, nor of 0.4 kg in the trial",
            "odds 1; risk does not rise with weight", [LesionSources.Yalcin2018, LesionSources.Lien2012, LesionSources.Tabler2019]),
        new(
            "sex", "sex at killing age", FactorVerdict.Null,
            "cockerels ahead at 33 and 36 d; an account says males more than females",
            "no effect of sex in older birds of the trial", "the first susceptible age differs; from 45 d odds 1",
            [LesionSources.Lien2012, LesionSources.Bilgili2000, LesionSources.Extension, LesionSources.Northcutt1999]),
        new(
            "breast-yield", "breast yield", FactorVerdict.Null,
            "none", "genetic correlations with yield of 0.13 and 0.25 at most; heritability 0.04 to 0.25 over breast myopathies",
            "no number: a slope cannot be estimated from that", [LesionSources.Bailey2015, LesionSources.Bailey2020]),
        new(
            "thinning", "thinning, repeated catching", FactorVerdict.DirectionOnly,
            "lesions in birds killed 3 to 10 d after thinning; a Polish ranking puts flock selection and repeated removal on top",
            "no denominator, no odds ratio anywhere", "odds 2 (1 to 5) only when asked for, printed as an assumption",
            [LesionSources.Georgopoulou, LesionSources.Kijowski2013], PlanningFigures.Thinning),
        new(
            "disturbance", "people and disturbance late in growth", FactorVerdict.DirectionOnly,
            "linked with lesions, and aware staff lowered them (second hand)", "no figure", "no number: log disturbances and look back at them", [LesionSources.Auburn2013]),
        new(
            "lameness", "severe lameness", FactorVerdict.DirectionOnly,
            "wing-walking can trigger lesions, says a handbook", "no rate; severely lame birds are few, 2.9 % of 7,500 at 29 d",
            "odds 1.5 (1 to 4) of such a bird only when asked for, printed as an assumption", [LesionSources.MerckManual, LesionSources.Granquist2019], PlanningFigures.LamenessOfABird),
        new(
            "outdoor", "access to the open", FactorVerdict.DirectionOnly,
            "extension opinion: startled birds", "no rate was ever published",
            "odds 1 with a range of 0.5 to 2, and a warning before every result", [LesionSources.Extension], PlanningFigures.Outdoor),
        new(
            "handling", "style of handling", FactorVerdict.DirectionOnly,
            "birds caught by one leg flap more than by two", "flapping was measured, lesions were not", "no number: advice on handling only", [LesionSources.DeLima2019]),
        new(
            "final-catching", "final catching and slaughter", FactorVerdict.LeftOut,
            "most lesions in the Italian survey were fresh, and change shows at 12 h in one trial", "said not to be the cause: a lesion takes up to 48 h to show",
            "no number: lesions of the last half day do not count", [LesionSources.Auburn2013, LesionSources.Bianchi2006, LesionSources.Doustar]),
        new(
            "light", "light, exercise, enrichment", FactorVerdict.LeftOut,
            "an old idea: exercise trains the muscle", "no clear impact (second hand)", "no number: no effect was shown", [LesionSources.PoultryScience1985, LesionSources.Auburn2013]),
        new(
            "temperature", "temperature", FactorVerdict.LeftOut,
            "linked, second hand", "the direction was not told", "no number: not even the direction is known", [LesionSources.Auburn2013]),
        new(
            "creatine-kinase", "creatine kinase in the blood", FactorVerdict.LeftOut,
            "correlates with lesions (second hand)", "rises with age, differs between lines and tracks wooden breast: not specific", "no number: it is not in the model", [LesionSources.Auburn2013, LesionSources.Kong2021]),
        .. new[] { ("density", "density"), ("litter", "litter"), ("feed-restriction", "feed restriction"), ("health", "health"), ("season", "season") }.Select(pair => new RiskFactor(
            pair.Item1, pair.Item2, FactorVerdict.LeftOut, "no data on these lesions", "no data on these lesions", "no number: no data", [LesionSources.OwnAssumption])),
    ];

    /// <summary>One of them.</summary>
    /// <param name="code">As in <see cref="RiskFactor.Code"/>.</param>
    /// <exception cref="ArgumentException">There is no such factor.</exception>
    public static RiskFactor Of(string code) => All.FirstOrDefault(factor => factor.Code == code)
        ?? throw new ArgumentException($"\"{code}\" is no known factor; expected one of {string.Join(", ", All.Select(factor => factor.Code))}.", nameof(code));
}
