using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

/// <summary>A fit of the library beside the row of a fixture that says what it should be.</summary>
internal sealed class ReferenceFit
{
    private static readonly Dictionary<string, string> Symbols = new() { ["A"] = "A", ["k"] = "k", ["t*"] = "tstar", ["v"] = "d" };

    private readonly Lazy<IReadOnlyList<Interval<double>>> limits;

    private ReferenceFit(Table.Row reference, GrowthFit fit)
    {
        (Reference, Fit) = (reference, fit);
        limits = new(() => fit.ProfileLimits(0.95));
    }

    /// <summary>Least squares: 26 sets, three families.</summary>
    public static IReadOnlyList<ReferenceFit> LeastSquares { get; } =
    [
        .. Table.Read("ChickWeight/reference-fits.csv").Rows.Select(row => new ReferenceFit(
            row, GrowthFit.Of(ChickWeightData.Series(row.Text("set")), CurveFamilies.Find(row.Text("family")), ErrorModel.EqualVariance))),
    ];

    /// <summary>Iterated weights, maximum likelihood, logarithms.</summary>
    public static IReadOnlyList<ReferenceFit> Weighted { get; } =
    [
        .. Table.Read("ChickWeight/reference-weighted-fits.csv").Rows.Select(row =>
        {
            WeighInSeries series = ChickWeightData.Series(row.Text("set"));
            (ErrorModel errors, WeighInSeries weighIns) = row.Text("method") switch
            {
                "irls" => (ErrorModel.ProportionalIterated, series),
                "ml" => (ErrorModel.Proportional, series),

                // Logarithms of single chicks: each is a weigh-in of its own.
                _ => (ErrorModel.Sampling(0.10), OneByOne(series)),
            };
            return new ReferenceFit(row, GrowthFit.Of(weighIns, CurveFamilies.Find(row.Text("family")), errors));
        }),
    ];

    public Table.Row Reference { get; }

    public GrowthFit Fit { get; }

    public bool HasOptimum => Reference.Text("status") == "ok";

    /// <summary>Whether the fixture has limits: all fits that have an optimum, but for a free shape.</summary>
    public bool HasLimits => Reference.Text("A_low").Length > 0;

    /// <summary>95 % limits by the profile of the sum of squares.</summary>
    public IReadOnlyList<Interval<double>> Limits => limits.Value;

    private string Name => Fit.Family.Id + " of " + Reference.Text("set") + ", ";

    public static ReferenceFit Of(string set, string family) => LeastSquares.Single(one => one.Reference.Text("set") == set && one.Reference.Text("family") == family);

    public IEnumerable<Compared> Parameters() => Fit.Parameters.Select(parameter => Figure(parameter, parameter.Value, "", ""));

    public IEnumerable<Compared> StandardErrors() => Fit.Parameters.Select(parameter => Figure(parameter, parameter.StandardError, "se_", ""));

    /// <summary>Of a density in 1/g, as the fixture has it; ours is in 1/kg: one ln(1000) an observation.</summary>
    public Compared LogLikelihood() => new(Name + "log-likelihood", Fit.LogLikelihood - (Fit.Observations * Math.Log(1000)), Reference.Number("log_likelihood"));

    /// <summary>The limits that are not open.</summary>
    public IEnumerable<Compared> ClosedLimits() => Fit.Parameters.Zip(Limits).SelectMany(pair => new[]
    {
        pair.Second.Low is { } low ? Figure(pair.First, low, "", "_low") : (Compared?)null,
        pair.Second.High is { } high ? Figure(pair.First, high, "", "_high") : null,
    }).OfType<Compared>();

    /// <summary>Whether the fixture leaves a parameter's low and high end open.</summary>
    public (bool Low, bool High) IsOpen(int parameter)
    {
        string symbol = Symbols[Fit.Parameters[parameter].Parameter.Symbol];
        return (Reference.NumberOrNull(symbol + "_low") is null, Reference.NumberOrNull(symbol + "_high") is null);
    }

    private static WeighInSeries OneByOne(WeighInSeries series) => WeighInSeries.Of(series.SelectMany(weighIn =>
        weighIn.Kind == WeighInKind.Birds ? weighIn.Weights.Select(weight => WeighIn.Birds(weighIn.Age, weight)) : [weighIn]));

    private Compared Figure(FittedParameter parameter, double value, string before, string after)
    {
        string column = before + Symbols[parameter.Parameter.Symbol] + after;
        return new(Name + column, parameter.Parameter.Unit == "kg" ? 1000 * value : value, Reference.Number(column));
    }
}
