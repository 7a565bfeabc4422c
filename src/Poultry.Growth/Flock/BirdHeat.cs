using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Flock;

/// <summary>The heat that a fed, growing bird gives off, by its weight: HP = a M^b.</summary>
public sealed class BirdHeat
{
    private readonly double watts;
    private readonly double exponent;

    private BirdHeat(double watts, double exponent, ModelInfo model) => (this.watts, this.exponent, Model) = (watts, exponent, model);

    // Before the models that use them: static members are made in the order of the text.
    private static ModelSymbol TotalHeat { get; } = new("HP", "total heat of one bird", "W");

    private static ModelSymbol LiveWeight { get; } = new("M", "live weight", "kg");

    private static Caution OutsideRange { get; } = new(
        "bird-heat-outside-range", "The heat of birds was measured from " + WeightText.Of(0.1) + " to " + WeightText.Of(3.0) + "; this weight lies outside.");

    /// <summary>HP = 10.60 M^0.74 W: birds of 1982 to 2000. What to use.</summary>
    public static BirdHeat ChepeteXin2001 { get; } = new(10.60, 0.74, new(
        "bird-heat-1982-2000",
        "Heat of meat birds, data of 1982 to 2000",
        "HP = 10.60 M^0.74",
        [TotalHeat, LiveWeight],
        [ChepeteXin("abstract: broilers, 1982 to 2000")],
        "Within 2.1 % of the CIGR line from 0.1 to 3 kg. Birds on litter give off about 17 % less sensible heat than tables say (Pedersen and Thomsen 2000).",
        HowKnown.ReadInSource,
        [new ValidityRange("live weight", 0.1, 3, "kg")]));

    /// <summary>HP = 8.31 M^0.71 W: birds of 1968, to see how far modern birds have moved.</summary>
    public static BirdHeat Birds1968 { get; } = new(8.31, 0.71, new(
        "bird-heat-1968",
        "Heat of meat birds, data of 1968",
        "HP = 8.31 M^0.71",
        [TotalHeat, LiveWeight],
        [ChepeteXin("abstract: broilers, 1968")],
        "A modern bird of 1.6 kg gives off 1.29 times as much (the paper says 1.21 to 1.44).",
        HowKnown.ReadInSource,
        [new ValidityRange("live weight", 0.1, 3, "kg")]));

    /// <summary>HP = 10.62 M^0.75 W: the CIGR line as recalled. For comparison, never a default.</summary>
    public static BirdHeat Cigr2002 { get; } = new(10.62, 0.75, new(
        "bird-heat-cigr",
        "Heat of meat birds by CIGR",
        "HP = 10.62 M^0.75",
        [TotalHeat, LiveWeight],
        [HouseClimate.Cigr],
        "Recalled, unverified; within 2.1 % of the line of Chepete and Xin from 0.1 to 3 kg.",
        HowKnown.Memory,
        [new ValidityRange("live weight", 0.1, 3, "kg")]));

    /// <summary>Equation, source and range.</summary>
    public ModelInfo Model { get; }

    /// <summary>Total heat of one bird at about 20 °C.</summary>
    /// <param name="liveWeight">Above 0; measured from 0.1 to 3 kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public Power Total(Mass liveWeight) => Power.FromWatts(Watts(Require.Positive(liveWeight.Kilograms, "kg", nameof(liveWeight))));

    /// <summary>Heat and moisture of one bird at another temperature.</summary>
    /// <param name="liveWeight">Above 0; measured from 0.1 to 3 kg.</param>
    /// <param name="air">-20 to 40 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight or the temperature is out of its range.</exception>
    public HeatGivenOff At(Mass liveWeight, Temperature air) =>
        HouseClimate.At(Total(liveWeight), air, Model.Ranges[0].Contains(liveWeight.Kilograms) ? [] : [OutsideRange]);

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    internal double Watts(double kilograms) => watts * Math.Pow(kilograms, exponent);

    private static Citation ChepeteXin(string locator) => new(
        "ChepeteXin2001", "Chepete H.J., Xin H. 2001. Heat and moisture production of poultry and their housing systems. Iowa State University", HowKnown.ReadInSource, locator);
}
