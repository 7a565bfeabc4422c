using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>How a batch is kept and what it is: all that a forecast of feed needs beside weights, birds and feeds.</summary>
public sealed class FeedingConditions
{
    /// <summary>The temperatures of the batch. Outdoors they must be those of the place: nothing is taken for granted.</summary>
    public required Temperatures Temperatures { get; init; }

    /// <summary>The birds of the batch; the curve given is of the same. Mixed: the curve is the mean of both sexes, parted by <see cref="Fitting.SexDimorphism"/>.</summary>
    public Sex Sex { get; init; } = Sex.Mixed;

    /// <summary>Fast or slow growing; fast unless told.</summary>
    public BirdType Type { get; init; } = BirdType.Fast;

    /// <summary>How energy is worked out; the default of the type unless told.</summary>
    /// <value><see cref="EnergyModel.HeatProduction"/> for fast birds, <see cref="EnergyModel.Liu2017"/> for slow ones.</value>
    public EnergyModel Model
    {
        get => field ?? EnergyModel.DefaultFor(Type);
        init;
    }

    /// <summary>The share of the feed that is spilt or spoilt; 0 unless told, since the tables behind the models hold their own.</summary>
    /// <exception cref="ArgumentOutOfRangeException">50 % or more.</exception>
    public Probability Waste
    {
        get;
        init
        {
            Require.Between(value.Percent, 0, 50, "%", nameof(Waste));
            field = value;
        }
    }

    /// <summary>What the birds take from pasture after they move out; nothing unless told.</summary>
    public PastureIntake Pasture { get; init; } = PastureIntake.None;

    /// <summary>How much more maintenance (in the default model: heat) ranging costs after the birds move out, 0 to 15 %; 0 unless told.</summary>
    /// <remarks>No value was ever measured in meat birds. Custom adds 10 to 15 %; hens that ranged much spent 5 % less; 176 birds on pasture performed like those in pens.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Above 15 %.</exception>
    public Probability Ranging
    {
        get;
        init
        {
            Require.Between(value.Percent, 0, 15, "%", nameof(Ranging));
            field = value;
        }
    }

    /// <summary>
    /// Live weight at hatch, 20 to 80 g, where the curve is not to be believed in the first week: weights then run from it evenly (in ratio) to the
    /// curve at 7 d. A projection needs it, a table from hatch on does not. Null unless told: the curve is asked from the start.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 20 to 80 g.</exception>
    public Mass? HatchWeight
    {
        get;
        init => field = value is { } hatch ? Mass.FromGrams(Require.Between(hatch.Grams, 20, 80, "g", nameof(HatchWeight))) : null;
    }

    /// <summary>How water rises in heat.</summary>
    public WaterInHeat WaterInHeat { get; init; } = WaterInHeat.SevenPercentOfBase;

    /// <summary>The same birds at other temperatures: at another time of the year, say.</summary>
    /// <param name="temperatures">Those of the place.</param>
    public FeedingConditions At(Temperatures temperatures) => new()
    {
        Temperatures = temperatures, Sex = Sex, Type = Type, Model = Model, Waste = Waste, Pasture = Pasture, Ranging = Ranging, HatchWeight = HatchWeight, WaterInHeat = WaterInHeat,
    };

    /// <summary>Birds, temperatures and model, as in <c>fast-growing birds, mixed, 18 °C; …</c>, in every culture.</summary>
    public override string ToString() =>
        (Type == BirdType.Fast ? "fast" : "slow") + "-growing birds, " + Sex switch { Sex.Male => "cockerels", Sex.Female => "pullets", _ => "mixed" } + ", " + Temperatures + "; " + Model;

    /// <summary>Whether the default model is used on the birds it is made for: only then does an early record correct the rest.</summary>
    internal bool TakesFarmFactor => Type == BirdType.Fast && Model is HeatProductionEnergy;
}
