using System.Globalization;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Myopathy;

/// <summary>How many times a factor multiplies the odds of a lesion, with the range in which that lies and how it is known.</summary>
/// <remarks>Doubt is spread evenly over the logarithm, half of it below the value and half above: the value is the median.</remarks>
public sealed class OddsRatio
{
    internal OddsRatio(string code, string name, double value, double low, double high, HowKnown howKnown, string basis) =>
        (Code, Name, Value, Low, High, HowKnown, Basis) = (code, name, value, low, high, howKnown, basis);

    /// <summary>Stable, for programs.</summary>
    public string Code { get; }

    /// <summary>What is multiplied for, in the trade's words.</summary>
    public string Name { get; }

    /// <summary>The odds ratio used: 1 moves nothing.</summary>
    public double Value { get; }

    /// <summary>Low end of its range.</summary>
    public double Low { get; }

    /// <summary>High end of its range.</summary>
    public double High { get; }

    /// <summary>How it is known.</summary>
    public HowKnown HowKnown { get; }

    /// <summary>Why this value, in a sentence.</summary>
    public string Basis { get; }

    /// <summary>Whether no data stand behind it.</summary>
    public bool IsAssumption => HowKnown == HowKnown.Assumption;

    /// <summary>As in <c>thinning: odds x 2 (1 to 5), assumption</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Name}: odds x {Value:0.##} ({Low:0.##} to {High:0.##})") + (IsAssumption ? ", assumption" : "");

    /// <summary>Other numbers for the same factor.</summary>
    internal OddsRatio With(double value, double low, double high) => new(Code, Name, value, low, high, HowKnown, Basis);
}
