namespace Poultry.Growth.Carcass;

/// <summary>The part was weighed with the carcass.</summary>
public sealed class With : IInclusion
{
    private With()
    {
    }

    /// <inheritdoc/>
    public static Inclusion Inclusion => Inclusion.With;
}
