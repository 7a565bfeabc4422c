using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>The batches that a season may hold, and what they share.</summary>
public sealed class SeasonPlan
{
    /// <summary>As the farm calls the season.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Require.Text(value); }

    /// <summary>1 to 16 batches.</summary>
    /// <exception cref="ArgumentException">None.</exception>
    public required IReadOnlyList<SeasonCandidate> Candidates { get; init => field = Require.Some(value); }

    /// <summary>What the farm and the plant can take at a time.</summary>
    public SeasonLimits Limits { get; init; } = new();

    /// <summary>As in <c>2027: 4 batches; brooder 300 birds, …</c>, in every culture.</summary>
    public override string ToString() => Name + ": " + CountText.Batches(Candidates.Count) + "; " + Limits;
}
