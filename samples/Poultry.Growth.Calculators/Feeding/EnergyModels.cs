using Poultry.Growth.Feeding;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>The models by the names of options: their ids without the word that all begin with.</summary>
internal static class EnergyModels
{
    public static IReadOnlyList<(string Name, EnergyModel Value)> Choices { get; } = [.. EnergyModel.All.Select(model => (NameOf(model), model))];

    public static string Names => string.Join(", ", Choices.Select(choice => choice.Name));

    public static string NameOf(EnergyModel model) => model.Model.Id["energy-".Length..];

    /// <summary>Whether the model has costs by age.</summary>
    public static bool NeedsAge(EnergyModel model) => model.Model.Symbols.Any(symbol => symbol.Symbol == "c");
}
