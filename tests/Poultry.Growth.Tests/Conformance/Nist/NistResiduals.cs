using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>Prediction minus response, observation by observation.</summary>
internal readonly ref struct NistResiduals<TModel>(ReadOnlySpan<double> responses, ReadOnlySpan<double> predictors) : ILeastSquaresProblem
    where TModel : struct, INistModel
{
    private readonly ReadOnlySpan<double> responses = responses;
    private readonly ReadOnlySpan<double> predictors = predictors;

    public int Residuals => responses.Length;

    public int Parameters => TModel.Parameters;

    public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
    {
        int width = predictors.Length / responses.Length;
        Span<double> gradient = stackalloc double[TModel.Parameters];
        for (int i = 0; i < responses.Length; i++)
        {
            residuals[i] = TModel.At(parameters, predictors.Slice(i * width, width), gradient) - responses[i];
            if (!double.IsFinite(residuals[i]))
            {
                return false;
            }

            for (int j = 0; j < gradient.Length && !jacobian.IsEmpty; j++)
            {
                jacobian[(j * responses.Length) + i] = gradient[j];
            }
        }

        return true;
    }
}
