using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>A line of a mass balance.</summary>
public sealed class BalanceLine
{
    internal BalanceLine(string name, BalanceKind kind, double kilograms, double lowKilograms, double highKilograms, double liveKilograms)
    {
        (Name, Kind, Kilograms) = (name, kind, kilograms);
        Weight = LikelyRange<Mass>.Of(
            Mass.FromKilograms(Math.Min(kilograms, Math.Min(lowKilograms, highKilograms))),
            Mass.FromKilograms(kilograms),
            Mass.FromKilograms(Math.Max(kilograms, Math.Max(lowKilograms, highKilograms))));
        PercentOfLive = 100 * kilograms / liveKilograms;
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>What it is.</summary>
    public BalanceKind Kind { get; }

    /// <summary>What it weighs; low and high as the dressing ratio and the loss off feed may be off. The lows of a balance do not belong together.</summary>
    public LikelyRange<Mass> Weight { get; }

    /// <summary>As a percentage of the full-fed live weight.</summary>
    public double PercentOfLive { get; }

    internal double Kilograms { get; }

    /// <summary>In one line, as in <c>carcass: 612 kg (70.2 % of live)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name}: {WeightText.Of(Kilograms)}, {PercentOfLive:0.#} % of live");
}
