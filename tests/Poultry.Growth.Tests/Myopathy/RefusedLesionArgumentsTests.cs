using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

/// <summary>What is missing or makes no sense is refused where it is given, by name.</summary>
public sealed class RefusedLesionArgumentsTests
{
    private static readonly DateOnly Killed = new(2027, 6, 8);
    private static readonly DateOnly Hatched = new(2027, 4, 12);
    private static readonly LesionCounts Found = LesionCounts.Of(red: 1);
    private static readonly DisturbanceLog Log = DisturbanceLog.Of(Disturbance.At(Age.FromDays(50), "chased by a dog"));
    private static readonly BatchAtRisk AtRisk = new() { KillAge = Age.FromDays(56) };
    private static readonly PlanningRisk Risk = PlanningRisk.Of(-4, 0.8);
    private static readonly BatchPrevalence Batch = Risk.For(AtRisk);
    private static readonly FarmLesionRate Farm = FarmLesionRate.Learn(LesionInspection.Of(100, 2));
    private static readonly BirdPrevalence OnePercent = BirdPrevalence.FromPercent(1);
    private static readonly Probability None = Probability.FromFraction(0), Half = Probability.FromFraction(0.5), All = Probability.FromFraction(1);
    private static readonly SaleSplit Sale = SaleSplit.Of(100, 100);
    private static readonly MeatAtRisk Meat = MeatAtRisk.OfLiveWeight(Mass.FromKilograms(2.5));

    public static TheoryData<string, Action> Senseless => new()
    {
        { "red", () => LesionCounts.Of(red: -1) },
        { "pink", () => LesionCounts.Of(pink: -1) },
        { "green", () => LesionCounts.Of(green: -1) },
        { "grey", () => LesionCounts.Of(grey: -1) },
        { "found", () => LesionDating.Of(null!, Killed, Hatched, Sex.Mixed) },
        { "found", () => LesionDating.Among(null!, Killed, Hatched, Log) },
        { "log", () => LesionDating.Among(Found, Killed, Hatched, null!) },
        { "log", () => LesionDating.Among(Found, Killed, Hatched, DisturbanceLog.Of()) },
        { "level", () => LesionDating.Of(Found, Killed, Hatched, Sex.Mixed).DaysBefore(1) },
        { "log", () => EventRisk.MeatType.For(null!, Age.FromDays(56), Sex.Mixed) },
        { "level", () => EventRisk.MeatType.For(Log, Age.FromDays(56), Sex.Mixed, level: 0) },
        { "likelyShare", () => FlappingDose.Between(Half, None, All, 1, 2, 3) },
        { "likelyShare", () => FlappingDose.Between(None, All, Half, 1, 2, 3) },
        { "lowCycles", () => FlappingDose.Between(None, Half, All, -1, 2, 3) },
        { "highCycles", () => FlappingDose.Between(None, Half, All, 1, 2, double.PositiveInfinity) },
        { "likelyCycles", () => FlappingDose.Between(None, Half, All, 1, 0.9, 3) },
        { "likelyCycles", () => FlappingDose.Between(None, Half, All, 1, 3.1, 3) },
        { "cycles", () => FlappingResponse.At(-0.1) },
        { "cycles", () => FlappingResponse.RangeAt(-0.1, 0.9) },
        { "level", () => FlappingResponse.RangeAt(1, 1) },
        { "share", () => BirdsToOpen.ToFind(BirdPrevalence.FromPercent(0)) },
        { "confidenceLevel", () => BirdsToOpen.ToFind(OnePercent, 1) },
        { "flock", () => BirdsToOpen.ToFind(OnePercent, flock: 0) },
        { "detection", () => BirdsToOpen.ToFind(OnePercent, detection: None) },
        { "intraclassCorrelation", () => BirdsToOpen.ToFind(OnePercent, intraclassCorrelation: 1) },
        { "intraclassCorrelation", () => BirdsToOpen.ToFind(OnePercent, intraclassCorrelation: -0.01) },
        { "inspections", () => FarmLesionRate.Learn(null!) },
        { "level", () => Farm.Level(1) },
        { "level", () => Farm.LongRunRate(0) },
        { "level", () => Farm.BetweenBatchesLogit(1) },
        { "opened", () => FoundShare.Of(0, 0) },
        { "found", () => FoundShare.Of(11, 10) },
        { "found", () => FoundShare.Of(-1, 10) },
        { "level", () => FoundShare.Of(1, 10, 1) },
        { "opened", () => LesionInspection.Of(0, 0) },
        { "found", () => LesionInspection.Of(10, 11) },
        { "found", () => LesionInspection.Of(10, -1) },
        { "batch", () => LesionInspection.Of(10, 1, " ") },
        { "detection", () => LesionInspection.Of(10, 1, detection: None) },
        { "lesions", () => ChangeWorth.Of(null!, 0.5, 300, Money.Of(1), 300) },
        { "oddsRatio", () => ChangeWorth.Of(Batch, 0, 300, Money.Of(1), 300) },
        { "birds", () => ChangeWorth.Of(Batch, 0.5, 0, Money.Of(1), 300) },
        { "openedPerBatch", () => ChangeWorth.Of(Batch, 0.5, 300, Money.Of(1), 0) },
        { "lesions", () => LesionLoss.Of(null!, Sale, Meat, TrimRecord.SoundBirds) },
        { "sale", () => LesionLoss.Of(Batch, null!, Meat, TrimRecord.SoundBirds) },
        { "meat", () => LesionLoss.Of(Batch, Sale, null!, TrimRecord.SoundBirds) },
        { "level", () => LesionLoss.Of(Batch, Sale, Meat, TrimRecord.SoundBirds, level: 1) },
        { "oddsRatio", () => Batch.WithOdds(0) },
        { "probability", () => Batch.Quantile(All) },
        { "level", () => Batch.IntervalAt(0) },
        { "flocks", () => Batch.ChanceWorstAbove(OnePercent, 0) },
        { "birds", () => Batch.Among(0) },
        { "level", () => Batch.Among(300, 1) },
        { "inspection", () => Batch.After(null!) },
        { "probability", () => Risk.ForFarm(AtRisk).Quantile(None) },
        { "level", () => Risk.ForFarm(AtRisk).IntervalAt(1) },
        { "batches", () => Risk.ForFarm(AtRisk).ChanceWorstAbove(OnePercent, 0) },
        { "meanLogit", () => PlanningRisk.Of(-20.1, 1) },
        { "meanLogit", () => PlanningRisk.Of(5.1, 1) },
        { "betweenFlocksLogit", () => PlanningRisk.Of(-4, 0.009) },
        { "betweenFlocksLogit", () => PlanningRisk.Of(-4, 10.1) },
        { "farm", () => PlanningRisk.Learned(null!) },
        { "batch", () => Risk.For(null!) },
        { "batch", () => Risk.ForFarm(null!) },
        { "batch", () => Risk.Sensitivity(null!) },
    };

    [Theory]
    [MemberData(nameof(Senseless), DisableDiscoveryEnumeration = true)]
    public void What_makes_no_sense_is_refused_by_name(string argument, Action call) => call.Should().Throw<ArgumentException>().WithParameterName(argument);
}
