using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Curves;

/// <summary>One parameter of a curve family: the words that explain a number in a span of parameters.</summary>
public sealed class CurveParameter
{
    internal CurveParameter(string name, string symbol, string unit, string meaning) =>
        (Name, Symbol, Unit, Meaning) = (Require.Text(name), Require.Text(symbol), Require.Text(unit), Require.Text(meaning));

    /// <summary>In the trade's words, as in <c>mature weight</c>.</summary>
    public string Name { get; }

    /// <summary>As the equation writes it, as in <c>A</c>.</summary>
    public string Symbol { get; }

    /// <summary>The unit: <c>kg</c>, <c>1/d</c>, <c>d</c>, or <c>-</c> for a pure number.</summary>
    public string Unit { get; }

    /// <summary>What it says about the bird.</summary>
    public string Meaning { get; }

    /// <summary>As in <c>mature weight A, kg</c>.</summary>
    public override string ToString() => Name + " " + Symbol + ", " + Unit;

    internal static CurveParameter MatureWeight { get; } =
        new("mature weight", "A", "kg", "The weight the curve tends to. Fitted to young birds it is an extrapolation.");

    internal static CurveParameter Rate { get; } =
        new("rate", "k", "1/d", "Rate of maturing: how fast the bird approaches the mature weight.");

    internal static CurveParameter InflectionAge { get; } =
        new("inflection age", "t*", "d", "The age of highest gain; a negative number lies before hatch.");

    internal static CurveParameter Shape { get; } =
        new("shape", "v", "-", "Where the inflection lies: 0 at 37 % of the mature weight (Gompertz), 1 at half (logistic), above 1 later.");

    /// <summary>The parameters of the three-parameter families.</summary>
    internal static IReadOnlyList<CurveParameter> Classic { get; } = [MatureWeight, Rate, InflectionAge];

    internal static IEnumerable<ModelSymbol> Symbols(IReadOnlyList<CurveParameter> parameters) =>
        parameters.Select(parameter => new ModelSymbol(parameter.Symbol, parameter.Name, parameter.Unit));
}
