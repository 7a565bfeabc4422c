using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What birds held below their normal gain need less than <see cref="EnergyModel.HeatProduction"/> says: the heat of the gain that they do not make.</summary>
public static class RestrictedGrowth
{
    /// <summary>Cost less energy retained: 12.59 - 5.45 and 13.52 - 8.95 kcal/g.</summary>
    private const double ProteinHeat = 12.59 - 5.45, FatHeat = 13.52 - 8.95;

    private static readonly BodyComposition Males = BodyComposition.Cobb700(Sex.Male, Mass.FromGrams(42)), Females = BodyComposition.Cobb700(Sex.Female, Mass.FromGrams(42));

    /// <summary>Where it comes from.</summary>
    public static ModelInfo Model { get; } = new(
        "restricted-growth",
        "Heat that birds held short do not give off",
        "saving = 7.14 DP + 4.57 DL",
        [
            new ModelSymbol("saving", "energy needed less than the default model says", "kcal/d"),
            new ModelSymbol("DP", "protein that is not put on, against normal gain at this weight", "g/d"),
            new ModelSymbol("DL", "fat that is not put on, likewise", "g/d"),
        ],
        [FeedingSources.Sakomura2005, FeedingSources.Caldas2019, FeedingSources.FeedTables],
        "Pair-fed males of one trial (PMC8339925): the default model is 5 to 11 % too high, with this -2 to +4 %. In heat it made one trial worse (-10 to -4 %), and it was not tried on slow birds: use it for neither.",
        HowKnown.Derived,
        [new ValidityRange("live weight", 1.4, 3.1, "kg")]);

    /// <summary>What is needed less a day.</summary>
    /// <param name="sex">Of the bird; mixed is the mean of both.</param>
    /// <param name="weight">Live weight, 10 g to 12 kg with the missing gain either way.</param>
    /// <param name="normalGain">What birds of this type gain at this weight when they eat as they like, above 0.</param>
    /// <param name="gain">What these gain, not more than <paramref name="normalGain"/>, nor a loss of more than it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight or gain is out of range.</exception>
    public static Power Saving(Sex sex, Mass weight, MassFlow normalGain, MassFlow gain)
    {
        double normal = Require.Positive(normalGain.GramsPerDay, "g/d", nameof(normalGain));
        double missing = normal - Require.Between(gain.GramsPerDay, -normal, normal, "g/d", nameof(gain));
        double grams = Require.Between(weight.Grams, BodyComposition.LeastGrams + missing, BodyComposition.MostGrams - missing, "g", nameof(weight));
        return Calories.PerDay(sex switch
        {
            Sex.Male => Kilocalories(Males, grams, missing),
            Sex.Female => Kilocalories(Females, grams, missing),
            _ => (Kilocalories(Males, grams, missing) + Kilocalories(Females, grams, missing)) / 2,
        });
    }

    private static double Kilocalories(BodyComposition body, double grams, double missingGrams)
    {
        (double protein, double fat) = body.At(grams - (missingGrams / 2));
        (double moreProtein, double moreFat) = body.At(grams + (missingGrams / 2));
        return (ProteinHeat * (moreProtein - protein)) + (FatHeat * (moreFat - fat));
    }
}
