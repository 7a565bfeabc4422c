using System.Globalization;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>How well two colours are told apart: (L1 + 0.05) / (L2 + 0.05) of their relative luminances (WCAG 2.2), 1 to 21.</summary>
internal static class Contrast
{
    /// <param name="one">As in <c>#1F2933</c> or <c>rgb(31,41,51)</c>.</param>
    /// <param name="other">Likewise.</param>
    public static double Of(string one, string other)
    {
        (double a, double b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string color)
    {
        double[] parts = color.StartsWith('#')
            ? [.. Enumerable.Range(0, 3).Select(part => (double)int.Parse(color.AsSpan(1 + (2 * part), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture))]
            : [.. color[4..^1].Split(',').Select(part => double.Parse(part, CultureInfo.InvariantCulture))];
        double[] linear = [.. parts.Select(part => part / 255).Select(part => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4))];
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }
}
