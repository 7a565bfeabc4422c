using System.Globalization;
using System.Text;

namespace Poultry.Growth.Benchmarks.Studies.Readers;

/// <summary>Writes docs/studies/readers.md: <c>dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study readers > docs/studies/readers.md</c>.</summary>
internal static class ReaderStudy
{
    /// <summary>Spoilt files of each reader.</summary>
    public const int Cases = 100_000;

    /// <summary>Cases of each reader that a test runs again.</summary>
    public const int FirstCases = 250;

    private const int Seed = 20271101;

    private const int Block = 2_500;

    private const string Head = """
        # Study: spoilt files

        Every public reader of Poultry.Growth.Files on 100,000 files that were spoilt: bytes lost, put in, doubled, changed, numbers replaced by dates, exponents, infinities and 3,000 nines,
        brackets nested 3,000 deep, halves of letters, the end cut off (`Mutation.cs` in `benchmarks/Poultry.Growth.Benchmarks/Studies/Readers`). Where a reader reads several files one of them is
        spoilt, and one case in five stays as it was. A reader may answer with a value, or with problems that have a place and say what was expected; anything else is a fault: an exception,
        both, neither, a problem without a place or of several lines. The page is written by

            dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- study readers > docs/studies/readers.md

        | reader | cases | read | refused | problems told | faults | longest reading (this run, both cores busy) |
        |---|---|---|---|---|---|---|

        """;

    public static string Page(IReadOnlyList<Reader> readers)
    {
        StringBuilder page = new(Head), first = new("\n## First cases\n\nA test runs them again.\n\n| reader | cases | read | problems told |\n|---|---|---|---|\n"), faults = new();
        foreach (Reader reader in readers)
        {
            ReaderRun[] runs = [.. Enumerable.Range(0, Cases / Block).AsParallel().AsOrdered().Select(block => ReaderRun.Of(reader, Seed, block * Block, Block))];
            int read = runs.Sum(run => run.Read);
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {reader.Name} | {Cases} | {read} | {Cases - read} | {runs.Sum(run => run.Problems)} | {runs.Sum(run => run.Faults.Count)} | {runs.Max(run => run.Longest).TotalMilliseconds:0} ms |\n");
            first.Append(FirstLine(reader, First(reader))).Append('\n');
            faults.AppendJoin("", runs.SelectMany(run => run.Faults).Take(3).Select(fault => "\n- " + reader.Name + ", " + fault));
        }

        return page.Append(first).Append(faults).ToString();
    }

    /// <summary>The first cases of a reader.</summary>
    public static ReaderRun First(Reader reader) => ReaderRun.Of(reader, Seed, 0, FirstCases);

    /// <summary>The line of a reader's first cases on the page.</summary>
    public static string FirstLine(Reader reader, ReaderRun run) => string.Create(CultureInfo.InvariantCulture, $"| {reader.Name} | {run.Cases} | {run.Read} | {run.Problems} |");
}
