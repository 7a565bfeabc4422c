using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Everything that tables and JSON show of a season on pasture.</summary>
internal sealed class PastureAnswer
{
    public PastureAnswer(PasturePlan plan, PastureSeason season, NitrogenPerBird? nitrogen, Mass? phosphorus, AreaDensity? limit, Keeping keeping, IReadOnlyList<Limit> limits)
    {
        (Plan, Season, Nitrogen, Phosphorus, Limit) = (plan, season, nitrogen, phosphorus, limit);
        Keeping = keeping.With(
        [
            Measured.BirdAge(plan.To), Measured.FloorAreaPerBird(plan.Density.AreaPerBird!.Value), Measured.BirdsOnLand(season.BirdsOnLand),
            .. NitrogenPerYear is { } load ? [Measured.NitrogenOnLand(load)] : Array.Empty<Measured>(),
        ]);
        Limits = LimitVerdict.Of(limits.Where(limit => limit.Subject is LimitSubject.NitrogenOnLand or LimitSubject.BirdsOnLand or LimitSubject.FloorAreaPerBird), Keeping);
    }

    public Keeping Keeping { get; }

    public PasturePlan Plan { get; }

    public PastureSeason Season { get; }

    /// <summary>Null where nothing is said of feed or nitrogen.</summary>
    public NitrogenPerBird? Nitrogen { get; }

    /// <summary>Of one bird; null where the feed's is not said.</summary>
    public Mass? Phosphorus { get; }

    /// <summary>The limit on nitrogen a year asked about.</summary>
    public AreaDensity? Limit { get; }

    public AreaDensity? NitrogenOfPass => Nitrogen is { IsSpreadable: false } left ? Plan.LoadOfPass(left.Amount) : null;

    public AreaDensity? NitrogenPerYear => Nitrogen is { IsSpreadable: false } left ? Season.LoadPerYear(left.Amount) : null;

    public AreaDensity? PhosphorusOfPass => Phosphorus is { } left ? Plan.LoadOfPass(left) : null;

    /// <summary>Under the limit, rounded down; null without one.</summary>
    public int? BirdsPerHectareAndYear => Limit is { } most && Nitrogen is { } left ? NitrogenBalance.BirdsPerHectareAndYear(most, left.Amount) : null;

    public IReadOnlyList<LimitVerdict> Limits { get; }

    public IReadOnlyList<Caution> Cautions =>
    [
        PasturePlan.ShelterDuties,
        PastureSeason.RestAdvice,
        .. Nitrogen?.Balance is null ? Array.Empty<Caution>() : [NitrogenBalance.LateExcretion],
        .. LimitsTable.Cautions(Limits),
    ];

    public IReadOnlyList<Citation> Sources =>
    [
        .. (Nitrogen?.Balance is null ? [] : NitrogenBalance.Model.Citations).Concat(Phosphorus is null ? [] : FeedNutrients.Model.Citations)
            .Concat(LimitsTable.Sources(Limits, Keeping)).DistinctBy(source => source.Key),
    ];
}
