using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// The planning model: what share of the birds of one batch may have lesions, before anyone looked and without a log of events. It holds average
/// events already, so what the events model says is never added to it: the two have results of different types.
/// </summary>
public sealed class PlanningRisk
{
    /// <summary>Each range stands for so many equally likely values.</summary>
    private const int Nodes = 24, SpreadNodes = 8;

    private readonly LogitDensity density;
    private readonly LogitDensity doubted;
    private readonly bool withRanges;
    private readonly double betweenFlocks;

    private PlanningRisk(LogitDensity density, LogitDensity doubted, bool withRanges, double betweenFlocks, ModelInfo model) =>
        (this.density, this.doubted, this.withRanges, this.betweenFlocks, Model) = (density, doubted, withRanges, betweenFlocks, model);

    /// <summary>Equation, figures and sources of the published form.</summary>
    public static ModelInfo PublishedModel { get; } = new(
        "lesion-planning",
        "Share of birds with lesions in a batch",
        "logit P = mu + ln OR_strain + ln OR_thin + ln(1 + L (OR_leg - 1)) + s + f + e, s ~ N(0, tau^2), f ~ N(0, sigma^2/4), e ~ N(0, 3 sigma^2/4); times S(a, sex)",
        [
            new("P", "share of birds with a lesion, of birds killed from 45 d", "-"),
            new("mu", "-6.06, so that the mean is 0.78 % at sigma 1.6 (0.15 to 0.9 %)", "-"),
            new("sigma", "1.6 (1.2 to 2.0) between flocks of all farms", "-"),
            new("f", "the farm's part of it, 0.8 (0.5 to 1.2): the same in all its batches", "-"),
            new("e", "the flock's part, 1.386", "-"),
            new("s", "the study's or country's, tau 0.42 (0.2 to 0.9): doubt about the mean, counted only with the ranges of the parameters", "-"),
            new("OR_strain", "1; 1.9 or 0.52 for a prone or a less prone strain (1 to 5 between them)", "-"),
            new("OR_thin", "1; 2 (1 to 5) after thinning: an assumption", "-"),
            new("L", "share of severely lame birds", "-"),
            new("OR_leg", "1.5 (1 to 4) for such a bird: an assumption", "-"),
            new("S(a, sex)", "susceptibility by age and sex, see lesion-susceptibility", "-"),
        ],
        [LesionSources.Bianchi2006, LesionSources.Yalcin2018, LesionSources.Kijowski2009, LesionSources.Kijowski2013, LesionSources.OwnArithmetic, LesionSources.OwnAssumption],
        "Fitted to two surveys of about 120,000 carcasses each (0.84 and 0.73 %) and to the largest of 151 flocks (16.7 %); held against nothing else. Between countries and studies the mean may be off by a factor of 2.3 either way.",
        HowKnown.Assumption,
        [new ValidityRange("age at killing", 37, 65, "d"), new ValidityRange("live weight", 2.0, 3.6, "kg")]);

    /// <summary>The published form: mu -6.06, sigma 1.6.</summary>
    public static PlanningRisk Published { get; } = Of(PlanningFigures.LogitMean, PlanningFigures.BetweenFlocks);

    /// <summary>Where the model comes from: the published form, or the farm's own inspections.</summary>
    public ModelInfo Model { get; }

    /// <summary>The same model with the ranges of all its parameters within its intervals; the mean of a plain batch stays what it is.</summary>
    public PlanningRisk WithParameterRanges => new(density, doubted, withRanges: true, betweenFlocks, Model);

    /// <summary>The published form with other figures.</summary>
    /// <param name="meanLogit">mu, the logit of the median share of birds, -20 to 5.</param>
    /// <param name="betweenFlocksLogit">sigma, the standard deviation between flocks on the logit scale, 0.01 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static PlanningRisk Of(double meanLogit, double betweenFlocksLogit)
    {
        LogitDensity plain = LogitDensity.Normals(Require.Between(meanLogit, -20, 5, ""), [(Require.Between(betweenFlocksLogit, 0.01, 10, ""), 1)]);
        return new(plain, Doubted(meanLogit, betweenFlocksLogit), withRanges: false, betweenFlocksLogit, PublishedModel);
    }

    /// <summary>What the farm's own inspections say of its next batch, in place of the published form.</summary>
    public static PlanningRisk Learned(FarmLesionRate farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        return new(farm.NextDensity, farm.NextDensity, withRanges: false, double.NaN, FarmLesionRate.Model);
    }

    /// <summary>The share of birds with lesions in one batch, as a distribution.</summary>
    public BatchPrevalence For(BatchAtRisk batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        LogitDensity found = withRanges ? Blurred(doubted, batch) : density;
        return Of(batch, Acting(withRanges ? found.Shifted(found.ShiftToMean(density.Mean(p => p))) : found, batch), AgeSusceptibility.Published.Share(batch.KillAge, batch.Sex));
    }

    /// <summary>The batches of one farm that are kept like this one: its average, and the worst of several.</summary>
    /// <exception cref="InvalidOperationException">The model was learned from the farm's own inspections, which say more: see <see cref="FarmLesionRate.LongRunRate"/>.</exception>
    public FarmPrevalence ForFarm(BatchAtRisk batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        if (Model != PublishedModel)
        {
            throw new InvalidOperationException("The farm has inspections of its own; expected FarmLesionRate.LongRunRate in place of the farms of the published model.");
        }

        double farms = betweenFlocks * PlanningFigures.BetweenFarms / PlanningFigures.BetweenFlocks;
        double batches = betweenFlocks * PlanningFigures.WithinFarm / PlanningFigures.BetweenFlocks;
        LogitDensity levels = LogitDensity.Normals(density.Quantile(0.5), [(farms, 1)]);
        if (withRanges)
        {
            // A level and the batch's own part are what flocks differ by: so both are moved alike, and the mean over batches stays what it is.
            levels = WithStudies(farms, batch).Shifted(WithStudies(betweenFlocks, batch).ShiftToMean(density.Mean(p => p)));
        }

        double susceptible = AgeSusceptibility.Published.Share(batch.KillAge, batch.Sex).Fraction;
        return new(Acting(levels, batch), batches, susceptible, Model, MyopathyCautions.Of(batch, Model));
    }

    /// <summary>How much each figure moves the answer when it goes to either end of its range by itself.</summary>
    public IReadOnlyList<RiskSensitivity> Sensitivity(BatchAtRisk batch)
    {
        BatchPrevalence likely = For(batch);
        double mean = density.Mean(p => p);
        RiskSensitivity Row(string code, string name, double low, double high, Func<double, LogitDensity> at) =>
            new(code, name, low, high, likely.With(at(low)), likely.With(at(high)));
        LogitDensity WithMean(LogitDensity plain, double target) => likely.Density.Shifted(plain.ShiftToMean(target));
        LogitDensity Spread(double sigma, double tau)
        {
            LogitDensity wide = LogitDensity.Normals(0, [(Math.Sqrt((sigma * sigma) + (tau * tau)), 1)]);
            return wide.Shifted(wide.ShiftToMean(mean) + PlanningFigures.For(batch).Sum(ratio => Math.Log(ratio.Value)));
        }

        List<RiskSensitivity> rows = [];
        if (Model == PublishedModel)
        {
            rows.Add(Row("mean", "mean of all flocks, % of birds", 100 * PlanningFigures.LeastMean, 100 * PlanningFigures.LargestMean, percent => WithMean(density, percent / 100)));
            rows.Add(Row("between-flocks", "spread between flocks, sigma", PlanningFigures.LeastBetweenFlocks, PlanningFigures.LargestBetweenFlocks, sigma => Spread(sigma, 0)));
            rows.Add(Row(
                "between-farms",
                "spread between farms, the flock's own part as it is",
                PlanningFigures.LeastBetweenFarms,
                PlanningFigures.LargestBetweenFarms,
                farms => Spread(PlanningFigures.WithinFarm, farms)));
            rows.Add(Row(
                "between-studies", "spread between studies added, tau", PlanningFigures.LeastBetweenStudies, PlanningFigures.LargestBetweenStudies, tau => Spread(PlanningFigures.BetweenFlocks, tau)));
        }

        rows.AddRange(PlanningFigures.For(batch).Select(ratio => Row(
            ratio.Code, ratio.Name + ", odds ratio", ratio.Low, ratio.High, value => likely.Density.Shifted(Math.Log(value / ratio.Value)))));
        if (batch.KillAge < AgeSusceptibility.Full)
        {
            string whose = batch.Sex == Sex.Mixed ? "first susceptible age of cockerels, pullets 10 d later, d" : "first susceptible age, d";
            (AgeSusceptibility early, AgeSusceptibility late) = (AgeSusceptibility.Earliest, AgeSusceptibility.Latest);
            rows.Add(new(
                "first-age",
                whose,
                early.FirstAge(batch.Sex).Days,
                late.FirstAge(batch.Sex).Days,
                Of(batch, likely.Density, early.Share(batch.KillAge, batch.Sex)),
                Of(batch, likely.Density, late.Share(batch.KillAge, batch.Sex))));
        }

        return rows;
    }

    /// <summary>One line, as in <c>Share of birds with lesions in a batch: mean 0.78 %, half of them below 0.23 %</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Model.Name}: mean {100 * density.Mean(p => p):G2} %, half of them below {100 * LogitDensity.Logistic(density.Quantile(0.5)):G2} %");

    /// <summary>The odds ratios that act for a batch.</summary>
    private static LogitDensity Acting(LogitDensity found, BatchAtRisk batch)
    {
        double shift = PlanningFigures.For(batch).Sum(ratio => Math.Log(ratio.Value));
        return shift == 0 ? found : found.Shifted(shift);
    }

    /// <summary>With the ranges of a batch's odds ratios.</summary>
    private static LogitDensity Blurred(LogitDensity found, BatchAtRisk batch) => PlanningFigures.For(batch).Aggregate(
        found, (before, ratio) => before.Blurred(Doubt.Logarithmic(ratio.Low / ratio.Value, 1, ratio.High / ratio.Value).Nodes(Nodes)));

    /// <summary>The published middle with a spread, that between studies, and the ranges of a batch's odds ratios.</summary>
    private LogitDensity WithStudies(double spread, BatchAtRisk batch) => Blurred(
        LogitDensity.Normals(density.Quantile(0.5), [.. Taus().Select(tau => (Math.Sqrt((spread * spread) + (tau * tau)), 1.0 / SpreadNodes))]), batch);

    /// <summary>Equally likely spreads between studies.</summary>
    private static double[] Taus() =>
        [.. Doubt.Logarithmic(PlanningFigures.LeastBetweenStudies, PlanningFigures.BetweenStudies, PlanningFigures.LargestBetweenStudies).Nodes(SpreadNodes).Select(Math.Exp)];

    /// <summary>All of the model's own doubt: both spreads within their ranges.</summary>
    private static LogitDensity Doubted(double mean, double sigma)
    {
        double scale = sigma / PlanningFigures.BetweenFlocks;
        double[] sigmas = Doubt.Logarithmic(
            scale * PlanningFigures.LeastBetweenFlocks, sigma, scale * PlanningFigures.LargestBetweenFlocks).Nodes(SpreadNodes);
        double[] taus = Taus();
        return LogitDensity.Normals(
            mean, [.. sigmas.SelectMany(s => taus.Select(tau => (Math.Sqrt(Math.Exp(2 * s) + (tau * tau)), 1.0 / (SpreadNodes * SpreadNodes))))]);
    }

    private BatchPrevalence Of(BatchAtRisk batch, LogitDensity found, Probability susceptible) =>
        new(found, susceptible.Fraction, PlanningFigures.For(batch), Model, MyopathyCautions.Of(batch, Model));
}
