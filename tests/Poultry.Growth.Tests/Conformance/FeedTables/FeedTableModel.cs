using Poultry.Growth.Feeding;

namespace Poultry.Growth.Tests.Conformance.FeedTables;

/// <summary>A model as the tables try it: with the hatch weight of the table where its body composition has one.</summary>
/// <param name="Name">As the page calls it.</param>
/// <param name="For">The model for birds that hatch at a weight.</param>
internal sealed record FeedTableModel(string Name, Func<Mass, EnergyModel> For)
{
    public static FeedTableModel Default { get; } = new("heat production (default, fast)", EnergyModel.HeatProductionFrom);

    public static FeedTableModel Sakomura { get; } = new("Sakomura 2005", FactorialEnergy.Sakomura);

    public static FeedTableModel Liu { get; } = new("Liu 2017 (default, slow)", FactorialEnergy.Liu);

    public static FeedTableModel Fraga { get; } = new("Fraga 2004", FactorialEnergy.Fraga);

    public static FeedTableModel DarmaniKuhi { get; } = new("Darmani Kuhi 2003", _ => EnergyModel.DarmaniKuhi2003);

    public static FeedTableModel Longo { get; } = new("Longo 2006, smooth, female 4.21", _ => EnergyModel.Longo2006);

    public static FeedTableModel LongoOddFemale { get; } = new("Longo 2006, smooth, female 7.04", _ => EnergyModel.Longo2006OddFemale);

    public static FeedTableModel LongoSteps { get; } = new("Longo 2006, steps as printed", _ => EnergyModel.Longo2006Steps);

    public static IReadOnlyList<FeedTableModel> All { get; } = [Default, DarmaniKuhi, Sakomura, Longo, LongoOddFemale, LongoSteps, Liu, Fraga];
}
