using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>A fit held against the certified values.</summary>
internal sealed class NistFit
{
    public required LeastSquaresResult Result { get; init; }

    /// <summary>The digits that every parameter has right.</summary>
    public required double ParameterDigits { get; init; }

    /// <summary>The digits that every standard error has right.</summary>
    public required double StandardErrorDigits { get; init; }
}
