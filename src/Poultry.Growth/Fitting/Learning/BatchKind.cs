using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What makes batches alike: strain, system and sex. Batches of different kinds are learned apart.</summary>
/// <remarks>Names are compared without regard to upper and lower case or to space at their ends.</remarks>
public sealed class BatchKind : IEquatable<BatchKind>
{
    private BatchKind(string? strain, string? system, Sex sex) => (Strain, System, Sex) = (strain, system, sex);

    /// <summary>The birds' strain; null where it is not stated.</summary>
    public string? Strain { get; }

    /// <summary>How they were kept, as in <c>movable shelter</c>; null where it is not stated.</summary>
    public string? System { get; }

    /// <summary>The sex of the birds.</summary>
    public Sex Sex { get; }

    /// <summary>A kind of batch.</summary>
    /// <param name="strain">The birds' strain; null where it is not stated.</param>
    /// <param name="system">How they are kept; null where it is not stated.</param>
    /// <param name="sex">Mixed where nothing else is said.</param>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public static BatchKind Of(string? strain = null, string? system = null, Sex sex = Sex.Mixed) => new(Name(strain, nameof(strain)), Name(system, nameof(system)), sex);

    /// <inheritdoc/>
    public bool Equals(BatchKind? other) =>
        other is not null
        && Sex == other.Sex
        && string.Equals(Strain, other.Strain, StringComparison.OrdinalIgnoreCase)
        && string.Equals(System, other.System, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BatchKind);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = new();
        hash.Add(Strain, StringComparer.OrdinalIgnoreCase);
        hash.Add(System, StringComparer.OrdinalIgnoreCase);
        hash.Add(Sex);
        return hash.ToHashCode();
    }

    /// <summary>As in <c>strain A, movable shelter, cockerels</c>, in every culture; what is not stated is left out.</summary>
    public override string ToString()
    {
        string whose = Sex switch { Sex.Male => "cockerels", Sex.Female => "pullets", _ => "both sexes" };
        return string.Join(", ", new[] { Strain, System, whose }.Where(part => part is not null));
    }

    private static string? Name(string? name, string argument) => name is null ? null : Require.Text(name, argument).Trim();
}
