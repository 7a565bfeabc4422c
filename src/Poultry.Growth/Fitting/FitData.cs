namespace Poultry.Growth.Fitting;

/// <summary>
/// A batch's weigh-ins as the fit sees them, one entry a weigh-in, in days and kg. Single birds of one weigh-in share an age and so a fitted
/// weight: their mean, their number and the squares within say all that they say about the curve. The columns end in whole fours (<see cref="Numerics.Lanes"/>), where need be with entries of no weight.
/// </summary>
internal readonly ref struct FitData
{
    /// <summary>Ages, d.</summary>
    public required ReadOnlySpan<double> AgeDays { get; init; }

    /// <summary>Means, kg.</summary>
    public required ReadOnlySpan<double> Kilograms { get; init; }

    /// <summary>Logarithms of the means.</summary>
    public required ReadOnlySpan<double> LogKilograms { get; init; }

    /// <summary>Statistical weight of each mean in the sum of squares.</summary>
    public required ReadOnlySpan<double> Weights { get; init; }

    /// <summary>Sum of squares of the birds about their own mean, kg²; 0 where not known or not used.</summary>
    public required ReadOnlySpan<double> Within { get; init; }

    /// <summary>How many observations each entry stands for.</summary>
    public required ReadOnlySpan<double> Observations { get; init; }

    /// <summary>Age of the last weigh-in, d: the origin of the fit's coordinates. From an earlier one a curve that stops hard looks exponential to the last digit.</summary>
    public required double Origin { get; init; }

    /// <summary>How residuals are formed.</summary>
    public required ResidualScale Scale { get; init; }

    /// <summary>Length of the columns.</summary>
    public int Count => AgeDays.Length;
}
