using System.CommandLine;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>A command with an example for its help.</summary>
/// <param name="name">Its last word.</param>
/// <param name="description">For the help.</param>
/// <param name="example">What follows the name.</param>
/// <param name="under">The words before the name, where it belongs to another command.</param>
internal sealed class CalculationCommand(string name, string description, string example, string under = "") : Command(name, description)
{
    /// <summary>What to type after the program's name.</summary>
    public string Example { get; } = (under + " " + name + " " + example).TrimStart();
}
