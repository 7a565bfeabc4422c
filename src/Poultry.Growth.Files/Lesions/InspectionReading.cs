using System.Globalization;
using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Files;

/// <summary>What came of reading inspections: one a batch, or every problem at once.</summary>
public sealed class InspectionReading
{
    internal InspectionReading(string name) => Name = name;

    /// <summary>The file or folder, as the caller named it.</summary>
    public string Name { get; }

    /// <summary>One inspection a batch, in order of file and row; null where there is any problem.</summary>
    public IReadOnlyList<LesionInspection>? Inspections { get; internal init; }

    /// <summary>Everything that cannot be read, in order; empty where there are inspections.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>One line, as in <c>inspections: 7 batches</c>, in every culture.</summary>
    public override string ToString() => Name + ": " + (Inspections is { } read
        ? string.Create(CultureInfo.InvariantCulture, $"{read.Count} {(read.Count == 1 ? "batch" : "batches")}")
        : NumberText.Counted(Problems.Count, "problem"));
}
