namespace Poultry.Growth.Housing;

/// <summary>On which side of its figure a limit holds.</summary>
public enum LimitComparison
{
    /// <summary>Less than the figure.</summary>
    Below,

    /// <summary>The figure or less.</summary>
    AtMost,

    /// <summary>The figure or more.</summary>
    AtLeast,

    /// <summary>More than the figure.</summary>
    Above,

    /// <summary>The figure itself: a date, a coefficient.</summary>
    Exactly,
}
