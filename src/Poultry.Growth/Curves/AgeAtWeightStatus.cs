namespace Poultry.Growth.Curves;

/// <summary>Whether a curve reaches a weight.</summary>
public enum AgeAtWeightStatus
{
    /// <summary>It does, at the age given.</summary>
    Reached,

    /// <summary>Never: the weight lies at or above the mature weight of the curve.</summary>
    AboveMatureWeight,

    /// <summary>Not after hatch: the curve starts above this weight.</summary>
    BelowHatchWeight,

    /// <summary>The table ends below this weight; it says nothing about later ages.</summary>
    BeyondTable,

    /// <summary>The table starts above this weight; it says nothing about earlier ages.</summary>
    BeforeTable,
}
