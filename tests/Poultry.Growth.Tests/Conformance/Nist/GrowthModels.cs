namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>y = b1 / (1 + exp(b2 - b3 x)), the logistic.</summary>
internal readonly struct Rat42 : INistModel
{
    public static int Parameters => 3;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double power = Math.Exp(b[1] - (b[2] * x[0]));
        double value = b[0] / (1 + power);
        gradient[0] = 1 / (1 + power);
        gradient[1] = -value * power / (1 + power);
        gradient[2] = x[0] * value * power / (1 + power);
        return value;
    }
}

/// <summary>y = b1 / (1 + exp(b2 - b3 x))^(1 / b4), of the Richards type.</summary>
internal readonly struct Rat43 : INistModel
{
    public static int Parameters => 4;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double power = Math.Exp(b[1] - (b[2] * x[0]));
        gradient[0] = Math.Pow(1 + power, -1 / b[3]);
        double value = b[0] * gradient[0];
        gradient[1] = -value * power / (b[3] * (1 + power));
        gradient[2] = x[0] * value * power / (b[3] * (1 + power));
        gradient[3] = value * Math.Log(1 + power) / (b[3] * b[3]);
        return value;
    }
}

/// <summary>y = b1 (1 - (1 + b2 x / 2)^-2).</summary>
internal readonly struct Misra1b : INistModel
{
    public static int Parameters => 2;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double divisor = 1 + (b[1] * x[0] / 2);
        gradient[0] = 1 - (1 / (divisor * divisor));
        gradient[1] = b[0] * x[0] / (divisor * divisor * divisor);
        return b[0] * gradient[0];
    }
}

/// <summary>y = b1 (1 - (1 + 2 b2 x)^-0.5).</summary>
internal readonly struct Misra1c : INistModel
{
    public static int Parameters => 2;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double divisor = 1 + (2 * b[1] * x[0]);
        gradient[0] = 1 - (1 / Math.Sqrt(divisor));
        gradient[1] = b[0] * x[0] / (divisor * Math.Sqrt(divisor));
        return b[0] * gradient[0];
    }
}

/// <summary>y = b1 b2 x / (1 + b2 x).</summary>
internal readonly struct Misra1d : INistModel
{
    public static int Parameters => 2;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double divisor = 1 + (b[1] * x[0]);
        gradient[0] = b[1] * x[0] / divisor;
        gradient[1] = b[0] * x[0] / (divisor * divisor);
        return b[0] * gradient[0];
    }
}

/// <summary>y = b1 x^b2.</summary>
internal readonly struct DanWood : INistModel
{
    public static int Parameters => 2;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        gradient[0] = Math.Pow(x[0], b[1]);
        gradient[1] = b[0] * gradient[0] * Math.Log(x[0]);
        return b[0] * gradient[0];
    }
}

/// <summary>y = b1 (b2 + x)^(-1 / b3).</summary>
internal readonly struct Bennett5 : INistModel
{
    public static int Parameters => 3;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double shifted = b[1] + x[0];
        gradient[0] = Math.Pow(shifted, -1 / b[2]);
        double value = b[0] * gradient[0];
        gradient[1] = -value / (b[2] * shifted);
        gradient[2] = value * Math.Log(shifted) / (b[2] * b[2]);
        return value;
    }
}
