using Poultry.Growth.Primitives;

namespace Poultry.Growth.Evidence;

/// <summary>A source, and where in it to look.</summary>
public sealed class Citation
{
    /// <summary>Names a source.</summary>
    /// <param name="key">Short and unique, as in <c>Winsor1932</c>.</param>
    /// <param name="reference">Author, year, title or journal, volume, pages.</param>
    /// <param name="howKnown">How we know what it says.</param>
    /// <param name="locator">Table, page or equation; null where the whole source is meant.</param>
    /// <exception cref="ArgumentException">Key or reference is empty.</exception>
    public Citation(string key, string reference, HowKnown howKnown, string? locator = null)
    {
        Key = Require.Text(key);
        Reference = Require.Text(reference);
        HowKnown = howKnown;
        Locator = locator;
    }

    /// <summary>Short and unique, as in <c>Winsor1932</c>.</summary>
    public string Key { get; }

    /// <summary>Author, year, title or journal, volume, pages.</summary>
    public string Reference { get; }

    /// <summary>Table, page or equation; null where the whole source is meant.</summary>
    public string? Locator { get; }

    /// <summary>How we know what it says.</summary>
    public HowKnown HowKnown { get; }

    /// <summary>The reference with its locator.</summary>
    public override string ToString() => Locator is null ? Reference : Reference + ", " + Locator;
}
