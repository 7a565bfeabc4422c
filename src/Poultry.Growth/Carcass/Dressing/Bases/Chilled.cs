namespace Poultry.Growth.Carcass;

/// <summary>Weighed after chilling.</summary>
public sealed class Chilled : ICarcassCondition
{
    private Chilled()
    {
    }

    /// <inheritdoc/>
    public static CarcassCondition Condition => CarcassCondition.Chilled;
}
