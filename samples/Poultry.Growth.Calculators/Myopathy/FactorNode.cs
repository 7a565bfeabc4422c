using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>A risk factor with its verdict.</summary>
internal sealed record FactorNode(string Code, string Name, string Verdict, string For, string Against, string Use, OddsNode? OddsRatio, IReadOnlyList<SourceNode> Sources)
{
    public static FactorNode Of(RiskFactor factor) => new(
        factor.Code, factor.Name, Codes.Of(factor.Verdict), factor.InFavour, factor.Against, factor.Use, factor.Odds is { } odds ? OddsNode.Of(odds) : null, SourceNode.Of(factor.Sources));
}
