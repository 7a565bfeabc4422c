using System.Globalization;

namespace Poultry.Growth.Planning;

/// <summary>A part of a difference between forecast and actual, and what explains it.</summary>
public sealed class DifferencePart
{
    internal DifferencePart(string cause, double difference) => (Cause, Difference) = (cause, difference);

    /// <summary><c>head</c>, <c>weight</c>, <c>yield</c> or <c>weight and yield</c>.</summary>
    public string Cause { get; }

    /// <summary>How much of the difference it makes, in the unit of the figure.</summary>
    public double Difference { get; }

    /// <summary>As in <c>head -12.4</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Cause} {Difference:+0.0;-0.0;0.0}");
}
