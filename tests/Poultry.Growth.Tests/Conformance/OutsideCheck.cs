using Poultry.Growth.Evidence;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>A figure from outside this project, and the library's own.</summary>
/// <param name="Id">Short and unique in its room.</param>
/// <param name="What">What is computed, from what.</param>
/// <param name="Source">Author, year, where, with table or page.</param>
/// <param name="HowKnown">How we know what the source says.</param>
/// <param name="Unit">The unit of both figures; <c>-</c> for a pure number.</param>
/// <param name="Expected">What the source says.</param>
/// <param name="Tolerance">In the same unit; half the last printed digit unless <paramref name="What"/> or the list's header argues another.</param>
/// <param name="Computed">What the library says.</param>
internal sealed record OutsideCheck(
    string Id, string What, string Source, HowKnown HowKnown, string Unit, double Expected, double Tolerance, Func<double> Computed)
{
    // The test and the pages ask for it: worked out once.
    private readonly Lazy<double> got = new(Computed);

    /// <summary>What the figure is; said of a check where how it is known does not say it already.</summary>
    public CheckKind Kind { get; init; } = HowKnown switch
    {
        HowKnown.ReadInSource => CheckKind.PublishedTable,
        HowKnown.Memory => CheckKind.Memory,
        HowKnown.CommonPractice => CheckKind.CommonPractice,
        _ => CheckKind.WorkedExample,
    };

    /// <summary>How many figures the row speaks for.</summary>
    public Func<int> Figures { get; init; } = () => 1;

    /// <summary>What the library says.</summary>
    public double Got => got.Value;

    public static OutsideCheck Read(string id, string what, string source, string unit, double expected, double tolerance, Func<double> computed) =>
        new(id, what, source, HowKnown.ReadInSource, unit, expected, tolerance, computed);

    public static OutsideCheck Derived(string id, string what, string source, string unit, double expected, double tolerance, Func<double> computed) =>
        new(id, what, source, HowKnown.Derived, unit, expected, tolerance, computed);

    public static OutsideCheck Recalled(string id, string what, string source, string unit, double expected, double tolerance, Func<double> computed) =>
        new(id, what, source, HowKnown.Memory, unit, expected, tolerance, computed);

    /// <summary>Worked out by another library or program.</summary>
    public static OutsideCheck Recomputed(string id, string what, string source, string unit, double expected, double tolerance, Func<double> computed) =>
        Derived(id, what, source, unit, expected, tolerance, computed) with { Kind = CheckKind.ReferenceLibrary };

    /// <summary>As tests list it.</summary>
    public override string ToString() => Id + ": " + What;
}
