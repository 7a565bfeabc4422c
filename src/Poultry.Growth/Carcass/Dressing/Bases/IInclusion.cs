namespace Poultry.Growth.Carcass;

/// <summary>Whether a part was weighed with the carcass, as a type: <see cref="With"/> or <see cref="Without"/>.</summary>
public interface IInclusion
{
    /// <summary>The same as a value.</summary>
    static abstract Inclusion Inclusion { get; }
}
