using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Everything that tables and JSON show of disturbances.</summary>
internal sealed class EventsAnswer
{
    private EventsAnswer(DisturbanceLog log, Age killAge, Sex sex, bool isOutdoor, double level)
    {
        (KillAge, Level) = (killAge, level);
        Prevalence = EventRisk.MeatType.For(log, killAge, sex, isOutdoor, level);
        Without = [.. log.Select((disturbance, at) => disturbance.Dose is null ? null : EventRisk.MeatType.For(log.Without(at), killAge, sex, isOutdoor, level).Affected?.Value)];
    }

    public Age KillAge { get; }

    public double Level { get; }

    public EventPrevalence Prevalence { get; }

    /// <summary>For each disturbance: the share of birds had it alone not happened; null without a dose, or where no other has one.</summary>
    public IReadOnlyList<BirdPrevalence?> Without { get; }

    public static IReadOnlyList<Citation> Sources =>
    [
        .. EventRisk.Model.Citations.Concat(FlappingResponse.Model.Citations).Concat(AgeSusceptibility.Model.Citations).Concat(LesionVisibility.Model.Citations).Concat(LesionSides.Model.Citations)
            .DistinctBy(source => source.Key),
    ];

    public static EventsAnswer To(DisturbanceLog log, Age killAge, Sex sex, bool isOutdoor, double level) => new(log, killAge, sex, isOutdoor, level);
}
