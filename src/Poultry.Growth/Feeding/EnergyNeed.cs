using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What a bird needs a day, in the parts of the model that gave it. The parts add up to the whole.</summary>
public sealed class EnergyNeed
{
    internal EnergyNeed(EnergyModel model, EnergyParts parts, IReadOnlyList<Caution> cautions) =>
        (Model, Parts, Cautions) = (model, parts, cautions);

    /// <summary>Which model gave it.</summary>
    public EnergyModel Model { get; }

    /// <summary>All heat of a fed bird in the default model; energy for maintenance in the others.</summary>
    public Power Maintenance => Calories.PerDay(Parts.Maintenance);

    /// <summary>More or less than that for a temperature other than the standard one; 0 where the model has temperature in its maintenance, or none.</summary>
    public Power TemperatureTerm => Calories.PerDay(Parts.TemperatureTerm);

    /// <summary>Energy retained in protein and fat in the default model; what their deposition costs in the others.</summary>
    public Power Gain => Calories.PerDay(Parts.Gain);

    /// <summary>All of it: metabolizable energy a bird a day.</summary>
    public Power Total => Calories.PerDay(Parts.Total);

    /// <summary>What to mind: weights, temperatures or ages outside what was measured.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    internal EnergyParts Parts { get; }

    /// <summary>How far the need may lie from it: by how far the model lay from the feed of single weeks in printed tables.</summary>
    /// <param name="level">The chance that the interval claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval<Power> Within(double level = GrowthFit.DefaultLevel)
    {
        double spread = Spread(level);
        return Interval<Power>.Of(Calories.PerDay(Parts.Total / spread), Calories.PerDay(Parts.Total * spread), level);
    }

    /// <summary>Feed a day that holds the need.</summary>
    /// <param name="dietEnergy">Metabolizable energy of the feed, 1000 to 5000 kcal/kg.</param>
    /// <param name="level">The chance that the interval claims, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The energy or the level is out of range.</exception>
    public Estimate<Mass> FeedPerDay(SpecificEnergy dietEnergy, double level = GrowthFit.DefaultLevel)
    {
        double kilograms = Parts.Total / FeedPhase.RequireDiet(dietEnergy, nameof(dietEnergy));
        double spread = Spread(level);
        return new(
            Mass.FromKilograms(kilograms), Interval<Mass>.Of(Mass.FromKilograms(kilograms / spread), Mass.FromKilograms(kilograms * spread), level), Model.Model, Cautions);
    }

    /// <summary>In kcal a bird a day, as in <c>558 kcal/d (heat 366, gain 193)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Parts.Total:0} kcal/d ({Model.MaintenanceWord} {Parts.Maintenance:0}{Term()}, gain {Parts.Gain:0})");

    private string Term() => Parts.TemperatureTerm == 0
        ? ""
        : string.Create(CultureInfo.InvariantCulture, $", temperature {Parts.TemperatureTerm:+0;-0;0}");

    private double Spread(double level) => Math.Exp(Distributions.NormalQuantile((1 + Require.Share(level)) / 2) * Model.DailyError);
}
