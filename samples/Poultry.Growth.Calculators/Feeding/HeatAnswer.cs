using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>Indices, heat and comfort at one temperature.</summary>
internal sealed class HeatAnswer
{
    /// <summary>The relations for heat and moisture end here.</summary>
    private const double HottestForBirdHeat = 40;

    public required Temperature DryBulb { get; init; }

    public required Temperature WetBulb { get; init; }

    public required bool FromHumidity { get; init; }

    public required Speed? Wind { get; init; }

    public required Mass? Weight { get; init; }

    public Temperature Thi => HeatIndex.Thi(DryBulb, WetBulb);

    /// <summary>Null without wind or outside what was measured.</summary>
    public Temperature? Thvi => Wind is { } speed ? HeatIndex.Thvi(DryBulb, WetBulb, speed) : null;

    /// <summary>Of one bird; null without a weight, or above 40 °C.</summary>
    public HeatGivenOff? GivenOff { get; private init; }

    /// <summary>By source, where age or weight tell.</summary>
    public required IReadOnlyList<(string Source, Temperature Comfortable)> Comfort { get; init; }

    public required IReadOnlyList<Citation> Sources { get; init; }

    public IReadOnlyList<Caution> Cautions =>
    [
        .. HeatIndex.Cautions(DryBulb, WetBulb, Weight),
        .. FromHumidity ? [Poultry.Growth.Feeding.WetBulb.FromHumidity] : Array.Empty<Caution>(),
        .. Wind is not null && Thvi is null ? [new Caution("thvi-not-measured", "The index with moving air was measured at 35 to 41 °C (95 to 106 °F) and 0.2 to 1.2 m/s (39 to 236 ft/min) only: no value here.")] : Array.Empty<Caution>(),
        .. GivenOff?.Cautions ?? [],
    ];

    public static HeatAnswer To(Temperature dryBulb, Temperature? wetBulb, Probability? humidity, Speed? wind, Mass? weight, Age? age)
    {
        List<(string, Temperature)> comfort = [];
        List<ModelInfo> models = [HeatIndex.TemperatureHumidity, HeatIndex.TemperatureHumidityVelocity];
        if (weight is { } live)
        {
            comfort.Add((FastingHeat.Model.Id + " (least heat, by weight)", FastingHeat.CriticalTemperature(live)));
            models.AddRange([FastingHeat.Model, BirdHeat.ChepeteXin2001.Model]);
        }

        if (age is { } known)
        {
            comfort.AddRange(ComfortSchedule.All.Select(schedule => (schedule.Model.Id + " (by age)", schedule.At(known))));
            models.AddRange(ComfortSchedule.All.Select(schedule => schedule.Model));
        }

        if (humidity is not null)
        {
            models.Add(Poultry.Growth.Feeding.WetBulb.Model);
        }

        return new()
        {
            DryBulb = dryBulb,
            WetBulb = wetBulb ?? Poultry.Growth.Feeding.WetBulb.At(dryBulb, humidity!.Value),
            FromHumidity = humidity is not null,
            Wind = wind,
            Weight = weight,
            GivenOff = weight is { } bird && dryBulb.DegreesCelsius <= HottestForBirdHeat ? BirdHeat.ChepeteXin2001.At(bird, dryBulb) : null,
            Comfort = comfort,
            Sources = [.. models.SelectMany(model => model.Citations).DistinctBy(source => source.Key)],
        };
    }
}
