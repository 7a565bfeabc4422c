using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Evidence;

/// <summary>Where a model was measured: outside it an answer carries a <see cref="Caution"/>.</summary>
public sealed class ValidityRange
{
    /// <summary>States a range.</summary>
    /// <param name="quantity">What is limited, as in <c>age</c>.</param>
    /// <param name="low">Lowest value measured, finite, in <paramref name="unit"/>.</param>
    /// <param name="high">Highest value measured, in <paramref name="unit"/>; not below <paramref name="low"/>.</param>
    /// <param name="unit">The unit of both, as in <c>d</c>.</param>
    /// <exception cref="ArgumentException">A text is empty, or the bounds are crossed or not finite.</exception>
    public ValidityRange(string quantity, double low, double high, string unit)
    {
        Quantity = Require.Text(quantity);
        Unit = Require.Text(unit);
        Low = Require.Finite(low, unit);
        High = Require.Between(high, low, double.MaxValue, unit);
    }

    /// <summary>What is limited.</summary>
    public string Quantity { get; }

    /// <summary>Lowest value measured, finite, in <see cref="Unit"/>.</summary>
    public double Low { get; }

    /// <summary>Highest value measured, in <see cref="Unit"/>.</summary>
    public double High { get; }

    /// <summary>The unit of both.</summary>
    public string Unit { get; }

    /// <summary>Whether a value, in <see cref="Unit"/>, lies inside, bounds included.</summary>
    /// <param name="value">In the unit of the range; what is not a number lies outside.</param>
    public bool Contains(double value) => value >= Low && value <= High;

    /// <summary>As in <c>age 0 to 112 d</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Quantity} {Low} to {High} {Unit}");
}
