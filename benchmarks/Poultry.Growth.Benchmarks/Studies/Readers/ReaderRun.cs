using System.Diagnostics;
using System.Globalization;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Benchmarks.Studies.Readers;

/// <summary>Cases of one reader one after the other: in each, one of its files is spoilt.</summary>
internal sealed class ReaderRun
{
    private ReaderRun(int cases) => Cases = cases;

    public int Cases { get; }

    /// <summary>Cases that were read all the same, one in five or so because nothing was changed.</summary>
    public int Read { get; private set; }

    /// <summary>Problems told in the cases that were refused.</summary>
    public long Problems { get; private set; }

    /// <summary>What must not be: exceptions, and answers that are neither a value nor problems, each with its case.</summary>
    public List<string> Faults { get; } = [];

    /// <summary>The longest of all readings.</summary>
    public TimeSpan Longest { get; private set; }

    /// <summary>Runs cases from one to another, in a folder of its own.</summary>
    public static ReaderRun Of(Reader reader, int seed, int first, int count)
    {
        ReaderRun run = new(count);
        DirectoryInfo folder = Directory.CreateTempSubdirectory("poultry-readers-");
        try
        {
            foreach ((string name, byte[] bytes) in reader.Files)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(PathOf(folder, name))!);
                File.WriteAllBytes(PathOf(folder, name), bytes);
            }

            for (int number = first; number < first + count; number++)
            {
                run.Add(reader, seed, number, folder);
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        return run;
    }

    private static string PathOf(FileSystemInfo folder, string name) => Path.Combine(folder.FullName, name);

    private void Add(Reader reader, int seed, int number, DirectoryInfo folder)
    {
        RandomStream random = new(seed, number, 1);
        (string name, byte[] bytes) = reader.Files[Mutation.Below(reader.Files.Count, ref random)];
        File.WriteAllBytes(PathOf(folder, name), Mutation.Of(bytes, ref random));
        long start = Stopwatch.GetTimestamp();
        try
        {
            ReaderOutcome outcome = reader.Read(folder.FullName);
            Read += outcome.IsRead ? 1 : 0;
            Problems += outcome.Problems;
            Note(number, outcome.Fault);
        }
#pragma warning disable CA1031 // Whatever a reader throws is what is looked for.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            Note(number, exception.ToString());
        }

        TimeSpan took = Stopwatch.GetElapsedTime(start);
        Longest = took > Longest ? took : Longest;
        File.WriteAllBytes(PathOf(folder, name), bytes);
    }

    private void Note(int number, string? fault)
    {
        if (fault is not null)
        {
            Faults.Add(string.Create(CultureInfo.InvariantCulture, $"case {number}: {fault}"));
        }
    }
}
