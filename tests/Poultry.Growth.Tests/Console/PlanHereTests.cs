using Poultry.Growth.Files;
using Poultry.Growth.Tests.Docs;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary><c>plan</c> without a file, in the folder of a batch.</summary>
[Collection(ProcessWide.Name)]
public sealed class PlanHereTests : IDisposable
{
    private readonly SamplesCopy folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_batch_file_of_the_folder_is_read()
    {
        BatchTemplates.Write(".", TemplateUnits.Metric).Should().BeEmpty();

        ConsoleRun here = ConsoleRun.Of("plan", "--draws", "100");

        here.Exit.Should().Be(0);
        here.Output.Should().Be(ConsoleRun.Of("plan", "batch.json", "--draws", "100").Output);
    }
}
