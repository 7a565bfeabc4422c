using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Everything that tables, JSON and chart show of a batch against a standard.</summary>
internal sealed class CompareAnswer
{
    private CompareAnswer(WeighInReading reading, ComparedStandard standard, double level)
    {
        (Reading, Standard, Level) = (reading, standard, level);
        ByAge = standard.Shipped is { } shipped ? StandardComparison.With(reading.Series!, shipped, level) : StandardComparison.Of(reading.Series!, Table, level);
        Estimates = [.. ByAge.SelectMany(age => age.Difference?.Cautions ?? age.Ahead?.Cautions ?? []).Distinct()];
    }

    public WeighInReading Reading { get; }

    public BatchCalendar Calendar => BatchCalendar.Of(Reading);

    public ComparedStandard Standard { get; }

    /// <summary>The weights of the standard.</summary>
    public TabulatedCurve Table => Standard.Table;

    public double Level { get; }

    public IReadOnlyList<StandardDifference> ByAge { get; }

    /// <summary>Whether the standard says anything about any age or weight of the batch.</summary>
    public bool HasAnswer => ByAge.Any(age => age.Difference is not null || age.Ahead is not null);

    public IReadOnlyList<Caution> Cautions => HasAnswer ? Estimates : Table.Cautions;

    public IReadOnlyList<Citation> Sources => [.. Table.Model.Citations.Concat(StandardComparison.Model.Citations).DistinctBy(source => source.Key)];

    private IReadOnlyList<Caution> Estimates { get; }

    public static CompareAnswer To(WeighInReading reading, ComparedStandard standard, double level) => new(reading, standard, level);
}
