namespace Poultry.Growth.Carcass;

/// <summary>When a carcass was weighed, as a type: <see cref="Hot"/>, <see cref="Chilled"/> or <see cref="Packed"/>.</summary>
public interface ICarcassCondition
{
    /// <summary>The same as a value.</summary>
    static abstract CarcassCondition Condition { get; }
}
