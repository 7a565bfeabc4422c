using System.CommandLine;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>How many fates of a batch are drawn, and which.</summary>
internal sealed class SimulationOptions
{
    private readonly Option<string?> draws = new("--draws") { HelpName = "4000", Description = "How many fates of the batch are tried, 100 to 1000000. [default: 4000]" };

    private readonly Option<string?> seed = new("--seed") { HelpName = "1", Description = "Of all random numbers: the same seed gives the same answer. [default: 1]" };

    public void AddTo(Command command)
    {
        command.Add(draws);
        command.Add(seed);
    }

    public HarvestOptions Read(OptionWords words, double level, Waiting waiting) => new()
    {
        Draws = words.Whole(draws, 100, 1_000_000) ?? new HarvestOptions().Draws, Seed = words.Whole(seed, 0, int.MaxValue) ?? 1, Level = level, Progress = waiting,
    };
}
