namespace Poultry.Growth.Tests;

/// <summary>Assertions on what a check found.</summary>
internal static class Findings
{
    /// <summary>Fails with every finding, one a line: whoever moves a wall wants to see all of the cracks.</summary>
    public static void ShouldBeNone<T>(this IEnumerable<T> findings, string because = "") =>
        string.Join('\n', findings).Should().BeEmpty(because);
}
