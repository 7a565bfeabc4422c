namespace Poultry.Growth.Tests.Docs;

/// <summary>Tests that turn the console's output or the current folder, of which a process has one: they run alone.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class ProcessWide
{
    public const string Name = "process-wide";
}
