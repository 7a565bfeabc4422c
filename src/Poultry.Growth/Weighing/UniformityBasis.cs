namespace Poultry.Growth.Weighing;

/// <summary>Where the share of birds near the mean comes from.</summary>
public enum UniformityBasis
{
    /// <summary>There is none: the weigh-ins do not show the spread between birds.</summary>
    Unknown,

    /// <summary>Counted among birds weighed singly.</summary>
    Counted,

    /// <summary>Worked out from the CV as if weights followed the normal curve.</summary>
    NormalCurve,
}
