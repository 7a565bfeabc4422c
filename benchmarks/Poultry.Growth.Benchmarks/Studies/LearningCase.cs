namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>A row of the study: farms alike but for their seed.</summary>
internal sealed record LearningCase(string Name, int PastBatches, bool OtherStrain, double WeighInError, int Seed)
{
    public static IReadOnlyList<LearningCase> All { get; } =
    [
        new("1 batch", 1, false, 0.02, 10_000_000),
        new("2 batches", 2, false, 0.02, 20_000_000),
        new("3 batches", 3, false, 0.02, 30_000_000),
        new("5 batches", 5, false, 0.02, 50_000_000),
        new("10 batches", 10, false, 0.02, 100_000_000),
        new("20 batches", 20, false, 0.02, 200_000_000),
        new("10 batches, new one of another strain", 10, true, 0.02, 300_000_000),
        new("5 batches, weigh-in error 4 %", 5, false, 0.04, 400_000_000),
        new("20 batches, weigh-in error 4 %", 20, false, 0.04, 500_000_000),
    ];

    /// <summary>Where weighing of the new batch stops, d.</summary>
    public static IReadOnlyList<int> Stops { get; } = [21, 28, 35];

    /// <summary>A farm of this row.</summary>
    public FarmOutcome Farm(int number) => FarmOutcome.Of(new SimulatedFarm(Seed + number, PastBatches, OtherStrain, WeighInError));
}
