using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>A batch that a season may hold, with every day on which its chicks may come.</summary>
public sealed class SeasonCandidate
{
    /// <summary>As the farm calls it.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Require.Text(value); }

    /// <summary>The batch once for each day on which its chicks may come, each with the days of killing that are considered; at least one.</summary>
    /// <exception cref="ArgumentException">None.</exception>
    public required IReadOnlyList<BatchPlan> Starts { get; init => field = Require.Some(value); }

    /// <summary>Shelters that it takes from moving out to killing, and for their rest; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Shelters { get; init => field = Require.AtLeast(value, 0, nameof(Shelters)); }

    /// <summary>Fresh ground that it uses up; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Area Ground { get; init => field = Area.FromSquareMeters(Require.NotNegative(value.SquareMeters, "m2", nameof(Ground))); }

    /// <summary>Whether it is raised in any case: chicks are ordered, meat is promised.</summary>
    public bool IsPromised { get; init; }

    /// <summary>As in <c>June batch: chicks on 3 days, 2 shelters</c>, with a word where it is promised; in every culture.</summary>
    public override string ToString() => 
        Name + (IsPromised ? ", promised: chicks on " : ": chicks on ") + CountText.Of(Starts.Count, "day") + ", " + CountText.Of(Shelters, "shelter");
}
