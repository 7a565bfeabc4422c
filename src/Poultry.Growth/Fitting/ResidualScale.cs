namespace Poultry.Growth.Fitting;

/// <summary>The three sums of squares that all error models come down to.</summary>
internal enum ResidualScale
{
    /// <summary>sum w (y - f)²: equal variance, or weights known beforehand.</summary>
    Kilograms,

    /// <summary>sum w (ln y - ln f)²: sampling error known as a share of the weight.</summary>
    Logarithm,

    /// <summary>sum n (y/f - 1)² times the squared geometric mean of f: its least value is the maximum likelihood for a SD proportional to the mean.</summary>
    ProportionalLikelihood,
}
