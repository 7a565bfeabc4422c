using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Json;

/// <summary>What looks wrong, where, and whether it was used.</summary>
internal sealed record FlaggedNode(IReadOnlyList<int> Lines, string Code, string Text, bool Excluded)
{
    public static IReadOnlyList<FlaggedNode> Of(WeighInReading reading) =>
        [.. reading.Suspicions.Select(suspicion => new FlaggedNode(suspicion.Lines, suspicion.Code, suspicion.Text, suspicion.IsExcluded))];
}
