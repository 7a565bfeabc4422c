using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Everything that tables, JSON and chart show of the dating of lesions.</summary>
internal sealed class DateAnswer
{
    private DateAnswer(LesionDating dating, DateOnly killed, double level) => (Dating, Killed, Level) = (dating, killed, level);

    public LesionDating Dating { get; }

    public DateOnly Killed { get; }

    public double Level { get; }

    /// <summary>Days before killing between which a lesion was made; the high one is null beyond 14.</summary>
    public Interval<int>? Days => Dating.DaysBefore(Level);

    public static IReadOnlyList<Citation> Sources => [.. LesionStages.Model.Citations.Concat(AgeSusceptibility.Model.Citations).DistinctBy(source => source.Key)];

    public static DateAnswer To(LesionCounts found, DateOnly killed, DateOnly hatched, Sex sex, DisturbanceLog? log, bool bySusceptibility, double level) => new(
        log is { Count: > 0 } ? LesionDating.Among(found, killed, hatched, log) : LesionDating.Of(found, killed, hatched, sex, bySusceptibility), killed, level);
}
