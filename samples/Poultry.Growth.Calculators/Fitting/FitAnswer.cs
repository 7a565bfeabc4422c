using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Everything that tables, JSON and chart show of a fit: asked of the library once.</summary>
internal sealed class FitAnswer
{
    private static readonly Caution NoProfileLimits = new(
        "no-profile-limits", "With a given hatch weight there are no profile limits of the parameters; use their standard errors.");

    public required WeighInReading Reading { get; init; }

    public BatchCalendar Calendar => BatchCalendar.Of(Reading);

    public required GrowthFit Fit { get; init; }

    public required double Level { get; init; }

    /// <summary>Profile limits of the parameters; null where there are none.</summary>
    public IReadOnlyList<Interval<double>>? Limits { get; init; }

    /// <summary>The ages asked for, or the usual ones.</summary>
    public required IReadOnlyList<Age> Ages { get; init; }

    /// <summary>One an age; none without a curve.</summary>
    public IReadOnlyList<ProjectedWeight> Projections { get; init; } = [];

    public WeightTarget? Target { get; init; }

    public IReadOnlyList<ComparedFamily> Comparison { get; init; } = [];

    /// <summary>The caution of every value beyond the last weigh-in; null where there is none.</summary>
    public Caution? Beyond => Projections.Select(projection => projection.Beyond).FirstOrDefault(caution => caution is not null)
        ?? Target?.Beyond;

    /// <summary>Cautions about the fit, without <see cref="Beyond"/>.</summary>
    public IReadOnlyList<Caution> Cautions => Fit.Curve is not null && Limits is null ? [.. Fit.Cautions, NoProfileLimits] : Fit.Cautions;

    public IReadOnlyList<Citation> Sources =>
        [.. Comparison.Select(row => row.Fit.Family.Model).Prepend(Fit.Family.Model).SelectMany(model => model.Citations).DistinctBy(source => source.Key)];

    /// <summary>The answer; null, and a problem, where an age asked for has no weight.</summary>
    public static FitAnswer? To(FitQuestion question, WeighInReading reading, Action<string> refuse)
    {
        GrowthFit fit = GrowthFit.Of(reading.Series!, question.Family, question.Errors, question.HatchWeight);
        IReadOnlyList<ComparedFamily> comparison = question.Compare ? FamilyComparison.Of(reading.Series!, question.Errors, question.HatchWeight) : [];
        IReadOnlyList<Age> ages = question.Ages.Count > 0 ? question.Ages : UsualAges.After(reading.Series![^1].Age);
        if (fit.Curve is null)
        {
            return new() { Reading = reading, Fit = fit, Level = question.Level, Ages = ages, Comparison = comparison };
        }

        List<ProjectedWeight> projections = [];
        foreach (Age age in ages)
        {
            if (ProjectedWeight.Of(fit, age, question.Level) is { } projection)
            {
                projections.Add(projection);
            }
            else
            {
                refuse("--at: the fitted " + fit.Family.Model.Name + " has no weight above 0 at " + age + "; expected a later age");
                return null;
            }
        }

        return new()
        {
            Reading = reading,
            Fit = fit,
            Level = question.Level,
            Limits = fit.HatchWeight is null ? fit.ProfileLimits(question.Level) : null,
            Ages = ages,
            Projections = projections,
            Target = question.Target is { } weight ? WeightTarget.Of(fit, weight, question.Level) : null,
            Comparison = comparison,
        };
    }
}
