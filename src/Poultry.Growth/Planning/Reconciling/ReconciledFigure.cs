using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A figure of the forecast beside what came of it.</summary>
/// <remarks>Figures have different units, so they are plain numbers here, in the <see cref="Unit"/> stated.</remarks>
public sealed class ReconciledFigure
{
    internal ReconciledFigure(string code, string name, ReconciledUnit unit, Estimate<double> forecast, double? actual) =>
        (Code, Name, Unit, Forecast, Interval, Actual) = (code, name, unit, forecast.Value, forecast.Interval, actual);

    /// <summary>For programs, as in <c>mean-weight</c>; the same for all packs.</summary>
    public string Code { get; }

    /// <summary>What it is, as in <c>mean live weight, full-fed</c>.</summary>
    public string Name { get; }

    /// <summary>What the numbers count.</summary>
    public ReconciledUnit Unit { get; }

    /// <summary>The mean of the forecast.</summary>
    public double Forecast { get; }

    /// <summary>Where the forecast says it lies with the chance that it claims.</summary>
    public Interval<double> Interval { get; }

    /// <summary>What came of it; null where that was not measured.</summary>
    public double? Actual { get; }

    /// <summary>Actual less forecast; null where nothing was measured.</summary>
    public double? Difference => Actual - Forecast;

    /// <summary>Whether it lies within the interval; null where nothing was measured.</summary>
    public bool? IsInside => Actual is { } actual ? Interval.Contains(actual) : null;

    /// <summary>What explains the difference, each with its part; empty where nothing was worked out.</summary>
    public IReadOnlyList<DifferencePart> Parts { get; internal init; } = [];

    /// <summary>The difference less all parts: what no other figure explains.</summary>
    public double? LeftOpen => Difference - Parts.Sum(part => part.Difference);

    /// <summary>As in <c>head at loading: 259, forecast 263 (235 to 282), inside</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Name}: {(Actual is { } actual ? string.Create(CultureInfo.InvariantCulture, $"{actual:0.##}, ") : "")}forecast {Forecast:0.##} ({Interval.Low:0.##} to {Interval.High:0.##}){IsInside switch { true => ", inside", false => ", outside", _ => "" }}");
}
