namespace Poultry.Growth.Tests.Conformance;

/// <summary>What a figure is held against.</summary>
internal enum CheckKind
{
    /// <summary>A figure that a table, an abstract or a text of law prints, and that the library must give.</summary>
    PublishedTable,

    /// <summary>Equations or figures of a source, worked through by hand, in the source or by us.</summary>
    WorkedExample,

    /// <summary>Data that anyone can have, with what is certified of them or was worked out from them elsewhere.</summary>
    OpenDataset,

    /// <summary>R, SciPy, 50-digit arithmetic, or a program written apart from this library.</summary>
    ReferenceLibrary,

    /// <summary>A rule of the trade, no source.</summary>
    CommonPractice,

    /// <summary>A figure or equation recalled.</summary>
    Memory,
}
