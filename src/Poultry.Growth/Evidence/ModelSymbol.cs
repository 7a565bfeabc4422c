using Poultry.Growth.Primitives;

namespace Poultry.Growth.Evidence;

/// <summary>A symbol of an equation, with its meaning and unit.</summary>
public sealed class ModelSymbol
{
    /// <summary>Explains a symbol.</summary>
    /// <param name="symbol">As the equation writes it.</param>
    /// <param name="meaning">In the trade's words.</param>
    /// <param name="unit">As in <c>kg</c>, <c>1/d</c>; <c>-</c> for a pure number.</param>
    /// <exception cref="ArgumentException">One of them is empty.</exception>
    public ModelSymbol(string symbol, string meaning, string unit) =>
        (Symbol, Meaning, Unit) = (Require.Text(symbol), Require.Text(meaning), Require.Text(unit));

    /// <summary>As the equation writes it.</summary>
    public string Symbol { get; }

    /// <summary>In the trade's words.</summary>
    public string Meaning { get; }

    /// <summary>The unit; <c>-</c> for a pure number.</summary>
    public string Unit { get; }

    /// <summary>As in <c>W: live weight, kg</c>.</summary>
    public override string ToString() => Symbol + ": " + Meaning + ", " + Unit;
}
