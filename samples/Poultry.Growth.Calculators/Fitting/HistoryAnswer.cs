using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Everything that tables, JSON and chart show of what past batches teach.</summary>
internal sealed class HistoryAnswer
{
    public HistoryAnswer(BatchHistoryReading reading, LearnedPrior learned, double level)
    {
        (Reading, Learned, Level) = (reading, learned, level);
        Own = Projection.Of(learned.Prior);
        Shipped = Projection.Of(learned.Shipped);
    }

    public BatchHistoryReading Reading { get; }

    public LearnedPrior Learned { get; }

    public double Level { get; }

    /// <summary>The next batch by the farm's own past, no bird of it weighed.</summary>
    public Projection Own { get; }

    /// <summary>The same by the shipped prior.</summary>
    public Projection Shipped { get; }

    public bool HasAnswer => Learned.Status == LearningStatus.Learned;

    public IReadOnlyList<Citation> Sources => [.. Learned.Prior.Model.Citations.Concat(Projection.Model.Citations).DistinctBy(source => source.Key)];

    /// <summary>The next batch at the weeks of sale, by the farm's own past and by the shipped prior.</summary>
    public IReadOnlyList<(ProjectedWeight Own, ProjectedWeight Shipped)> ByAge =>
        [.. UsualAges.OfSale.Select(age => (ProjectedWeight.Of(Own, age, Level), ProjectedWeight.Of(Shipped, age, Level)))];
}
