using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Standard deviations between batches: of ln A, ln k and t*, and of the mean weight in percent by age.</summary>
internal sealed record BetweenBatchesNode(double LogMatureWeight, double LogRate, double InflectionAgeDays, IReadOnlyList<BetweenAtAgeNode> ByAge)
{
    public static BetweenBatchesNode Of(LearnedPrior learned) => new(
        learned.BetweenBatches[0],
        learned.BetweenBatches[1],
        learned.BetweenBatches[2],
        [.. UsualAges.OfSale.Select(age => new BetweenAtAgeNode(age.Days, 100 * learned.BetweenBatchesAt(age)))]);
}

/// <summary>At one age.</summary>
internal sealed record BetweenAtAgeNode(double AgeDays, double Percent);
