namespace Poultry.Growth.Carcass;

/// <summary>A basis with nothing left open, as a type. Ready to cook, as statistics of the United States mean it, is <c>BasisOf&lt;Chilled, With, With, Without&gt;</c>.</summary>
/// <typeparam name="TCondition">When the carcass was weighed.</typeparam>
/// <typeparam name="TNeck">Whether with the neck.</typeparam>
/// <typeparam name="TGiblets">Whether with liver, heart and gizzard.</typeparam>
/// <typeparam name="TFeet">Whether with the feet.</typeparam>
public sealed class BasisOf<TCondition, TNeck, TGiblets, TFeet> : ICarcassBasis
    where TCondition : ICarcassCondition
    where TNeck : IInclusion
    where TGiblets : IInclusion
    where TFeet : IInclusion
{
    private BasisOf()
    {
    }

    /// <inheritdoc/>
    public static CarcassBasis Basis { get; } = CarcassBasis.Of(TCondition.Condition, TNeck.Inclusion, TGiblets.Inclusion, TFeet.Inclusion);
}
