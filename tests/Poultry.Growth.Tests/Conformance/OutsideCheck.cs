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
    /// <summary>As tests list it.</summary>
    public override string ToString() => Id + ": " + What;
}
