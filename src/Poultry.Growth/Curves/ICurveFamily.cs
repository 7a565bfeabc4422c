using Poultry.Growth.Evidence;

namespace Poultry.Growth.Curves;

/// <summary>What a curve must bring to get fitting, reports, docs and contract tests for free. Implement it in one file and name the family in <see cref="CurveFamilies.All"/>.</summary>
internal interface ICurveFamily<TSelf> : IGrowthCurve
    where TSelf : GrowthCurve, ICurveFamily<TSelf>
{
    /// <summary>The birth certificate.</summary>
    static abstract ModelInfo Info { get; }

    /// <summary>The parameters, in the order of every span of parameters; the mature weight first.</summary>
    static abstract IReadOnlyList<CurveParameter> ParameterList { get; }

    /// <summary>The coordinates in which the family is fitted.</summary>
    static abstract CurveShape Shape { get; }

    /// <summary>The curve with these parameters, each checked.</summary>
    static abstract TSelf FromParameters(ReadOnlySpan<double> parameters);

    /// <summary>
    /// Weights in kg, and unless <paramref name="gradient"/> is empty their derivatives, parameter by parameter:
    /// dW[i] / dp[j] at [j * ages + i]. Returns false where a weight is not a finite number above 0.
    /// </summary>
    static abstract bool Evaluate(ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient);

    /// <summary>The parameters of this curve, in the order of <see cref="ParameterList"/>.</summary>
    void CopyParameters(Span<double> parameters);
}
