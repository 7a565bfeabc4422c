namespace Poultry.Growth.Primitives;

/// <summary>What feed is divided by in a feed conversion. Figures on different bases cannot be compared: two farms agree on one first.</summary>
public enum FeedConversionBasis
{
    /// <summary>Live weight sold: feed / (birds sold × mean live weight). The chicks' own weight counts as if it had been grown.</summary>
    LiveWeight,

    /// <summary>Gain: feed / (live weight sold less the weight of all chicks placed).</summary>
    Gain,

    /// <summary>Live weight sold and the weight of birds that died or were culled: what the feed grew, not what was sold.</summary>
    MortalityAdjusted,
}
