using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What is asked of a batch's weigh-ins.</summary>
internal sealed class FitQuestion
{
    public required CurveFamily Family { get; init; }

    public required ErrorModel Errors { get; init; }

    public Mass? HatchWeight { get; init; }

    /// <summary>Ages to project to, in order; none for the usual ones.</summary>
    public IReadOnlyList<Age> Ages { get; init; } = [];

    public Mass? Target { get; init; }

    public bool Compare { get; init; }

    public double Level { get; init; } = GrowthFit.DefaultLevel;
}
