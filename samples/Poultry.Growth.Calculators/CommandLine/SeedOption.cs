using System.CommandLine;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>Which random numbers an answer draws.</summary>
internal sealed class SeedOption
{
    private readonly Option<string?> seed = new("--seed") { HelpName = "1", Description = "Of all random numbers: the same seed gives the same answer. [default: 1]" };

    public void AddTo(Command command) => command.Add(seed);

    public int Read(OptionWords words) => words.Whole(seed, 0, int.MaxValue) ?? 1;
}
