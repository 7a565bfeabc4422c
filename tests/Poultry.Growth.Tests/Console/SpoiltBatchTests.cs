using Poultry.Growth.Benchmarks.Studies.Readers;
using Poultry.Growth.Numerics;
using Poultry.Growth.Tests.Properties.Sweep;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Batches spoilt at random: a plan with all its files, or problems and no file; never anything between.</summary>
public sealed class SpoiltBatchTests : IDisposable
{
    /// <summary>More on request: DEVELOPERS.md says how.</summary>
    private static readonly int Batches = SweepSettings.Calls / 400;

    private static readonly string[] Outputs = ["plan.html", "plan.ics", "plan.svg"];

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_plan_with_all_its_files_or_problems_and_none()
    {
        IReadOnlyList<(string Name, byte[] Bytes)> files = AllReaders.All.Single(reader => reader.Name == "BatchFile, metric").Files;
        (int planned, int refused) = (0, 0);
        foreach ((string name, byte[] bytes) in files)
        {
            File.WriteAllBytes(scratch.PathOf(name), bytes);
        }

        for (int batch = 0; batch < Batches; batch++)
        {
            RandomStream random = new(20271128, batch, 1);
            (string name, byte[] bytes) = files[Mutation.Below(files.Count, ref random)];
            File.WriteAllBytes(scratch.PathOf(name), Mutation.Of(bytes, ref random));

            ConsoleRun run = ConsoleRun.Of(
                "plan", scratch.PathOf("batch.json"), "--draws", "100", "--report", scratch.PathOf(Outputs[0]), "--ics", scratch.PathOf(Outputs[1]), "--chart", scratch.PathOf(Outputs[2]));

            run.Exit.Should().BeOneOf([0, 2], "case {0} ended with {1}", batch, run.Errors);
            scratch.Names().Intersect(Outputs).Should().BeEquivalentTo(run.Exit == 0 ? Outputs : [], "case {0}", batch);
            (run.Errors.Length > 0).Should().Be(run.Exit == 2);
            (planned, refused) = run.Exit == 0 ? (planned + 1, refused) : (planned, refused + 1);
            Array.ForEach(Outputs, output => File.Delete(scratch.PathOf(output)));
            File.WriteAllBytes(scratch.PathOf(name), bytes);
        }

        Math.Min(planned, refused).Should().BeGreaterThan(Batches / 8, "both ways are to be walked");
    }
}
