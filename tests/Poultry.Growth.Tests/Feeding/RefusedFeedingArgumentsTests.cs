using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Feeding;

/// <summary>What is missing or makes no sense is refused where it is given, by name.</summary>
public sealed class RefusedFeedingArgumentsTests
{
    private static readonly Mass Two = Mass.FromKilograms(2);
    private static readonly Temperature Mild = Temperature.FromDegreesCelsius(20);
    private static readonly MassFlow Gain = MassFlow.FromGramsPerDay(60), Loss = MassFlow.FromGramsPerDay(-1);
    private static readonly Power Heat = Power.FromWatts(10);
    private static readonly EnergyModel Model = EnergyModel.HeatProductionFrom(Mass.FromGrams(42));

    public static TheoryData<string, Action> Senseless => new()
    {
        { "batch", () => BatchFigures.Of(null!) },
        { "body", () => BodyTemperatureGrowth.At(Temperature.FromDegreesCelsius(40.9)) },
        { "body", () => BodyTemperatureGrowth.At(Temperature.FromDegreesCelsius(44.1)) },
        { "weight", () => BreederEnergy.Combs1968.At(Mass.Zero, Gain, Mild) },
        { "gain", () => BreederEnergy.Combs1968.At(Two, Loss, Mild) },
        { "temperature", () => BreederEnergy.Combs1968.At(Two, Gain, Temperature.FromDegreesCelsius(51)) },
        { "weight", () => Model.Need(Sex.Male, Mass.FromGrams(9.9), MassFlow.Zero, Mild, Age.FromDays(40)) },
        { "weight", () => Model.Need(Sex.Male, Mass.FromGrams(12_001), MassFlow.Zero, Mild, Age.FromDays(40)) },
        { "weight", () => MaintenanceEnergy.Liu2017.At(Mass.Zero, Mild) },
        { "mass", () => PotentialGrowth.ProteinOfCockerels.At(Mass.Zero) },
        { "mass", () => PotentialGrowth.ProteinOfCockerels.At(PotentialGrowth.ProteinOfCockerels.Mature * 1.001) },
        { "feed", () => DrinkingWater.ByFeed(Loss, Mild) },
        { "fastingHeat", () => EffectiveEnergy.Required(-Heat, Gain, Gain) },
        { "protein", () => EffectiveEnergy.Required(Heat, Loss, Gain) },
        { "fat", () => EffectiveEnergy.Required(Heat, Gain, Loss) },
        { "weight", () => FastingHeat.At(Mass.Zero, Mild) },
        { "weight", () => FastingHeat.CriticalTemperature(Mass.Zero) },
        { "wetBulb", () => HeatIndex.Thi(Mild, Temperature.FromDegreesCelsius(20.1)) },
        { "wetBulb", () => HeatIndex.Thi(Mild, Temperature.FromDegreesCelsius(-40.1)) },
        { "airSpeed", () => HeatIndex.Thvi(Mild, Mild, Speed.FromMetersPerSecond(-0.1)) },
        { "normalGain", () => RestrictedGrowth.Saving(Sex.Male, Two, MassFlow.Zero, Gain) },
        { "gain", () => RestrictedGrowth.Saving(Sex.Male, Two, Gain, MassFlow.FromGramsPerDay(60.1)) },
        { "gain", () => RestrictedGrowth.Saving(Sex.Male, Two, Gain, MassFlow.FromGramsPerDay(-60.1)) },
        { "weight", () => RestrictedGrowth.Saving(Sex.Male, Mass.FromGrams(20), Gain, MassFlow.Zero) },
        { "conversion", () => WeightCorrection.To2500Grams.Correct(null!, Two) },
        { "meanLiveWeight", () => WeightCorrection.To2500Grams.Correct(FeedConversion.Of(1.6, FeedConversionBasis.LiveWeight), Mass.Zero) },
        { "humidity", () => WetBulb.At(Mild, Probability.FromPercent(4.9)) },
        { "weight", () => WithdrawalShrink.Of(Mass.Zero, Duration.FromHours(8), Duration.Zero) },
    };

    [Theory]
    [MemberData(nameof(Senseless), DisableDiscoveryEnumeration = true)]
    public void What_makes_no_sense_is_refused_by_name(string argument, Action call) => call.Should().Throw<ArgumentException>().WithParameterName(argument);
}
