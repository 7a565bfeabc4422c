using System.Collections;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>The weigh-ins of one batch by age, of any kind and mixed freely; several a day are normal.</summary>
/// <remarks>Never empty, never changed. Weigh-ins of the same age keep the order in which they were given.</remarks>
public sealed class WeighInSeries : IReadOnlyList<WeighIn>
{
    private readonly WeighIn[] weighIns;

    private WeighInSeries(WeighIn[] weighIns) => this.weighIns = weighIns;

    /// <summary>How many weigh-ins.</summary>
    public int Count => weighIns.Length;

    /// <summary>How many birds were weighed, a bird weighed on two days counted twice.</summary>
    public long BirdsWeighed => weighIns.Sum(weighIn => (long)weighIn.BirdsWeighed);

    /// <summary>
    /// The coefficient of variation between the birds of one weigh-in, over all weigh-ins that show it: c² = Σ (n - 1) c² / Σ (n - 1).
    /// A fraction (0.10 is 10 %); null where no weigh-in has a spread, and where all birds of each weigh the same: a scale too coarse to tell them apart says nothing.
    /// </summary>
    public double? PooledCoefficientOfVariation => Spread.PooledVariation(weighIns);

    /// <summary>What looks wrong in these weigh-ins, by age: flagged and kept. Found when first asked for.</summary>
    public IReadOnlyList<Suspicion> Suspicions => field ??= SuspicionFinder.In(this);

    /// <summary>The weigh-in at a place in the order of age.</summary>
    /// <param name="index">0 for the youngest.</param>
    public WeighIn this[int index] => weighIns[index];

    /// <summary>Puts weigh-ins in the order of age.</summary>
    /// <param name="weighIns">At least one, in any order.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static WeighInSeries Of(params ReadOnlySpan<WeighIn> weighIns) => Of((IEnumerable<WeighIn>)weighIns.ToArray());

    /// <inheritdoc cref="Of(ReadOnlySpan{WeighIn})"/>
    public static WeighInSeries Of(IEnumerable<WeighIn> weighIns)
    {
        WeighIn[] byAge = [.. weighIns.OrderBy(weighIn => weighIn.Age)];
        Require.Some<WeighIn>(byAge, nameof(weighIns));
        return new WeighInSeries(byAge);
    }

    /// <summary>The series without what was flagged: a flagged bird leaves its weigh-in, a flagged weigh-in leaves the series.</summary>
    /// <param name="suspicions">Suspicions of this series.</param>
    /// <exception cref="ArgumentException">One belongs to another series, or nothing would be left.</exception>
    public WeighInSeries Without(params IEnumerable<Suspicion> suspicions)
    {
        ILookup<WeighIn, int?> flagged = suspicions.ToLookup(suspicion => suspicion.WeighIn, suspicion => suspicion.BirdIndex);
        if (flagged.FirstOrDefault(group => !weighIns.Contains(group.Key)) is { } stranger)
        {
            throw new ArgumentException(
                "The weigh-in at " + stranger.Key.Age + " is not of this series; expected its own suspicions.", nameof(suspicions));
        }

        List<WeighIn> rest = [];
        foreach (WeighIn weighIn in weighIns)
        {
            if (!flagged.Contains(weighIn))
            {
                rest.Add(weighIn);
            }
            else if (!flagged[weighIn].Contains(null)
                && weighIn.WithoutBirds(flagged[weighIn].Select(bird => bird!.Value).ToHashSet()) is { } others)
            {
                rest.Add(others);
            }
        }

        return rest.Count > 0 ? Of(rest) : throw new ArgumentException("No weigh-in would be left; expected at least one.", nameof(suspicions));
    }

    /// <inheritdoc/>
    public IEnumerator<WeighIn> GetEnumerator() => ((IEnumerable<WeighIn>)weighIns).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>One line, as in <c>7 weigh-ins of 86 birds, 7 d to 49 d</c>, in every culture.</summary>
    public override string ToString() =>
        CountText.Of(Count, "weigh-in") + " of " + CountText.Of(BirdsWeighed, "bird") + ", " + weighIns[0].Age + " to " + weighIns[^1].Age;
}
