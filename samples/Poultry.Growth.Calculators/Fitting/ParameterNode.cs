using Poultry.Growth.Curves;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A parameter of the curve; a bound that the weights do not give is null.</summary>
internal sealed record ParameterNode(double Estimate, double StandardError, double? Low, double? High)
{
    public static IReadOnlyDictionary<string, ParameterNode> Of(FitAnswer answer) => answer.Fit.Parameters
        .Select((fitted, at) => (Key: Key(fitted.Parameter), Node: new ParameterNode(fitted.Value, fitted.StandardError, answer.Limits?[at].Low, answer.Limits?[at].High)))
        .ToDictionary(parameter => parameter.Key, parameter => parameter.Node);

    /// <summary>The name with its unit: <c>matureWeightKg</c>.</summary>
    private static string Key(CurveParameter parameter)
    {
        string[] words = [.. parameter.Name.Split(' ', '-')];
        string unit = parameter.Unit switch { "kg" => "Kg", "1/d" => "PerDay", "d" => "Days", _ => "" };
        return words[0] + string.Concat(words.Skip(1).Select(word => char.ToUpperInvariant(word[0]) + word[1..])) + unit;
    }
}
