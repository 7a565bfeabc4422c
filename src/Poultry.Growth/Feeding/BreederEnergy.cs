using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Energy equations of breeders and hens, to compare with: not for meat birds, whose need they miss.</summary>
/// <remarks>ME = a W^b f(T) + c W^d G. Eggs, which birds raised for meat do not lay, are left out.</remarks>
public sealed class BreederEnergy
{
    private readonly double maintenance, perDegree, exponent, gain, gainExponent;

    private BreederEnergy(ModelInfo model, double maintenance, double perDegree, double exponent, double gain, double gainExponent)
    {
        Model = model;
        (this.maintenance, this.perDegree, this.exponent, this.gain, this.gainExponent) = (maintenance, perDegree, exponent, gain, gainExponent);
    }

    /// <summary>Breeder pullets of 9 to 14 weeks.</summary>
    public static BreederEnergy Sakomura2003Pullets { get; } = new(
        Info(
            "breeder-energy-sakomura-2003",
            "Energy of breeder pullets, 9 to 14 weeks",
            "ME = W^0.75 (186.52 - 1.94 T) + 2.69 G",
            byTemperature: true,
            new Citation("Sakomura2003", "Sakomura N.K. et al. 2003. Poult. Sci. 82, doi 10.1093/ps/82.3.419", HowKnown.ReadInSource, "abstract: first of two sets"),
            [new ValidityRange("temperature", 15, 30, "°C")]),
        186.52,
        -1.94,
        0.75,
        2.69,
        0);

    /// <summary>Broiler breeder hens, 2022.</summary>
    public static BreederEnergy Afrouziyeh2022 { get; } = new(
        Info(
            "breeder-energy-afrouziyeh-2022",
            "Energy of broiler breeders, 2022",
            "ME = 100.47 W^0.56 + 3.49 G",
            byTemperature: false,
            new Citation("Afrouziyeh2022", "Afrouziyeh et al. 2022, PubMed 34823174", HowKnown.ReadInSource, "abstract, gaining birds without eggs"),
            []),
        100.47,
        0,
        0.56,
        3.49,
        0);

    /// <summary>Broiler breeder hens, 2020: gain costs more in heavier birds.</summary>
    public static BreederEnergy VanDerKlein2020 { get; } = new(
        Info(
            "breeder-energy-van-der-klein-2020",
            "Energy of broiler breeders, 2020",
            "ME = 130.6 W^0.58 + 0.63 G W^0.54",
            byTemperature: false,
            new Citation("VanDerKlein2020", "van der Klein S.A.S. et al. 2020, PubMed 32867986", HowKnown.ReadInSource, "abstract, without eggs"),
            []),
        130.6,
        0,
        0.58,
        0.63,
        0.54);

    /// <summary>Laying hens, 1968: 1.45 kcal a g^0.653, less in warmth. In grams and Fahrenheit as printed.</summary>
    public static BreederEnergy Combs1968 { get; } = new(
        Info(
            "breeder-energy-combs-1968",
            "Energy of laying hens, 1968",
            "ME = 1.45 (1000 W)^0.653 (1.78 - 0.012 (32 + 1.8 T)) + 3.13 G",
            byTemperature: true,
            new Citation("Combs1968", "Combs G.F. 1968, as quoted", HowKnown.Secondary, "CF = 1.78 - 0.012 °F"),
            []),
        1.45 * Math.Pow(1000, 0.653) * (1.78 - (0.012 * 32)),
        -1.45 * Math.Pow(1000, 0.653) * 0.012 * 1.8,
        0.653,
        3.13,
        0);

    /// <summary>What it is and where it comes from.</summary>
    public ModelInfo Model { get; }

    /// <summary>Energy a bird a day.</summary>
    /// <param name="weight">Live weight, above 0.</param>
    /// <param name="gain">Gain a day, 0 or more.</param>
    /// <param name="temperature">Of the air, -20 to 50 °C; without meaning where the source has none.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is out of range.</exception>
    public Power At(Mass weight, MassFlow gain, Temperature temperature)
    {
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        double celsius = Temperatures.Sane(temperature, nameof(temperature));
        double grams = Require.NotNegative(gain.GramsPerDay, "g/d", nameof(gain));
        return Calories.PerDay(
            (Math.Pow(kilograms, exponent) * (maintenance + (perDegree * celsius))) + (this.gain * grams * Math.Pow(kilograms, gainExponent)));
    }

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Info(string id, string name, string equation, bool byTemperature, Citation source, IReadOnlyList<ValidityRange> ranges) => new(
        id,
        name,
        equation,
        [
            new("ME", "metabolizable energy eaten", "kcal/d"),
            new("W", "live weight", "kg"),
            new("G", "gain", "g/d"),
            .. byTemperature ? [new ModelSymbol("T", "air temperature", "°C")] : Array.Empty<ModelSymbol>(),
        ],
        [source],
        "For breeders or hens, held short of feed: for comparison only. Exponents of weight run from 0.56 here to 0.75 and 1 elsewhere; never mix one with another's coefficient.",
        source.HowKnown,
        ranges);
}
