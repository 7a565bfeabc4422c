namespace Poultry.Growth.Carcass;

/// <summary>Weighed before chilling.</summary>
public sealed class Hot : ICarcassCondition
{
    private Hot()
    {
    }

    /// <inheritdoc/>
    public static CarcassCondition Condition => CarcassCondition.Hot;
}
