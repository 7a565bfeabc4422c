using Poultry.Growth.Evidence;

namespace Poultry.Growth.Calculators.Json;

/// <summary>A source, and how it is known.</summary>
internal sealed record SourceNode(string Key, string Citation, string? Locator, string HowKnown)
{
    public static IReadOnlyList<SourceNode> Of(IEnumerable<Citation> sources) =>
        [.. sources.Select(source => new SourceNode(source.Key, source.Reference, source.Locator, Codes.Of(source.HowKnown)))];
}
