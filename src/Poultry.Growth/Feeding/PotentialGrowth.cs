using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>The most that a body, or the protein in it, can grow a day, by a Gompertz law: gain B P ln(Pm/P), highest at Pm/e.</summary>
public sealed class PotentialGrowth
{
    private readonly double matureGrams, ratePerDay;

    private PotentialGrowth(ModelInfo model, double matureGrams, double ratePerDay) => (Model, this.matureGrams, this.ratePerDay) = (model, matureGrams, ratePerDay);

    /// <summary>Feather-free body protein of cockerels, 2024.</summary>
    public static PotentialGrowth ProteinOfCockerels { get; } = new(
        Info("potential-protein-male", "Potential protein growth of cockerels", "G = 0.0417 P ln(1480/P)", "body protein", FeedingSources.Cobb700, "0 to 15 weeks."), 1480, 0.0417);

    /// <summary>Feather-free body protein of pullets, 2024.</summary>
    public static PotentialGrowth ProteinOfPullets { get; } = new(
        Info("potential-protein-female", "Potential protein growth of pullets", "G = 0.0402 P ln(1190/P)", "body protein", FeedingSources.Cobb700, "0 to 15 weeks."), 1190, 0.0402);

    /// <summary>Live weight of a male meat bird of 1982.</summary>
    public static PotentialGrowth LiveWeightOf1982 { get; } = new(
        Info(
            "potential-live-weight-1982",
            "Potential growth of a male meat bird, 1982",
            "G = 0.0267 P ln(5600/P)",
            "live weight",
            new Citation("Parks1982", "Parks J.R. 1982, in a table of PMC7149552", HowKnown.ReadInSource, "Table 1: A 5.6 kg, B 0.0267 per day, R2 .990"),
            "R2 .990 on the birds of its day."),
        5600,
        0.0267);

    /// <summary>What it is and where it comes from.</summary>
    public ModelInfo Model { get; }

    /// <summary>The mature mass.</summary>
    public Mass Mature => Mass.FromGrams(matureGrams);

    /// <summary>The mass at which growth is fastest: a part of 1/e of the mature mass.</summary>
    public Mass FastestAt => Mass.FromGrams(matureGrams / Math.E);

    /// <summary>The fastest growth.</summary>
    public MassFlow Fastest => MassFlow.FromGramsPerDay(ratePerDay * matureGrams / Math.E);

    /// <summary>The rate freed of size, B A^0.27 with A in kg, by which kinds of birds are compared.</summary>
    public double ScaledRatePerDay => ratePerDay * Math.Pow(matureGrams / 1000, 0.27);

    /// <summary>The most that it grows a day.</summary>
    /// <param name="mass">Above 0, not above <see cref="Mature"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these.</exception>
    public MassFlow At(Mass mass)
    {
        double grams = Require.Between(Require.Positive(mass.Grams, "g", nameof(mass)), 0, matureGrams, "g", nameof(mass));
        return MassFlow.FromGramsPerDay(ratePerDay * grams * Math.Log(matureGrams / grams));
    }

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Info(string id, string name, string equation, string what, Citation source, string accuracy) => new(
        id,
        name,
        equation,
        [new("G", "gain of " + what, "g/d"), new("P", what, "g")],
        [source],
        accuracy + " A ceiling for well-fed birds in comfort, no forecast.",
        source.HowKnown);
}
