using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Everything that tables, JSON and chart show of a season.</summary>
/// <param name="File">The season file, as typed.</param>
/// <param name="Plan">What was asked.</param>
/// <param name="Suspicions">What looks wrong in the weigh-ins of the batches.</param>
/// <param name="Season">The best season; null where the promised batches do not fit together.</param>
internal sealed record SeasonAnswer(string File, SeasonPlan Plan, IReadOnlyList<FileSuspicion> Suspicions, SeasonComparison? Season)
{
    /// <summary>Status and reason where there is no season.</summary>
    public const string NoSeason = "no-season: the promised batches do not fit together within the limits; another day for one of them, a limit raised, or a promise less.";

    public IReadOnlyList<Caution> Cautions => Season?.Cautions ?? [];

    public static IReadOnlyList<Citation> Sources => [.. SeasonComparison.Model.Citations.Concat(HarvestComparison.Model.Citations)];
}
