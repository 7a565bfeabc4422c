using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>
/// What was on the scale when a carcass was weighed, and when. Two weights, or two ratios, on different bases are not comparable: a neck is a few
/// percent of a bird. Every weight and ratio of a carcass carries its basis as a value; <see cref="ICarcassBasis"/> makes it a type.
/// </summary>
public sealed class CarcassBasis : IEquatable<CarcassBasis>
{
    private CarcassBasis(CarcassCondition condition, Inclusion neck, Inclusion giblets, Inclusion feet) =>
        (Condition, Neck, Giblets, Feet) = (condition, neck, giblets, feet);

    /// <summary>A carcass of which nothing else is said.</summary>
    public static CarcassBasis NotStated { get; } = new(CarcassCondition.NotStated, Inclusion.NotStated, Inclusion.NotStated, Inclusion.NotStated);

    /// <summary>When it was weighed.</summary>
    public CarcassCondition Condition { get; }

    /// <summary>Whether the neck was weighed with it.</summary>
    public Inclusion Neck { get; }

    /// <summary>Whether liver, heart and gizzard were weighed with it.</summary>
    public Inclusion Giblets { get; }

    /// <summary>Whether the feet were weighed with it.</summary>
    public Inclusion Feet { get; }

    /// <summary>Whether something about it is not known.</summary>
    internal bool IsIncomplete =>
        Condition == CarcassCondition.NotStated || Neck == Inclusion.NotStated || Giblets == Inclusion.NotStated || Feet == Inclusion.NotStated;

    /// <summary>A basis in words.</summary>
    /// <param name="condition">When the carcass was weighed.</param>
    /// <param name="neck">Whether the neck was weighed with it.</param>
    /// <param name="giblets">Whether the giblets were.</param>
    /// <param name="feet">Whether the feet were.</param>
    /// <exception cref="ArgumentOutOfRangeException">One is not a named value.</exception>
    public static CarcassBasis Of(
        CarcassCondition condition, Inclusion neck = Inclusion.NotStated, Inclusion giblets = Inclusion.NotStated, Inclusion feet = Inclusion.NotStated) =>
        new(Require.Named(condition), Require.Named(neck), Require.Named(giblets), Require.Named(feet));

    /// <summary>The same parts, weighed at another time.</summary>
    public CarcassBasis In(CarcassCondition condition) => new(Require.Named(condition), Neck, Giblets, Feet);

    /// <summary>Whether this basis, as far as it is stated, says the same as another.</summary>
    /// <param name="other">The basis that may say more.</param>
    public bool Covers(CarcassBasis other)
    {
        ArgumentNullException.ThrowIfNull(other);
        static bool Agree<T>(T here, T there, T unknown)
            where T : struct, Enum => here.Equals(unknown) || here.Equals(there);
        return Agree(Condition, other.Condition, CarcassCondition.NotStated) && Agree(Neck, other.Neck, Inclusion.NotStated)
            && Agree(Giblets, other.Giblets, Inclusion.NotStated) && Agree(Feet, other.Feet, Inclusion.NotStated);
    }

    /// <inheritdoc/>
    public bool Equals(CarcassBasis? other) =>
        other is not null && Condition == other.Condition && Neck == other.Neck && Giblets == other.Giblets && Feet == other.Feet;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CarcassBasis);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Condition, Neck, Giblets, Feet);

    /// <summary>As in <c>packed, with neck, without giblets, feet not stated</c>.</summary>
    public override string ToString()
    {
        string condition = Condition switch
        {
            CarcassCondition.Hot => "hot",
            CarcassCondition.Chilled => "chilled",
            CarcassCondition.Packed => "packed",
            _ => "hot or chilled not stated",
        };
        return condition + ", " + Words(Neck, "neck") + ", " + Words(Giblets, "giblets") + ", " + Words(Feet, "feet");
    }

    /// <summary>Refuses another basis, by name.</summary>
    internal void RequireSame(CarcassBasis expected, string subject)
    {
        if (!Equals(expected))
        {
            throw new ArgumentException(subject + " " + this + "; expected " + expected + ".", nameof(expected));
        }
    }

    private static string Words(Inclusion inclusion, string part) => inclusion switch
    {
        Inclusion.With => "with " + part,
        Inclusion.Without => "without " + part,
        _ => part + " not stated",
    };
}
