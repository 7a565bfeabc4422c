namespace Poultry.Growth.Planning;

/// <summary>Which birds of a batch that is split go to the plant first.</summary>
public enum FirstBirds
{
    /// <summary>The largest; the lighter ones grow on and stay the lighter ones.</summary>
    Largest,

    /// <summary>Those that are caught first, light and heavy alike.</summary>
    AsCaught,
}
