namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>A model of the NIST collection: its value at one observation, and its gradient in the parameters.</summary>
internal interface INistModel
{
    static abstract int Parameters { get; }

    /// <summary>The predicted response at predictors <paramref name="x"/>; fills the gradient.</summary>
    static abstract double At(ReadOnlySpan<double> b, ReadOnlySpan<double> x, Span<double> gradient);
}
