using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Everything that tables, JSON and chart show of a projection: asked of the library once.</summary>
internal sealed class ProjectAnswer
{
    /// <summary>The weigh-ins; null where the batch has none yet.</summary>
    public required WeighInReading? Reading { get; init; }

    /// <summary>The past batches that the prior was learned from; null where it was not.</summary>
    public required BatchHistoryReading? Past { get; init; }

    public required BatchCalendar Calendar { get; init; }

    public required Projection Projection { get; init; }

    public required double Level { get; init; }

    /// <summary>One an age, in order; never empty.</summary>
    public required IReadOnlyList<ProjectedWeight> Projections { get; init; }

    /// <summary>One an age, in order; never empty.</summary>
    public required IReadOnlyList<FlockAtAge> Flock { get; init; }

    public WeightTarget? Target { get; init; }

    /// <summary>What each would add to the mean on <see cref="BookedDay"/>.</summary>
    public required IReadOnlyList<NextWeighIn> NextWeighIns { get; init; }

    /// <summary>The last of the ages asked for: the day on which the answer is needed.</summary>
    public FlockAtAge BookedDay => Flock[^1];

    public IReadOnlyList<Caution> Cautions => Projection.Cautions;

    /// <summary>What looks wrong in the weigh-ins, and in those of past batches.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions => [.. Reading?.Suspicions ?? [], .. Past?.Suspicions ?? []];

    /// <summary>Cautions of single ages.</summary>
    public IReadOnlyList<Caution> Beyond =>
        [.. Projections.Select(projection => projection.Beyond).Append(Target?.Beyond).OfType<Caution>().Distinct()];

    public IReadOnlyList<Citation> Sources =>
        [.. Projection.Model.Citations.Concat(Projection.Prior.Model.Citations).DistinctBy(source => source.Key)];

    /// <summary>The answer; null, and a problem, where the file holds birds of another sex than the batch.</summary>
    public static ProjectAnswer? To(ProjectQuestion question, WeighInReading? reading, BatchCalendar calendar, Action<string> refuse)
    {
        if (OtherSex.IsWeighed(reading?.Series, question.Prior.Sex, refuse))
        {
            return null;
        }

        try
        {
            return Made(question, reading, calendar);
        }
        catch (ArgumentOutOfRangeException beyond) when (beyond.ParamName == "age")
        {
            refuse("the weigh-ins make no projection: " + LibraryRefusal.Said(beyond));
            return null;
        }
    }

    private static ProjectAnswer Made(ProjectQuestion question, WeighInReading? reading, BatchCalendar calendar)
    {
        WeighInSeries? series = reading?.Series;
        Projection projection = series is null ? Projection.Of(question.Prior) : Projection.Of(series, question.Prior);
        IReadOnlyList<Age> ages = question.Ages.Count > 0 ? question.Ages : series is null ? UsualAges.OfSale : UsualAges.After(series[^1].Age);
        return new()
        {
            Reading = reading,
            Past = question.Past,
            Calendar = calendar,
            Projection = projection,
            Level = question.Level,
            Projections = [.. ages.Select(age => ProjectedWeight.Of(projection, age, question.Level))],
            Flock = [.. ages.Select(age => new FlockAtAge(projection, age, question.Target, question.Bands))],
            Target = question.Target is { } weight ? WeightTarget.Of(projection, weight, question.Level) : null,
            NextWeighIns =
            [
                .. question.NextWeighIns.Select(next => new NextWeighIn(
                    projection.NextWeighInAt(next.Age, next.Birds, question.Level), projection.WeighInValue(next.Age, next.Birds, ages[^1], question.Level))),
            ],
        };
    }
}
