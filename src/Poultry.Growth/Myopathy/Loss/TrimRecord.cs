namespace Poultry.Growth.Myopathy;

/// <summary>Whether the figure by which the farm turns live weight into sold weight (its packed ratio, or the plant's trim) knows of lesions.</summary>
public enum TrimRecord
{
    /// <summary>It was made up from yields of sound birds: lesions are still to be taken off.</summary>
    SoundBirds,

    /// <summary>It comes from what the plant really packed, lesions cut out: nothing is taken off a second time.</summary>
    ContainsLesions,
}
