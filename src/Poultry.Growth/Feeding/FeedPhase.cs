using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>A feed and the ages at which it is fed.</summary>
public sealed class FeedPhase
{
    private const double LeastDiet = 1000, MostDiet = 5000;

    /// <summary>A feed fed from one age to another.</summary>
    /// <param name="name">As the farm calls it.</param>
    /// <param name="from">First fed at this age, any.</param>
    /// <param name="to">Fed up to this age, later than <paramref name="from"/>; null: until the end.</param>
    /// <param name="energy">Metabolizable energy, 1000 to 5000 kcal/kg (4.2 to 20.9 MJ/kg).</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The end is not later, or the energy is out of range.</exception>
    public FeedPhase(string name, Age from, Age? to, SpecificEnergy energy)
    {
        Name = Require.Text(name);
        From = from;
        To = to is { } end ? Age.FromDays(Require.Above(end.Days, from.Days, "d", nameof(to))) : null;
        KilocaloriesPerKilogram = RequireDiet(energy, nameof(energy));
    }

    /// <summary>As the farm calls it.</summary>
    public string Name { get; }

    /// <summary>First fed at this age.</summary>
    public Age From { get; }

    /// <summary>Fed up to this age; null: until the end.</summary>
    public Age? To { get; }

    /// <summary>Metabolizable energy of the feed.</summary>
    public SpecificEnergy Energy => Calories.PerKilogram(KilocaloriesPerKilogram);

    /// <summary>Crude protein of the feed; null where it is not known. Nothing here depends on it.</summary>
    public Probability? Protein { get; init; }

    /// <summary>What it costs; null where it is not known.</summary>
    public UnitPrice? Price { get; init; }

    /// <summary>What one bag holds; null where it comes loose.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public Mass? Bag
    {
        get;
        init => field = value is { } bag ? Mass.FromKilograms(Require.Positive(bag.Kilograms, "kg", nameof(Bag))) : null;
    }

    /// <summary>How long it takes from the order until it is there, 0 or more; 0 where nothing is said.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Duration DeliveryTime
    {
        get;
        init => field = Duration.FromDays(Require.NotNegative(value.Days, "d", nameof(DeliveryTime)));
    }

    internal double KilocaloriesPerKilogram { get; }

    /// <summary>As in <c>starter 0 to 21 d, 3000 kcal/kg</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Name} {From.Days:0.##} to {(To is { } to ? to.ToString() : "the end")}, {KilocaloriesPerKilogram:0} kcal/kg");

    internal static double RequireDiet(SpecificEnergy energy, string name) =>
        Require.Between(Calories.PerKilogram(energy), LeastDiet, MostDiet, "kcal/kg", name);
}
