using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Json;

/// <summary>What looks wrong, where, and whether it was used.</summary>
internal sealed record FlaggedNode(string File, IReadOnlyList<int> Lines, string Code, string Text, bool Excluded)
{
    public static IReadOnlyList<FlaggedNode> Of(IEnumerable<FileSuspicion> suspicions) =>
        [.. suspicions.Select(suspicion => new FlaggedNode(suspicion.File, suspicion.Lines, suspicion.Code, suspicion.Text, suspicion.IsExcluded))];
}
