using System.Collections;
using Poultry.Growth.Feeding;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>The finished batches of a farm, of any kinds, in the order given: all that the next batch's plan may learn from.</summary>
/// <remarks>May be empty; never changed.</remarks>
public sealed class FarmHistory : IReadOnlyList<FarmBatch>
{
    private readonly FarmBatch[] batches;

    private readonly string? leftOut;

    private FarmHistory(FarmBatch[] batches, string? leftOut = null) => (this.batches, this.leftOut) = (batches, leftOut);

    /// <summary>How many batches.</summary>
    public int Count => batches.Length;

    /// <summary>A batch by its place in the order given.</summary>
    /// <param name="index">0 for the first.</param>
    public FarmBatch this[int index] => batches[index];

    /// <summary>The history of a farm.</summary>
    /// <param name="batches">Any number, none included.</param>
    /// <exception cref="ArgumentException">Two have the same name.</exception>
    public static FarmHistory Of(params IEnumerable<FarmBatch> batches)
    {
        FarmBatch[] all = [.. batches];
        return all.GroupBy(batch => batch.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } twice
            ? throw new ArgumentException($"Batch \"{twice.Key}\" stands there twice; expected each batch once.", nameof(batches))
            : new(all);
    }

    /// <summary>The history with a batch more; one of the same name gives way.</summary>
    public FarmHistory With(FarmBatch batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return new([.. Without(batch.Name), batch]);
    }

    /// <summary>The history without the batch of a name: nothing is learned from a batch for its own forecast.</summary>
    public FarmHistory Without(string name)
    {
        bool IsOf(FarmBatch batch) => batch.Name.Equals(name?.Trim(), StringComparison.OrdinalIgnoreCase);
        return new([.. batches.Where(batch => !IsOf(batch))], batches.FirstOrDefault(IsOf)?.Name);
    }

    /// <summary>What the batches of one kind teach; those of another strain, system or sex are passed over.</summary>
    /// <param name="kind">The kind of the next batch.</param>
    /// <param name="growth">What is known of its growth without any batch.</param>
    /// <param name="survival">What is known of its losses without any batch.</param>
    /// <param name="model">The model of its feed.</param>
    /// <exception cref="ArgumentException">The prior is of birds of another sex.</exception>
    public FarmLearning Learn(BatchKind kind, GrowthPrior growth, Survival survival, EnergyModel model)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new([.. batches.Where(batch => batch.Kind.Equals(kind))], kind, growth, survival, model)
        {
            OfOtherKinds = batches.Count(batch => !batch.Kind.Equals(kind)), LeftOut = leftOut,
        };
    }

    /// <inheritdoc/>
    public IEnumerator<FarmBatch> GetEnumerator() => ((IEnumerable<FarmBatch>)batches).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>As in <c>7 batches</c>, in every culture.</summary>
    public override string ToString() => CountText.Batches(Count);
}
