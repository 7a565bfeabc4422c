namespace Poultry.Growth.Files;

/// <summary>What came of reading a file: what it says, or every problem at once.</summary>
/// <typeparam name="T">What such a file says.</typeparam>
public sealed class FileReading<T>
    where T : class
{
    internal FileReading(string file, T? value, IReadOnlyList<FileProblem> problems) => (File, Value, Problems) = (file, value, problems);

    /// <summary>The file, as the caller named it.</summary>
    public string File { get; }

    /// <summary>What it says; null where there is any problem.</summary>
    public T? Value { get; }

    /// <summary>Everything that cannot be read, in the order of the file; empty where there is a value.</summary>
    public IReadOnlyList<FileProblem> Problems { get; }

    /// <summary>What looks wrong in the weigh-ins of the files that it names; all count; empty where it names none.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions { get; internal init; } = [];

    /// <summary>One line, as in <c>prices.csv: 2 problems</c>, in every culture.</summary>
    public override string ToString() => File + ": " + (Value?.ToString() ?? NumberText.Counted(Problems.Count, "problem"));
}
