using Poultry.Growth.Curves;

namespace Poultry.Growth.Fitting;

/// <summary>A fitted shape, or the reason why there is none.</summary>
internal sealed class FitOutcome
{
    private FitOutcome(FitStatus status, string reason) => (Status, Reason) = (status, reason);

    public FitStatus Status { get; }

    public string Reason { get; }

    /// <summary>The curve found; null unless converged.</summary>
    public FittedShape? Shape { get; private init; }

    /// <summary>The figures by which it is judged; null unless converged.</summary>
    public FitNumbers? Numbers { get; private init; }

    /// <summary>The weights at the optimum: those of the error model, or the last iterated ones.</summary>
    public double[] Weights { get; private init; } = [];

    /// <summary>What the weights support where no mature weight exists.</summary>
    public ExponentialCurve? Exponential { get; private init; }

    public static FitOutcome Refused(FitStatus status, string reason) => new(status, reason);

    public static FitOutcome Found(FittedShape shape, FitNumbers numbers, double[] weights) =>
        new(FitStatus.Converged, "Converged to a certified optimum.") { Shape = shape, Numbers = numbers, Weights = weights };

    public FitOutcome With(ExponentialCurve? exponential) => new(Status, Reason) { Exponential = exponential };
}
