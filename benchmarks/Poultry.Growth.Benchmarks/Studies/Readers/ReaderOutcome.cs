using Poultry.Growth.Files;

namespace Poultry.Growth.Benchmarks.Studies.Readers;

/// <summary>What came of one reading.</summary>
/// <param name="IsRead">Whether there is a value.</param>
/// <param name="Problems">How many problems were told.</param>
/// <param name="Fault">What is wrong with the answer itself; null where nothing is.</param>
internal readonly record struct ReaderOutcome(bool IsRead, int Problems, string? Fault)
{
    /// <summary>A value or problems, never both and never neither; and each problem in one line, with its place and what was expected.</summary>
    public static ReaderOutcome Of(bool isRead, IReadOnlyList<FileProblem> problems) => new(isRead, problems.Count, Fault: problems.Select(FaultOf).FirstOrDefault(fault => fault is not null)
        ?? (isRead == (problems.Count == 0) ? null : isRead ? "a value beside problems" : "neither a value nor a problem"));

    private static string? FaultOf(FileProblem problem) =>
        problem.Line < 0 || (problem.Line == 0) != (problem.Column == 0) ? "a problem without a place: " + problem
        : problem.Fault.Length == 0 || problem.Expected.Length == 0 || problem.File.Length == 0 ? "a problem that does not say what was expected: " + problem
        : problem.ToString().Any(char.IsControl) ? "a problem of several lines: " + string.Concat(problem.ToString().Select(letter => char.IsControl(letter) ? '?' : letter))
        : null;
}
