using System.Collections;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>The disturbances of one batch, in order of age. Questions of "what if" are other logs: one without a disturbance, or with one moved.</summary>
public sealed class DisturbanceLog : IReadOnlyList<Disturbance>
{
    private readonly Disturbance[] disturbances;

    private DisturbanceLog(IEnumerable<Disturbance> disturbances) => this.disturbances = [.. disturbances.OrderBy(disturbance => disturbance.Age)];

    /// <inheritdoc/>
    public int Count => disturbances.Length;

    /// <inheritdoc/>
    public Disturbance this[int index] => disturbances[index];

    /// <summary>A log; it may be empty.</summary>
    public static DisturbanceLog Of(params IEnumerable<Disturbance> disturbances)
    {
        ArgumentNullException.ThrowIfNull(disturbances);
        return new(disturbances);
    }

    /// <summary>What if it had not happened?</summary>
    /// <param name="index">Which, from 0 in order of age.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such disturbance.</exception>
    public DisturbanceLog Without(int index)
    {
        Check(index);
        return new(disturbances.Where((_, at) => at != index));
    }

    /// <summary>What if it had happened at another age?</summary>
    /// <param name="index">Which, from 0 in order of age.</param>
    /// <param name="age">The other age.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such disturbance.</exception>
    public DisturbanceLog Moved(int index, Age age)
    {
        Check(index);
        return new(disturbances.Select((disturbance, at) => at == index ? disturbance.MovedTo(age) : disturbance));
    }

    /// <inheritdoc/>
    public IEnumerator<Disturbance> GetEnumerator() => ((IEnumerable<Disturbance>)disturbances).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>How many disturbances, in every culture.</summary>
    public override string ToString() => CountText.Of(Count, "disturbance");

    private void Check(int index) => Require.Between(index, 0, Count - 1, "", nameof(index));
}
