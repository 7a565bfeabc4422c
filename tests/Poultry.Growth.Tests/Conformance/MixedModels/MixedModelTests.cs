namespace Poultry.Growth.Tests.Conformance.MixedModels;

/// <summary>That learning ends where it says; where that is, is in <see cref="MixedModelChecks"/>.</summary>
public class MixedModelTests
{
    [Fact]
    public void Orange_trees_converge_in_forty_rounds_from_both_starts() => PopulationRuns.Orange.Value.Should().OnlyContain(run => run.Converged && run.Rounds <= 40);

    [Fact]
    public void Twenty_simulated_batches_converge_from_both_starts() => PopulationRuns.TwentyBatches.Value.Should().OnlyContain(run => run.Converged);
}
