using System.CommandLine;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>A command with an example for its help.</summary>
internal sealed class CalculationCommand(string name, string description, string example) : Command(name, description)
{
    /// <summary>What to type after the program's name.</summary>
    public string Example { get; } = name + " " + example;
}
