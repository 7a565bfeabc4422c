namespace Poultry.Growth.Carcass;

/// <summary>When a carcass was weighed.</summary>
public enum CarcassCondition
{
    /// <summary>The source does not say.</summary>
    NotStated,

    /// <summary>Before chilling.</summary>
    Hot,

    /// <summary>After chilling, with the water it took up or without the water it lost.</summary>
    Chilled,

    /// <summary>In its pack, as the plant hands it back.</summary>
    Packed,
}
