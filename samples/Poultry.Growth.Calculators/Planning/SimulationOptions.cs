using System.CommandLine;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>How many fates of a batch are drawn, and which.</summary>
internal sealed class SimulationOptions
{
    private readonly Option<string?> draws = new("--draws") { HelpName = "4000", Description = "How many fates of the batch are tried, 100 to 1000000. [default: 4000]" };

    private readonly SeedOption seed = new();

    public void AddTo(Command command)
    {
        command.Add(draws);
        seed.AddTo(command);
    }

    public HarvestOptions Read(OptionWords words, double level, Waiting waiting) => new()
    {
        Draws = words.Whole(draws, 100, 1_000_000) ?? new HarvestOptions().Draws, Seed = seed.Read(words), Level = level, Progress = waiting,
    };
}
