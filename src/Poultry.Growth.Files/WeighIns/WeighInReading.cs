using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Files;

/// <summary>What came of reading a weigh-in file: the series, or every problem at once; and what looked wrong and how it was used.</summary>
public sealed class WeighInReading
{
    internal WeighInReading(string file) => File = file;

    /// <summary>The file, as the caller named it.</summary>
    public string File { get; }

    /// <summary>The weigh-ins; null where there is any problem.</summary>
    public WeighInSeries? Series { get; internal init; }

    /// <summary>
    /// Strain, system and sex of the batch, as the file's own lines <c># strain:</c>, <c># system:</c> and <c># sex:</c> say; without the last, the sex of the
    /// weigh-ins where it is one and the same. Null where there is any problem.
    /// </summary>
    public BatchKind? Kind { get; internal init; }

    /// <summary>Everything that cannot be read, in the order of the file; empty where there is a series.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>What can be read but looks wrong; empty where there are problems.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions { get; internal init; } = [];

    /// <summary>The day the chicks were placed, from the options or the file; null where neither says.</summary>
    public DateOnly? Placed { get; internal init; }

    /// <summary>How old they were that day; null where neither says.</summary>
    public Age? AgeAtPlacement { get; internal init; }

    /// <summary>How many rows did not fit <see cref="WeighInFileOptions.Where"/> and were passed over.</summary>
    public int RowsPassedOver { get; internal init; }

    /// <summary>Columns that were not used, by name: only where the options name a column, since otherwise an unknown one is a problem.</summary>
    public IReadOnlyList<string> IgnoredColumns { get; internal init; } = [];

    /// <summary>One line, as in <c>weigh-ins.csv: 7 weigh-ins of 86 birds, 7 d to 49 d; 1 suspicion</c>, in every culture.</summary>
    public override string ToString() => File + ": " + (Series is null ? NumberText.Counted(Problems.Count, "problem") : Series + "; " + NumberText.Counted(Suspicions.Count, "suspicion"));
}
