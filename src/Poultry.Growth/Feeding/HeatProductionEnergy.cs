using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Heat of fed birds as measured, and the energy that stays in the body. No maintenance, no heat increment, no activity: they are in the heat.</summary>
internal sealed class HeatProductionEnergy(Mass hatchWeight)
    : EnergyModel(BodyComposition.Cobb700(Sex.Male, hatchWeight), BodyComposition.Cobb700(Sex.Female, hatchWeight))
{
    /// <summary>Combustion of body protein and fat, kcal/g (Caldas 2019).</summary>
    private const double ProteinEnergy = 5.45, FatEnergy = 8.95;

    public static ModelInfo Info { get; } = new(
        "energy-heat-production",
        "Heat of fed birds and energy retained",
        "ME = HP + dQ + RE; HP = 218.9 M^0.74; RE = 5.45 dP + 8.95 dL; dQ = M^0.75 (s(M,T) - s(M,Tstd)); s = 2.65 max(0, CT - T) + 4.41 max(0, T - CT); CT = 22.46 + 13.37 exp(-0.4906 M)",
        [
            new("ME", "metabolizable energy eaten", "kcal/d"),
            new("HP", "heat of a fed bird, 10.60 M^0.74 W", "kcal/d"),
            new("dQ", "more or less heat than in the standard house", "kcal/d"),
            new("RE", "energy retained", "kcal/d"),
            new("M", "live weight in the middle of the day", "kg"),
            new("dP", "protein put on, by the composition of each sex", "g/d"),
            new("dL", "fat put on", "g/d"),
            new("s", "heat above the least", "kcal/kg^0.75/d"),
            new("T", "temperature", "°C"),
            new("Tstd", "standard house: 32 °C falling by 3 °C a week to 21 °C", "°C"),
            new("CT", "temperature of least heat", "°C"),
        ],
        [
            .. BirdHeat.ChepeteXin2001.Model.Citations, FeedingSources.Caldas2019, FeedingSources.Cobb700, FeedingSources.CriticalTemperature, FeedingSources.StandardHouse,
            FeedingSources.FeedTables, FeedingSources.Objectives2012, FeedingSources.Nrc1984, FeedingSources.PoultryCrc,
        ],
        "Cumulative feed at 6, 8 and 9 weeks of three printed tables, each sex: 6.3 % off at most, 3.2 % in the mean; single weeks 2 to 9: 6.4 % rms. No figure was fitted to them, but the model was chosen among more than a hundred combinations after looking at them. It fails for birds held short of feed, sick or mature (too much), for females after 9 weeks (11 to 19 % too much a week) and for slow-growing birds (35 to 63 % too much a week at 10 to 12 weeks). In heat it asks for more feed while birds eat less: lower the weight curve, not the feed. Feed is need over the energy of the diet: trials from 2700 to 3300 kcal/kg bear that out, very dilute finishers do not (birds need a week to adapt and eat too little energy).",
        HowKnown.Assumption,
        [new ValidityRange("live weight", 0.04, 4, "kg"), new ValidityRange("temperature", 5, 35, "°C"), new ValidityRange("age", 0, 63, "d")]);

    public override ModelInfo Model => Info;

    internal override double CumulativeError => 0.05;

    internal override double DailyError => 0.08;

    internal override string MaintenanceWord => "heat";

    internal override EnergyParts On(in BirdDay day)
    {
        double kilograms = day.Kilograms;
        (double protein, double fat) = Deposited(day);
        double standard = FastingHeat.AboveLeast(kilograms, Temperatures.StandardCelsius(day.AgeDays));
        return new(
            BirdHeat.ChepeteXin2001.Watts(kilograms) * Calories.KilocaloriesPerDayPerWatt,
            Math.Pow(kilograms, 0.75) * (FastingHeat.AboveLeast(kilograms, day.Celsius) - standard),
            Retained(protein, fat));
    }

    /// <summary>RE = 5.45 dP + 8.95 dL, kcal from g.</summary>
    internal static double Retained(double proteinGrams, double fatGrams) => (ProteinEnergy * proteinGrams) + (FatEnergy * fatGrams);
}
