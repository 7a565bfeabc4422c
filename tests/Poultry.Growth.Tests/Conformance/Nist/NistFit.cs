using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>A fit held against the certified values.</summary>
internal sealed class NistFit
{
    /// <summary>Every problem from both starts, the search going on to a certificate of 1e-12.</summary>
    public static IReadOnlyList<(NistProblem Problem, int Start, NistFit Fit)> Tight { get; } =
    [
        .. NistProblem.Names.Select(NistProblem.Of).SelectMany(problem => new[] { 1, 2 }.Select(start =>
            (problem, start, problem.Fit(start, new LeastSquaresOptions { CertificateTarget = 1e-12 })))),
    ];

    public required LeastSquaresResult Result { get; init; }

    /// <summary>The digits that every parameter has right.</summary>
    public required double ParameterDigits { get; init; }

    /// <summary>The digits that every standard error has right.</summary>
    public required double StandardErrorDigits { get; init; }
}
