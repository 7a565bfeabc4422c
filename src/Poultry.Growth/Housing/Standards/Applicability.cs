namespace Poultry.Growth.Housing;

/// <summary>Whether a limit applies to a keeping: the first question, before any figure.</summary>
public enum Applicability
{
    /// <summary>It applies.</summary>
    Yes,

    /// <summary>It does not: it is shown for comparison and never binds.</summary>
    No,

    /// <summary>It cannot be told from what is known; the reason names what is missing. It is shown and does not bind.</summary>
    Unknown,
}
