using System.Globalization;

namespace Poultry.Growth.Myopathy;

/// <summary>How much one figure of the planning model moves the answer: the batch with that figure at either end of its range, everything else as it was.</summary>
public sealed class RiskSensitivity
{
    internal RiskSensitivity(string code, string name, double low, double high, BatchPrevalence atLow, BatchPrevalence atHigh) =>
        (Code, Name, Low, High, AtLow, AtHigh) = (code, name, low, high, atLow, atHigh);

    /// <summary>Stable, for programs.</summary>
    public string Code { get; }

    /// <summary>The figure, with its unit.</summary>
    public string Name { get; }

    /// <summary>The low end of its range, in the unit of the name.</summary>
    public double Low { get; }

    /// <summary>The high end.</summary>
    public double High { get; }

    /// <summary>The batch with the figure at the low end.</summary>
    public BatchPrevalence AtLow { get; }

    /// <summary>The batch with the figure at the high end.</summary>
    public BatchPrevalence AtHigh { get; }

    /// <summary>As in <c>odds of thinning, 1 to 2: 0.61 % of birds to 1.2 % of birds</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Name}, {Low:0.##} to {High:0.##}: {AtLow.Mean} to {AtHigh.Mean}");
}
