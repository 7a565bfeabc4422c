using Poultry.Growth.Evidence;

namespace Poultry.Growth.Calculators.Json;

/// <summary>A caution.</summary>
internal sealed record CautionNode(string Code, string Text)
{
    public static IReadOnlyList<CautionNode> Of(IEnumerable<Caution> cautions) => [.. cautions.Select(caution => new CautionNode(caution.Code, caution.Text))];
}
