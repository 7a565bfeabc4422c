using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Curves;

/// <summary>A kind of growth curve, to be fitted or built from parameters. The families are in <see cref="CurveFamilies"/>.</summary>
public abstract class CurveFamily
{
    private protected CurveFamily()
    {
    }

    /// <summary>Short and unique, as in <c>gompertz</c>.</summary>
    public string Id => Model.Id;

    /// <summary>What the family is and where it comes from.</summary>
    public abstract ModelInfo Model { get; }

    /// <summary>The parameters, in the order of every span of parameters; the mature weight first.</summary>
    public abstract IReadOnlyList<CurveParameter> Parameters { get; }

    /// <summary>The coordinates in which the family is fitted.</summary>
    internal abstract CurveShape Shape { get; }

    /// <summary>The curve with these parameters.</summary>
    /// <param name="parameters">In the order and units of <see cref="Parameters"/>.</param>
    /// <exception cref="ArgumentException">Their number is wrong.</exception>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public abstract GrowthCurve FromParameters(params ReadOnlySpan<double> parameters);

    /// <summary>Weights at many ages and how they change with each parameter, without making a curve.</summary>
    /// <param name="parameters">In the order and units of <see cref="Parameters"/>; not checked.</param>
    /// <param name="ageDays">Ages in days.</param>
    /// <param name="kilograms">Receives the weights in kg; as long as <paramref name="ageDays"/>.</param>
    /// <param name="gradient">
    /// Receives the derivatives in kg per unit of the parameter, parameter by parameter: dW[i] / dp[j] at [j * ages + i].
    /// Empty where they are not wanted.
    /// </param>
    /// <returns>False where a weight is not a finite number above 0.</returns>
    /// <exception cref="ArgumentException">A span has the wrong length.</exception>
    internal abstract bool Evaluate(
        ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient);

    /// <summary>The name.</summary>
    public override string ToString() => Model.Name;
}

/// <inheritdoc/>
internal sealed class CurveFamily<TCurve> : CurveFamily
    where TCurve : GrowthCurve, ICurveFamily<TCurve>
{
    public override ModelInfo Model => TCurve.Info;

    public override IReadOnlyList<CurveParameter> Parameters => TCurve.ParameterList;

    internal override CurveShape Shape => TCurve.Shape;

    public override GrowthCurve FromParameters(params ReadOnlySpan<double> parameters)
    {
        Require.SameLength(Parameters.Count, parameters.Length, nameof(parameters));
        return TCurve.FromParameters(parameters);
    }

    internal override bool Evaluate(
        ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient)
    {
        Require.SameLength(Parameters.Count, parameters.Length, nameof(parameters));
        Require.SameLength(ageDays.Length, kilograms.Length, nameof(kilograms));
        if (!gradient.IsEmpty)
        {
            Require.SameLength(Parameters.Count * ageDays.Length, gradient.Length, nameof(gradient));
        }

        return TCurve.Evaluate(parameters, ageDays, kilograms, gradient);
    }
}
