using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// What a log of disturbances says: for each when it was and, where a dose was guessed, how many birds it harmed. It starts from an undisturbed flock; nothing adds it to a
/// <see cref="BatchPrevalence"/>, which holds average events already.
/// </summary>
public sealed class EventPrevalence
{
    internal EventPrevalence(IReadOnlyList<EventEffect> events, Estimate<BirdPrevalence>? affected, IReadOnlyList<Caution> cautions) =>
        (Events, Affected, Cautions) = (events, affected, cautions);

    /// <summary>The disturbances in order of age.</summary>
    public IReadOnlyList<EventEffect> Events { get; }

    /// <summary>The share of birds with a lesion that shows, by the likely guesses, with its range over all guesses and figures; null where no disturbance has a dose: dates, no rate.</summary>
    public Estimate<BirdPrevalence>? Affected { get; }

    /// <summary>What to mind; of outdoor birds first that there are no data.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The share of birds with its range, or that there are dates only; in every culture.</summary>
    public override string ToString() => Affected?.ToString() ?? CountText.Of(Events.Count, "disturbance") + " without a dose: dates, no share";
}
