namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>y = b1 (1 - exp(-b2 x)): Misra1a and BoxBOD.</summary>
internal readonly struct Misra1a : INistModel
{
    public static int Parameters => 2;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double decay = Math.Exp(-b[1] * x[0]);
        gradient[0] = 1 - decay;
        gradient[1] = b[0] * x[0] * decay;
        return b[0] * (1 - decay);
    }
}

/// <summary>y = exp(-b1 x) / (b2 + b3 x): Chwirut1 and Chwirut2.</summary>
internal readonly struct Chwirut : INistModel
{
    public static int Parameters => 3;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double divisor = b[1] + (b[2] * x[0]);
        double value = Math.Exp(-b[0] * x[0]) / divisor;
        gradient[0] = -x[0] * value;
        gradient[1] = -value / divisor;
        gradient[2] = -x[0] * value / divisor;
        return value;
    }
}

/// <summary>y = b1 exp(-b2 x) + b3 exp(-b4 x) + b5 exp(-b6 x): Lanczos1, Lanczos2 and Lanczos3.</summary>
internal readonly struct Lanczos : INistModel
{
    public static int Parameters => 6;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double value = 0;
        for (int j = 0; j < 6; j += 2)
        {
            gradient[j] = Math.Exp(-b[j + 1] * x[0]);
            gradient[j + 1] = -x[0] * b[j] * gradient[j];
            value += b[j] * gradient[j];
        }

        return value;
    }
}

/// <summary>y = b1 exp(-b2 x) + b3 exp(-(x - b4)² / b5²) + b6 exp(-(x - b7)² / b8²): Gauss1, Gauss2 and Gauss3.</summary>
internal readonly struct TwoPeaks : INistModel
{
    public static int Parameters => 8;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        gradient[0] = Math.Exp(-b[1] * x[0]);
        gradient[1] = -x[0] * b[0] * gradient[0];
        double value = b[0] * gradient[0];
        for (int j = 2; j < 8; j += 3)
        {
            double offset = (x[0] - b[j + 1]) / b[j + 2];
            gradient[j] = Math.Exp(-offset * offset);
            gradient[j + 1] = 2 * b[j] * gradient[j] * offset / b[j + 2];
            gradient[j + 2] = 2 * b[j] * gradient[j] * offset * offset / b[j + 2];
            value += b[j] * gradient[j];
        }

        return value;
    }
}

/// <summary>y = (b1 / b2) exp(-((x - b3) / b2)² / 2).</summary>
internal readonly struct Eckerle4 : INistModel
{
    public static int Parameters => 3;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double offset = (x[0] - b[2]) / b[1];
        gradient[0] = Math.Exp(-0.5 * offset * offset) / b[1];
        double value = b[0] * gradient[0];
        gradient[1] = value * ((offset * offset) - 1) / b[1];
        gradient[2] = value * offset / b[1];
        return value;
    }
}

/// <summary>y = b1 exp(b2 / (x + b3)).</summary>
internal readonly struct Mgh10 : INistModel
{
    public static int Parameters => 3;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        double divisor = x[0] + b[2];
        gradient[0] = Math.Exp(b[1] / divisor);
        double value = b[0] * gradient[0];
        gradient[1] = value / divisor;
        gradient[2] = -value * b[1] / (divisor * divisor);
        return value;
    }
}

/// <summary>y = b1 + b2 exp(-x b4) + b3 exp(-x b5).</summary>
internal readonly struct Mgh17 : INistModel
{
    public static int Parameters => 5;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        gradient[0] = 1;
        gradient[1] = Math.Exp(-x[0] * b[3]);
        gradient[2] = Math.Exp(-x[0] * b[4]);
        gradient[3] = -x[0] * b[1] * gradient[1];
        gradient[4] = -x[0] * b[2] * gradient[2];
        return b[0] + (b[1] * gradient[1]) + (b[2] * gradient[2]);
    }
}

/// <summary>log y = b1 - b2 x1 exp(-b3 x2); the response is the logarithm of the column y.</summary>
internal readonly struct Nelson : INistModel
{
    public static int Parameters => 3;

    public static double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient)
    {
        gradient[0] = 1;
        gradient[1] = -x[0] * Math.Exp(-b[2] * x[1]);
        gradient[2] = -x[1] * b[1] * gradient[1];
        return b[0] + (b[1] * gradient[1]);
    }
}
