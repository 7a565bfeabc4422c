using System.CommandLine;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A shipped prior by its name, for commands to which growth is one thing among others.</summary>
internal sealed class ShippedPriorOptions
{
    private readonly Option<string?> prior = new("--prior") { HelpName = "NAME", Description = "What is known beforehand: " + ShippedPrior.Names + ". [default: fast-outdoor]" };

    private readonly Option<string?> sex = new("--sex") { HelpName = "mixed|male|female", Description = "The birds of the batch. [default: mixed]" };

    public static ShippedPriorOptions AddTo(Command command)
    {
        ShippedPriorOptions options = new();
        command.Add(options.prior);
        command.Add(options.sex);
        return options;
    }

    /// <summary>Whether one was named.</summary>
    public bool IsGiven(OptionWords words) => words.Text(prior) is not null;

    public GrowthPrior Read(OptionWords words) =>
        words.Choice(prior, ShippedPrior.All)(words.Sex(sex));
}
