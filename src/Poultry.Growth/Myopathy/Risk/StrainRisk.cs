namespace Poultry.Growth.Myopathy;

/// <summary>How prone the strain is, by the one survey that compared two; both crosses are off the market, and farm and management may be mixed into the difference.</summary>
public enum StrainRisk
{
    /// <summary>Any current strain: nothing is known about it.</summary>
    Average,

    /// <summary>Like the more prone of the two crosses: odds 1.9 times the average.</summary>
    High,

    /// <summary>Like the less prone of the two: odds 0.52 times the average.</summary>
    Low,
}
