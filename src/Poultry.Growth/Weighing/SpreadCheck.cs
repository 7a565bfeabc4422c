using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>A standard deviation above 40 % of the mean: a typing error, or birds of different ages.</summary>
/// <remarks>One sex and well run spreads by 8-10 % (common practice); R's ChickWeight, four diets on one heap, reaches 36 % at 20 and 21 d.</remarks>
internal static class SpreadCheck
{
    private const double HighestCoefficientOfVariation = 0.40;

    public static IEnumerable<Suspicion> In(IEnumerable<WeighIn> weighIns) =>
        from weighIn in weighIns
        where weighIn.CoefficientOfVariation > HighestCoefficientOfVariation
        let text = "An SD of " + WeightText.Of(weighIn.StandardDeviationKilograms!.Value) + " about a mean of " + WeightText.Of(weighIn.MeanKilograms)
            + " at " + weighIn.Age + " is a CV of " + Words.Percent(weighIn.CoefficientOfVariation!.Value) + "; expected "
            + Words.Percent(HighestCoefficientOfVariation) + " or less."
        select new Suspicion(Suspicion.WideSpread, text, weighIn);
}
