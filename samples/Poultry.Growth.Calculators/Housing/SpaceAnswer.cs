using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Fitting;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Everything that tables, JSON and chart show of a floor: asked of the library once.</summary>
internal sealed class SpaceAnswer
{
    private const int Draws = 1000;

    private static readonly IReadOnlyList<LimitSubject> Forms = Array.AsReadOnly(
    [
        LimitSubject.OutdoorAreaPerBird, LimitSubject.OutdoorStockingDensity, LimitSubject.FlockSize, LimitSubject.HouseFloor, LimitSubject.PopHoleLength, LimitSubject.SlaughterAge,
    ]);

    private SpaceAnswer(SpaceQuestion question, StockingVerdict verdict, ChicksToPlace? chicks, DensityPath? path, long seed)
    {
        (Question, Verdict, Chicks, Path) = (question, verdict, chicks, path);
        if (path is not null && question is { Age: { } leave, Curve: { } curve })
        {
            ByAge = Ages(question, curve, path, seed);
            Reached = path.FirstOver(First(question), leave);
        }
    }

    public SpaceQuestion Question { get; }

    /// <summary>The birds placed, or none, at the weight at which they leave.</summary>
    public StockingVerdict Verdict { get; }

    /// <summary>Null where losses are not said, or no limit is known to bind.</summary>
    public ChicksToPlace? Chicks { get; }

    /// <summary>Null where birds do not grow, or their number is not said.</summary>
    public DensityPath? Path { get; }

    /// <summary>The floor by age; empty where there is no path.</summary>
    public IReadOnlyList<SpaceAtAge> ByAge { get; } = [];

    /// <summary>When a limit is first passed; null where none is before the birds leave.</summary>
    public LimitReached? Reached { get; }

    /// <summary>In %, at the age at which they leave; null where it is not said.</summary>
    public double? MortalityLimitPercent => Question.Age is { } age ? CumulativeMortality.LimitPercent(age) : null;

    /// <summary>What organic, free-range and barn rules ask of flock, house, run and age.</summary>
    public IReadOnlyList<LimitVerdict> FormLimits => LimitVerdict.Of(
        Question.Limits.Where(limit => Forms.Contains(limit.Subject)),
        Question.Keeping.With(
        [
            Measured.HouseFloor(Question.Floor), Measured.BirdWeight(Question.Weight),
            .. Question.Age is { } age ? [Measured.SlaughterAge(age), Measured.BirdAge(age)] : Array.Empty<Measured>(),
            .. Question.Birds is { } birds ? [Measured.Flock(birds), .. Outdoors(birds)] : Array.Empty<Measured>(),
            .. Question.PopHoles is { } openings ? [Measured.PopHoles(openings, Question.Floor)] : Array.Empty<Measured>(),
        ]));

    public IReadOnlyList<EquipmentNeed> Equipment => Question.Birds is { } birds ? EquipmentNeed.For(birds, Question.Weight, Question.Keeping, Question.Limits) : [];

    public IReadOnlyList<Caution> Cautions =>
    [
        .. LimitsTable.Cautions([.. Verdict.Limits, .. FormLimits]),
        .. Chicks is null ? Array.Empty<Caution>() : [ChicksToPlace.Overplacing],
        .. Verdict.BirdsTooMany > 0 || Reached is not null ? [DensityPath.RepeatCatching] : Array.Empty<Caution>(),
        .. Question.Curve?.Cautions ?? [],
    ];

    public IReadOnlyList<Citation> Sources =>
    [
        .. LimitsTable.Sources([.. Verdict.Limits, .. FormLimits.Where(verdict => verdict.Binds || verdict.IsChosen)], Question.Keeping),
        .. Chicks is null ? [] : ChicksToPlace.Model.Citations,
        .. Question.Age is null ? [] : CumulativeMortality.Model.Citations,
        .. Question.Curve is { } curve ? Projection.Model.Citations.Concat(curve.Prior.Model.Citations) : [],
    ];

    public static SpaceAnswer To(SpaceQuestion question, long seed)
    {
        StockingVerdict verdict = StockingVerdict.Of(
            question.Floor, question.Birds ?? 0, question.Weight, question.Age is { } leave ? question.Keeping.With(Measured.BirdAge(leave)) : question.Keeping, question.Limits, question.EarlierBatches);
        ChicksToPlace? chicks = verdict.BirdsAtLimit is { } most && question.Mortality is { } lost ? ChicksToPlace.For(most, lost) : null;
        DensityPath? path = question is { Birds: { } birds, Curve: { } curve } ? DensityPath.Of(question.Floor, curve.Curve, Heads(question, birds), question.Keeping, question.Limits, question.EarlierBatches) : null;
        return new(question, verdict, chicks, path, seed);
    }

    private IReadOnlyList<Measured> Outdoors(int birds) => Question.Run is not { } run ? [] :
        [Measured.OutdoorAreaPerBird(run / birds), Measured.OutdoorDensity(StockingDensity.Of(birds * Question.Weight, run))];

    /// <summary>The usual batch loses the stated share by the age at which it leaves, at a rate that is the same every week; without a share none is lost.</summary>
    private static HeadCountPath Heads(SpaceQuestion question, int birds)
    {
        double weeks = (question.Age!.Value - question.AgeAtPlacement).Days / 7;
        Survival survival = question.Mortality is { } lost
            ? Survival.ByWeek([Probability.FromFraction(1 - Math.Pow(1 - lost.Fraction, 1 / weeks))], Survival.FastGrowingOutdoor.LogSpread)
            : Survival.WithoutLoss;
        return HeadCountPath.Expected(birds, question.AgeAtPlacement, survival);
    }

    private static Age First(SpaceQuestion question) => question.AgeAtPlacement > Age.FromDays(7) ? question.AgeAtPlacement : Age.FromDays(Math.Min(7, question.Age!.Value.Days));

    private static IReadOnlyList<SpaceAtAge> Ages(SpaceQuestion question, Projection curve, DensityPath path, long seed)
    {
        Age leave = question.Age!.Value;
        Age[] ages = [.. Enumerable.Range(1, 200).Select(week => Age.FromWeeks(week)).Where(age => age > First(question) && age < leave).Prepend(First(question)).Append(leave).Distinct()];
        IReadOnlyList<Probability?> chances = path.ChanceOver(curve.Draws(seed, ages), Draws);
        return [.. ages.Select((age, at) => new SpaceAtAge(path.At(age), chances[at]))];
    }
}
