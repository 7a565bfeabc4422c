namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>y = (b1 + b2 x + b3 x²) / (1 + b4 x + b5 x²).</summary>
internal readonly struct Kirby2 : INistModel
{
    public static int Parameters => 5;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double t = x[0];
        double divisor = 1 + (t * (b[3] + (t * b[4])));
        double value = (b[0] + (t * (b[1] + (t * b[2])))) / divisor;
        gradient[0] = 1 / divisor;
        gradient[1] = t / divisor;
        gradient[2] = t * t / divisor;
        gradient[3] = -value * t / divisor;
        gradient[4] = -value * t * t / divisor;
        return value;
    }
}

/// <summary>y = (b1 + b2 x + b3 x² + b4 x³) / (1 + b5 x + b6 x² + b7 x³): Hahn1 and Thurber.</summary>
internal readonly struct RatioOfCubics : INistModel
{
    public static int Parameters => 7;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double t = x[0];
        double divisor = 1 + (t * (b[4] + (t * (b[5] + (t * b[6])))));
        double value = (b[0] + (t * (b[1] + (t * (b[2] + (t * b[3])))))) / divisor;
        gradient[0] = 1 / divisor;
        gradient[1] = t / divisor;
        gradient[2] = t * t / divisor;
        gradient[3] = t * t * t / divisor;
        gradient[4] = -value * gradient[1];
        gradient[5] = -value * gradient[2];
        gradient[6] = -value * gradient[3];
        return value;
    }
}

/// <summary>y = b1 (x² + x b2) / (x² + x b3 + b4).</summary>
internal readonly struct Mgh09 : INistModel
{
    public static int Parameters => 4;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double t = x[0];
        double divisor = (t * t) + (t * b[2]) + b[3];
        gradient[0] = ((t * t) + (t * b[1])) / divisor;
        double value = b[0] * gradient[0];
        gradient[1] = b[0] * t / divisor;
        gradient[2] = -value * t / divisor;
        gradient[3] = -value / divisor;
        return value;
    }
}

/// <summary>y = b1 - b2 x - arctan(b3 / (x - b4)) / pi.</summary>
internal readonly struct Roszman1 : INistModel
{
    public static int Parameters => 4;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double shifted = x[0] - b[3];
        double ratio = b[2] / shifted;
        gradient[0] = 1;
        gradient[1] = -x[0];
        gradient[2] = -1 / (Math.PI * (1 + (ratio * ratio)) * shifted);
        gradient[3] = ratio * gradient[2];
        return b[0] - (b[1] * x[0]) - (Math.Atan(ratio) / Math.PI);
    }
}

/// <summary>y = b1 + b2 cos(2 pi x / 12) + b3 sin(2 pi x / 12) and the same with periods b4 and b7.</summary>
internal readonly struct Enso : INistModel
{
    public static int Parameters => 9;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        (double sine, double cosine) = Math.SinCos(2 * Math.PI * x[0] / 12);
        gradient[0] = 1;
        gradient[1] = cosine;
        gradient[2] = sine;
        double value = b[0] + (b[1] * cosine) + (b[2] * sine);
        for (int j = 3; j < 9; j += 3)
        {
            double angle = 2 * Math.PI * x[0] / b[j];
            (sine, cosine) = Math.SinCos(angle);
            gradient[j] = ((b[j + 1] * sine) - (b[j + 2] * cosine)) * angle / b[j];
            gradient[j + 1] = cosine;
            gradient[j + 2] = sine;
            value += (b[j + 1] * cosine) + (b[j + 2] * sine);
        }

        return value;
    }
}
