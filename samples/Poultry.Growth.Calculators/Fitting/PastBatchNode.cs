using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A past batch with its likely curve.</summary>
internal sealed record PastBatchNode(string Name, int WeighIns, int Birds, double FirstAgeDays, double LastAgeDays, double MatureWeightKg, double MeanKgAt56Days)
{
    public static PastBatchNode Of(LearnedBatch batch) => new(
        batch.Batch.Name,
        batch.Batch.WeighIns.Count,
        batch.Batch.WeighIns.Sum(weighIn => weighIn.BirdsWeighed),
        batch.Batch.WeighIns[0].Age.Days,
        batch.Batch.WeighIns[^1].Age.Days,
        batch.Curve.MatureWeight!.Value.Kilograms,
        batch.Curve.WeightAt(UsualAges.EightWeeks).Kilograms);
}
