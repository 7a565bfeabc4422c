namespace Poultry.Growth.Fitting;

/// <summary>A past batch with what learning takes from it.</summary>
internal sealed class PastRow
{
    /// <param name="batch">The batch.</param>
    /// <param name="usualVariation">Spread between birds of one sex where this batch does not tell its own.</param>
    public PastRow(PastBatch batch, double usualVariation)
    {
        Batch = batch;
        TellsSpread = batch.WeighIns.PooledCoefficientOfVariation is not null;
        Group = PastBatch.GroupOf(batch.WeighIns, new FlockSpread(batch.Kind.Sex, batch.WeighIns, ProjectionOptions.Default, usualVariation));
    }

    public PastBatch Batch { get; }

    /// <summary>Whether birds were weighed singly or with SD.</summary>
    public bool TellsSpread { get; }

    /// <summary>Empty where everything was weighed too young.</summary>
    public MixedGroup Group { get; }
}
