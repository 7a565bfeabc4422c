namespace Poultry.Growth.Carcass;

/// <summary>Weighed in its pack, as the plant hands it back.</summary>
public sealed class Packed : ICarcassCondition
{
    private Packed()
    {
    }

    /// <inheritdoc/>
    public static CarcassCondition Condition => CarcassCondition.Packed;
}
