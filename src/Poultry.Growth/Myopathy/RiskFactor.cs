using Poultry.Growth.Evidence;

namespace Poultry.Growth.Myopathy;

/// <summary>A risk factor with what speaks for it, what speaks against it, and what the library does.</summary>
public sealed class RiskFactor
{
    internal RiskFactor(string code, string name, FactorVerdict verdict, string inFavour, string against, string use, IReadOnlyList<Citation> sources, OddsRatio? odds = null) =>
        (Code, Name, Verdict, InFavour, Against, Use, Sources, Odds) = (code, name, verdict, inFavour, against, use, sources, odds);

    /// <summary>Stable, for programs.</summary>
    public string Code { get; }

    /// <summary>In the trade's words.</summary>
    public string Name { get; }

    /// <summary>What the evidence amounts to.</summary>
    public FactorVerdict Verdict { get; }

    /// <summary>What speaks for an effect.</summary>
    public string InFavour { get; }

    /// <summary>What speaks against one.</summary>
    public string Against { get; }

    /// <summary>What the library does with it, and where it gives no number, why.</summary>
    public string Use { get; }

    /// <summary>Where that stands.</summary>
    public IReadOnlyList<Citation> Sources { get; }

    /// <summary>The odds ratio, an assumption where it is marked so; null where there is no number: then <see cref="Use"/> says why.</summary>
    public OddsRatio? Odds { get; }

    /// <summary>Name and use.</summary>
    public override string ToString() => Name + ": " + Use;
}
