using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Numerics;

/// <summary>A curve's value at x, and its gradient in the parameters.</summary>
internal delegate double Curve(ReadOnlySpan<double> parameters, double x, Span<double> gradient);

/// <summary>A curve through points.</summary>
internal readonly struct CurveProblem(int parameters, Curve curve, double[] x, double[] y) : ILeastSquaresProblem
{
    public int Residuals => x.Length;

    public int Parameters => parameters;

    public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
    {
        Span<double> gradient = stackalloc double[Parameters];
        for (int i = 0; i < x.Length; i++)
        {
            residuals[i] = curve(parameters, x[i], gradient) - y[i];
            for (int j = 0; j < gradient.Length && !jacobian.IsEmpty; j++)
            {
                jacobian[(j * x.Length) + i] = gradient[j];
            }
        }

        return true;
    }

    public static double Line(ReadOnlySpan<double> p, double x, Span<double> gradient)
    {
        (gradient[0], gradient[1]) = (1, x);
        return p[0] + (p[1] * x);
    }

    /// <summary>a (1 - exp(-b x)).</summary>
    public static double Saturation(ReadOnlySpan<double> p, double x, Span<double> gradient)
    {
        double decay = Math.Exp(-p[1] * x);
        (gradient[0], gradient[1]) = (1 - decay, p[0] * x * decay);
        return p[0] * (1 - decay);
    }

    /// <summary>a / (1 + exp(b - c x)).</summary>
    public static double Logistic(ReadOnlySpan<double> p, double x, Span<double> gradient)
    {
        double power = Math.Exp(p[1] - (p[2] * x));
        double value = p[0] / (1 + power);
        (gradient[0], gradient[1]) = (1 / (1 + power), -value * power / (1 + power));
        gradient[2] = -x * gradient[1];
        return value;
    }

    /// <summary>a exp(-exp(-k (x - t))).</summary>
    public static double Gompertz(ReadOnlySpan<double> p, double x, Span<double> gradient)
    {
        double inner = Math.Exp(-p[1] * (x - p[2]));
        gradient[0] = Math.Exp(-inner);
        double value = p[0] * gradient[0];
        (gradient[1], gradient[2]) = (value * inner * (x - p[2]), -value * inner * p[1]);
        return value;
    }
}
