namespace Poultry.Growth.Numerics;

/// <summary>Residuals whose sum of squares is to be made small, with their analytic derivatives.</summary>
internal interface ILeastSquaresProblem
{
    /// <summary>How many residuals.</summary>
    int Residuals { get; }

    /// <summary>How many parameters.</summary>
    int Parameters { get; }

    /// <summary>
    /// Writes the residuals, and unless <paramref name="jacobian"/> is empty their derivatives, column by column:
    /// d r[i] / d p[j] at [j * Residuals + i]. Returns false where the model has no finite value.
    /// </summary>
    bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian);
}
