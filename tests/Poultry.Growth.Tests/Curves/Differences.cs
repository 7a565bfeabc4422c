namespace Poultry.Growth.Tests.Curves;

/// <summary>Slopes by differences, to hold analytic derivatives against.</summary>
internal static class Differences
{
    /// <summary>The slope at x by the five-point rule, whose own error falls with the fourth power of the step.</summary>
    public static double Slope(Func<double, double> function, double x, double step) =>
        ((8 * (function(x + step) - function(x - step))) - (function(x + (2 * step)) - function(x - (2 * step)))) / (12 * step);
}
