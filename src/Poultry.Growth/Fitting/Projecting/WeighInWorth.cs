using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What one more weigh-in would add: how wide the interval of the flock's mean is now, and how wide it may be expected to be then.</summary>
public sealed class WeighInWorth
{
    internal WeighInWorth(Age age, int birds, Age target, double now, double then)
    {
        (Age, Birds, Target) = (age, birds, target);
        (WidthNowFraction, WidthThenFraction) = (now, then);
    }

    /// <summary>The age of the further weigh-in.</summary>
    public Age Age { get; }

    /// <summary>How many birds it weighs.</summary>
    public int Birds { get; }

    /// <summary>The age whose mean is to be known.</summary>
    public Age Target { get; }

    /// <summary>Width of the interval now, as a part of the estimate.</summary>
    public double WidthNowFraction { get; }

    /// <summary>Width of the interval after the weigh-in, expected, as a part of the estimate of now.</summary>
    public double WidthThenFraction { get; }

    /// <summary>In one line, as in <c>30 birds at 35 d: width at 56 d from 42 % to 27 %</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{CountText.Of(Birds, "bird")} at {Age.Days:0.##} d: width at {Target.Days:0.##} d from {100 * WidthNowFraction:0} % to {100 * WidthThenFraction:0} %");
}
