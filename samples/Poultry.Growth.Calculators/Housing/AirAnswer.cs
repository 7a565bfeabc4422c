using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Everything that tables and JSON show of air.</summary>
internal sealed class AirAnswer
{
    private static readonly IReadOnlyList<LimitSubject> Subjects = Array.AsReadOnly(
    [
        LimitSubject.Ammonia, LimitSubject.CarbonDioxide, LimitSubject.InsideMinusOutside, LimitSubject.RelativeHumidity, LimitSubject.LightIntensity,
        LimitSubject.LightHours, LimitSubject.DarkHours, LimitSubject.UnbrokenDarkHours, LimitSubject.AirCapacity,
    ]);

    private readonly CarbonDioxide gas;

    public AirAnswer(
        int birds, Mass weight, Temperature? inside, VolumeConcentration? insideGas, VolumeConcentration? outsideGas, BirdHeat heat, CarbonDioxide gas, Keeping keeping, IReadOnlyList<Limit> limits)
    {
        (Birds, Weight, Heat, this.gas, Keeping) = (birds, weight, heat, gas, keeping);
        CarbonDioxideGiven = gas.With(birds * heat.Total(weight));
        Ventilation = insideGas is { } high && outsideGas is { } low ? CarbonDioxideBalance.Ventilation(CarbonDioxideGiven, high, low) : null;
        Given = inside is { DegreesCelsius: >= -20 and <= 40 } air ? heat.At(weight, air) : null;
        Limits = LimitVerdict.Of(limits.Where(limit => Subjects.Contains(limit.Subject)), keeping);
        Capacity = [.. EquipmentNeed.For(birds, weight, keeping, limits).Where(need => need.AirCapacity is not null)];
    }

    public Keeping Keeping { get; }

    public int Birds { get; }

    public Mass Weight { get; }

    public BirdHeat Heat { get; }

    public VolumeFlow CarbonDioxideGiven { get; }

    /// <summary>Null where the contents inside and outside are not said.</summary>
    public VolumeFlow? Ventilation { get; }

    public VolumeFlow MinimumByWeight => Birds * MinimumVentilation.BritishPoultryScience1981.PerBird(Weight);

    /// <summary>Heat and moisture of one bird; null where the temperature is not said, or outside what the relations are for.</summary>
    public HeatGivenOff? Given { get; }

    public IReadOnlyList<LimitVerdict> Limits { get; }

    /// <summary>What texts ask of fans and openings.</summary>
    public IReadOnlyList<EquipmentNeed> Capacity { get; }

    public IReadOnlyList<Caution> Cautions =>
    [
        MinimumVentilation.MoistureMayNeedMore,
        .. Ventilation is null ? Array.Empty<Caution>() : [CarbonDioxideBalance.Heaters],
        .. Heat.Model.HowKnown == HowKnown.Memory ? [new Caution("heat-unverified", "The heat of the birds is by a line that is recalled and unverified.")] : Array.Empty<Caution>(),
        .. Given?.Cautions ?? [],
        .. LimitsTable.Cautions(Limits),
    ];

    public IReadOnlyList<Citation> Sources =>
    [
        .. MinimumVentilation.BritishPoultryScience1981.Model.Citations.Concat(Heat.Model.Citations).Concat(gas.Model.Citations)
            .Concat(Given is null ? [] : HeatGivenOff.Model.Citations).Concat(LimitsTable.Sources(Limits, Keeping)).DistinctBy(source => source.Key),
    ];
}
