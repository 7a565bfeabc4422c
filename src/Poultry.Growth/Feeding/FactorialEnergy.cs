using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Maintenance of a named source, and what deposition of protein and fat costs (Sakomura et al. 2005).</summary>
internal sealed class FactorialEnergy : EnergyModel
{
    /// <summary>ME a gram deposited, kcal/g.</summary>
    private const double ProteinCost = 12.59, FatCost = 13.52;

    private readonly MaintenanceEnergy maintenance;

    private FactorialEnergy(ModelInfo model, MaintenanceEnergy maintenance, BodyComposition males, BodyComposition females, double cumulativeError, double dailyError)
        : base(males, females) =>
        (Model, this.maintenance, CumulativeError, DailyError) = (model, maintenance, cumulativeError, dailyError);

    public override ModelInfo Model { get; }

    internal override double CumulativeError { get; }

    internal override double DailyError { get; }

    public static EnergyModel Sakomura(Mass hatchWeight) => BySex(
        "energy-sakomura-2005", MaintenanceEnergy.Sakomura2005, hatchWeight, 0.08, 0.14,
        "Cumulative feed at 9 weeks of three printed tables: 13 % off at most. The weekly error slides from +20 % in the third week to -17 % in the ninth: never correct it by an early record. Its temperature term is measured: use it to compare temperatures and with the literature.");

    public static EnergyModel Liu(Mass hatchWeight) => BySex(
        "energy-liu-2017", MaintenanceEnergy.Liu2017, hatchWeight, 0.12, 0.2,
        "Four slow lines, diet unknown: cumulative feed at 4, 8 and 12 weeks within about 20 %; that is what is claimed. On fast-growing birds 14 % too much at most at 6 weeks and 8 % at 9; the weekly error slides.");

    public static EnergyModel Fraga(Mass hatchWeight) => BySex(
        "energy-fraga-2004", MaintenanceEnergy.Fraga2004, hatchWeight, 0.12, 0.2,
        "Four slow lines, diet unknown: cumulative feed at 4, 8 and 12 weeks within about 20 %. On fast-growing birds 10 % off at most at 6 weeks and 8 % at 9; the weekly error slides.");

    public static EnergyModel DarmaniKuhi() => new FactorialEnergy(
        Info(
            "energy-darmani-kuhi-2003",
            MaintenanceEnergy.DarmaniKuhi2003,
            [FeedingSources.Caldas2019],
            "Cumulative feed at 6, 8 and 9 weeks of three printed tables: 11 % off at most; single weeks 2 to 9: 7.4 % rms. Fast-growing birds only. No temperature in it."),
        MaintenanceEnergy.DarmaniKuhi2003,
        BodyComposition.Caldas2019,
        BodyComposition.Caldas2019,
        0.08,
        0.1);

    internal override EnergyParts On(in BirdDay day)
    {
        (double protein, double fat) = Deposited(day);
        return new(maintenance.KilocaloriesPerDay(day.Kilograms, day.Celsius), 0, Deposition(protein, fat));
    }

    /// <summary>12.59 Gp + 13.52 Gf, kcal from g.</summary>
    internal static double Deposition(double proteinGrams, double fatGrams) => (ProteinCost * proteinGrams) + (FatCost * fatGrams);

    private static FactorialEnergy BySex(string id, MaintenanceEnergy maintenance, Mass hatchWeight, double cumulativeError, double dailyError, string accuracy) => new(
        Info(id, maintenance, [FeedingSources.Cobb700, FeedingSources.Caldas2019], accuracy),
        maintenance,
        BodyComposition.Cobb700(Sex.Male, hatchWeight),
        BodyComposition.Cobb700(Sex.Female, hatchWeight),
        cumulativeError,
        dailyError);

    private static ModelInfo Info(string id, MaintenanceEnergy maintenance, Citation[] composition, string accuracy) => new(
        id,
        maintenance.Model.Name + ", and deposition",
        "ME = MEm + 12.59 Gp + 13.52 Gf; " + maintenance.Model.Equation,
        [
            new("ME", "metabolizable energy eaten", "kcal/d"),
            .. maintenance.Model.Symbols,
            new("Gp", "protein deposited, by the composition of the body", "g/d"),
            new("Gf", "fat deposited", "g/d"),
        ],
        [.. maintenance.Model.Citations.Append(FeedingSources.Sakomura2005).DistinctBy(source => source.Key), .. composition, FeedingSources.FeedTables],
        accuracy,
        HowKnown.Derived,
        [.. maintenance.Model.Ranges, new ValidityRange("live weight", 0.04, 4, "kg")]);
}
