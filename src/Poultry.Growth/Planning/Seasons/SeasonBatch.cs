using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A batch that a season may hold, and the ways to raise it.</summary>
public sealed class SeasonBatch
{
    private SeasonBatch(string name, IReadOnlyList<SeasonOption> options, bool mustBeRaised) =>
        (Name, Options, MustBeRaised) = (name, options, mustBeRaised);

    /// <summary>As the farm calls it.</summary>
    public string Name { get; }

    /// <summary>The ways to raise it, one of which is taken.</summary>
    public IReadOnlyList<SeasonOption> Options { get; }

    /// <summary>Whether it is raised in any case: chicks are ordered, meat is promised.</summary>
    public bool MustBeRaised { get; }

    /// <summary>A batch that is raised only where it pays.</summary>
    /// <param name="name">As the farm calls it.</param>
    /// <param name="options">At least one.</param>
    /// <exception cref="ArgumentException">The name or the options are empty.</exception>
    public static SeasonBatch Possible(string name, IReadOnlyList<SeasonOption> options) => new(Require.Text(name), Require.Some(options), mustBeRaised: false);

    /// <summary>A batch that is raised in any case.</summary>
    /// <inheritdoc cref="Possible"/>
    public static SeasonBatch Promised(string name, IReadOnlyList<SeasonOption> options) => new(Require.Text(name), Require.Some(options), mustBeRaised: true);

    /// <summary>As in <c>June batch: 12 ways to raise it</c>, with a word where it is promised; in every culture.</summary>
    public override string ToString() => Name + (MustBeRaised ? ", promised: " : ": ") + CountText.Of(Options.Count, "way") + " to raise it";
}
