using System.Collections;
using Poultry.Growth.Primitives;
namespace Poultry.Growth.Fitting;

/// <summary>The earlier batches of a farm, of any kinds, in the order given.</summary>
/// <remarks>May be empty; never changed.</remarks>
public sealed class BatchHistory : IReadOnlyList<PastBatch>
{
    private readonly PastBatch[] batches;

    private BatchHistory(PastBatch[] batches) => this.batches = batches;

    /// <summary>How many batches.</summary>
    public int Count => batches.Length;

    /// <summary>The kinds of batches among them, in the order in which they first come.</summary>
    public IReadOnlyList<BatchKind> Kinds => [.. batches.Select(batch => batch.Kind).Distinct()];

    /// <summary>A batch by its place in the order given.</summary>
    /// <param name="index">0 for the first.</param>
    public PastBatch this[int index] => batches[index];

    /// <summary>The history of a farm.</summary>
    /// <param name="batches">Any number, none included.</param>
    public static BatchHistory Of(params IEnumerable<PastBatch> batches)
    {
        PastBatch[] all = [.. batches];
        foreach (PastBatch batch in all)
        {
            ArgumentNullException.ThrowIfNull(batch, nameof(batches));
        }

        return new(all);
    }

    /// <summary>The batches of one kind.</summary>
    public BatchHistory OfKind(BatchKind kind) => new([.. batches.Where(batch => batch.Kind.Equals(kind))]);

    /// <summary>What the batches of one kind teach; where there is none, the shipped prior.</summary>
    /// <param name="kind">The kind of the next batch.</param>
    /// <param name="shipped">What is known without any batch, of birds of that sex.</param>
    /// <exception cref="ArgumentException">The shipped prior is of birds of another sex.</exception>
    public LearnedPrior Learn(BatchKind kind, GrowthPrior shipped) => LearnedPrior.From(kind, OfKind(kind), shipped);

    /// <inheritdoc/>
    public IEnumerator<PastBatch> GetEnumerator() => ((IEnumerable<PastBatch>)batches).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>As in <c>7 batches of 2 kinds</c>, in every culture.</summary>
    public override string ToString() => CountText.Batches(Count) + " of " + CountText.Of(Kinds.Count, "kind");
}
