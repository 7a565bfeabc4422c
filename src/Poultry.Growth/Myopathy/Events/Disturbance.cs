using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>Something that frightened or handled the birds: how old they were, and what it was. Bouts within about ten minutes are one disturbance.</summary>
public sealed class Disturbance
{
    private Disturbance(Age age, string what, FlappingDose? dose) => (Age, What, Dose) = (age, what, dose);

    /// <summary>How old the birds were.</summary>
    public Age Age { get; }

    /// <summary>What happened, in the grower's words.</summary>
    public string What { get; }

    /// <summary>How much flapping, where the user wants to guess; without it the disturbance has a date and no rate.</summary>
    public FlappingDose? Dose { get; }

    /// <summary>A disturbance.</summary>
    /// <param name="age">How old the birds were.</param>
    /// <param name="what">What happened.</param>
    /// <param name="dose">How much flapping; null where nobody can say.</param>
    /// <exception cref="ArgumentException">It does not say what happened.</exception>
    public static Disturbance At(Age age, string what, FlappingDose? dose = null) => new(age, Require.Text(what), dose);

    /// <summary>Age and what, in every culture.</summary>
    public override string ToString() => Age + ": " + What + (Dose is null ? "" : " (" + Dose + ")");

    /// <summary>The same on another day.</summary>
    internal Disturbance MovedTo(Age age) => new(age, What, Dose);
}
