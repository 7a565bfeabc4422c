using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>One of the batches learned from, with the curve that its weigh-ins and the other batches together give it.</summary>
public sealed class LearnedBatch
{
    internal LearnedBatch(PastBatch batch, GrowthCurve curve) => (Batch, Curve) = (batch, curve);

    /// <summary>The batch.</summary>
    public PastBatch Batch { get; }

    /// <summary>
    /// Its most likely Gompertz curve. It exists for every batch, also where the weigh-ins alone have no optimum: few weigh-ins leave it near that of
    /// the other batches.
    /// </summary>
    public GrowthCurve Curve { get; }

    /// <summary>Name and mature weight in one line and in every culture.</summary>
    public override string ToString() => Batch.Name + ": A " + WeightText.Of(Curve.MatureWeight!.Value.Kilograms);
}
