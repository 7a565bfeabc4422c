namespace Poultry.Growth.Carcass;

/// <summary>The part was taken off before.</summary>
public sealed class Without : IInclusion
{
    private Without()
    {
    }

    /// <inheritdoc/>
    public static Inclusion Inclusion => Inclusion.Without;
}
