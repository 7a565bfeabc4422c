using System.Text.RegularExpressions;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>
/// The words by which the name of a bare number says its unit, and the list of meanings that have none. A new number without a unit is
/// added here, with its meaning, or gets a name with a unit.
/// </summary>
internal static partial class UnitNames
{
    /// <summary>Units, as the first or the last word of a name: <c>days</c>, <c>ageDays</c>, <c>daysToTarget</c>.</summary>
    private static readonly HashSet<string> Units = new(StringComparer.OrdinalIgnoreCase)
    {
        "kilograms", "grams", "pounds", "ounces", "days", "weeks", "hours", "minutes", "seconds", "percent", "celsius", "fahrenheit",
        "meters", "centimeters", "feet", "inches", "hectares", "acres", "litres", "kilocalories", "megajoules", "watts", "ppm", "birds",
        "packs", "pieces", "batches", "cycles",
    };

    /// <summary>Words after "per" and "square" or "cubic": <c>perDay</c>, <c>kilogramsPerSquareMeter</c>.</summary>
    private static readonly HashSet<string> Denominators = new(StringComparer.OrdinalIgnoreCase)
    {
        "day", "week", "hour", "year", "bird", "kilogram", "gram", "pound", "meter", "foot", "hectare", "acre", "litre", "bag",
    };

    /// <summary>Meanings of a number that has no unit, wherever the name stands.</summary>
    private static readonly Dictionary<string, string> Dimensionless = new()
    {
        ["level"] = "the chance, 0 to 1, that an interval claims",
        ["share"] = "a part of the whole, 0 to 1",
        ["ratio"] = "a weight over a weight, above 0",
        ["chance"] = "a probability, 0 to 1",
        ["precision"] = "the half-width of an interval as a part of the mean, 0 to 1",
        ["coefficientOfVariation"] = "a standard deviation as a part of the mean, 0 or more",
        ["correlation"] = "between two estimates, -1 to 1",
        ["correlations"] = "between estimates, -1 to 1",
        ["fraction"] = "a part of the whole, 0 to 1",
        ["weighInError"] = "error of a whole weigh-in as a part of the mean, 0 or more",
        ["observations"] = "a number of observations",
        ["degreesOfFreedom"] = "a number of observations less one of parameters",
        ["logLikelihood"] = "of weights in kg",
        ["aicc"] = "Akaike's corrected criterion, on the scale of twice a log-likelihood",
        ["aiccDifference"] = "on the scale of twice a log-likelihood",
        ["certificate"] = "part of the residuals that the slopes could still explain, 0 to 1",
        ["amount"] = "money in the farm's own currency",
        ["logSpread"] = "a standard deviation of a logarithm, 0 or more",
        ["standardDeviations"] = "a distance in standard deviations",
        ["exponent"] = "of the López law",
        ["shape"] = "of the Richards law",
        ["constant"] = "b of the older writing of a law",
        ["logit"] = "ln of a share over the rest",
        ["oddsRatio"] = "odds over odds, above 0",
    };

    /// <summary>Members whose unit is said beside them, or whose meaning belongs to one type: type and member, or type, member and parameter.</summary>
    private static readonly Dictionary<string, string> Explained = new()
    {
        ["BatchFigures.BroilerIndex"] = "the trade's index, as defined beside it",
        ["BatchFigures.ProductionEfficiencyFactor"] = "the trade's index, as defined beside it",
        ["ComparedFamily.Weight"] = "a part of the evidence, 0 to 1",
        ["CurveFamily.Evaluate.gradient"] = "kg per unit of the parameter, which CurveParameter states",
        ["FarmFactor.Interval"] = "of feed eaten over feed forecast",
        ["FitResidual.Standardised"] = "in standard deviations",
        ["FittedCurveRecord.Coordinates"] = "in the coordinates of the fit",
        ["FittedCurveRecord.Covariance"] = "in the coordinates of the fit",
        ["FittedCurveRecord.LeastSum"] = "the objective of the error model",
        ["FittedCurveRecord.LogScale"] = "logarithm of a weight in kg",
        ["FittedCurveRecord.Scatter"] = "kg² or a pure number, by the error model",
        ["FittedCurveRecord.Weights"] = "statistical weights",
        ["FittedParameter.StandardError"] = "in the unit that CurveParameter states",
        ["FittedParameter.Value"] = "in the unit that CurveParameter states",
        ["GrowthPrior.Covariances"] = "of (ln kg, ln 1/d, d)",
        ["GrowthPrior.FromMoments.covariances"] = "of (ln kg, ln 1/d, d)",
        ["GrowthPrior.FromMoments.means"] = "ln kg, ln 1/d, d",
        ["GrowthPrior.Means"] = "ln kg, ln 1/d, d",
        ["CutSet.Growing.exponents"] = "of carcass weight, a pure number",
        ["CutSets.TwoPointExponents"] = "of carcass weight, a pure number",
        ["SexDimorphism.FemaleShareAt"] = "female over male weight",
        ["GrowthFit.ProfileLimits"] = "in the unit that CurveParameter states",
        ["GrowthFit.ResidualStandardDeviation"] = "kg or a part of the weight, by the error model",
        ["SexDimorphism.FemaleRatioAt"] = "a weight over a weight",
        ["LearnedPrior.BetweenBatchesAt"] = "between batches, as a part of the mean, 0 or more",
        ["LearnedPrior.BetweenBatches"] = "of ln A, ln k and t* in d, as GrowthPrior has them",
        ["OddsRatio.Value"] = "odds over odds",
        ["OddsRatio.Low"] = "odds over odds",
        ["OddsRatio.High"] = "odds over odds",
        ["RiskSensitivity.Low"] = "in the unit that its Name states",
        ["RiskSensitivity.High"] = "in the unit that its Name states",
        ["Limit.Value"] = "in the unit that LimitUnits names for its subject",
        ["LimitClause.Value"] = "in the unit that LimitUnits names for its subject",
        ["LimitClause..ctor.value"] = "in the unit that LimitUnits names for its subject",
        ["LimitVerdict.Value"] = "in the unit that LimitUnits names for its limit's subject",
        ["Measured.Value"] = "in the unit that LimitUnits names for its subject",
        ["BatchPlan.Prices"] = "a price over the price stated",
        ["BatchHarvest.Prices"] = "a price over the price stated",
        ["BatchPlan.CutWeights"] = "a weight over the weight by the shares of a set",
        ["BatchHarvest.CutWeights"] = "a weight over the weight by the shares of a set",
        ["LearnedChange.Before"] = "in the change's own Unit",
        ["LearnedChange.BeforeInterval"] = "in the change's own Unit",
        ["LearnedChange.After"] = "in the change's own Unit",
        ["LearnedChange.AfterInterval"] = "in the change's own Unit",
        ["DifferencePart.Difference"] = "in the figure's own Unit",
        ["ReconciledFigure.Forecast"] = "in the figure's own Unit",
        ["ReconciledFigure.Interval"] = "in the figure's own Unit",
        ["ReconciledFigure.Actual"] = "in the figure's own Unit",
        ["ReconciledFigure.Difference"] = "in the figure's own Unit",
        ["ReconciledFigure.LeftOpen"] = "in the figure's own Unit",
        ["HarvestResult.Head"] = "birds",
        ["PackOutlook.Sold"] = "packs",
        ["PackOutlook.Left"] = "packs",
        ["HarvestResult.DeadOnArrival"] = "birds",
        ["HarvestResult.Condemned"] = "birds",
        ["HarvestSplit.FirstHead"] = "birds",
        ["HarvestSplit.SecondHead"] = "birds",
        ["HarvestOptions.Progress"] = "the part of a calculation that is done, 0 to 1",
        ["ValidityRange.Low"] = "in the range's own Unit",
        ["ValidityRange.High"] = "in the range's own Unit",
        ["ValidityRange..ctor.low"] = "in the unit given beside it",
        ["ValidityRange..ctor.high"] = "in the unit given beside it",
        ["ValidityRange.Contains.value"] = "in the range's own Unit",
    };

    /// <summary>Spans of the parameters of a curve: each has the unit that its description (CurveParameter) states.</summary>
    private const string CurveParameters = "parameters";

    public static bool SayUnitOrMeaning(string owner, string name) =>
        HasUnit(name) || name == CurveParameters || Explained.ContainsKey(owner + "." + name)
            || Dimensionless.Keys.Any(meaning => EndsIn(name, meaning));

    private static bool HasUnit(string name)
    {
        string[] words = [.. Word().Matches(name).Select(match => match.Value)];
        return Units.Contains(words[0]) || Units.Contains(words[^1])
            || (words.Contains("per", StringComparer.OrdinalIgnoreCase) && Denominators.Contains(words[^1]));
    }

    /// <summary><c>level</c> and <c>confidenceLevel</c> are levels, <c>sublevel</c> is not.</summary>
    private static bool EndsIn(string name, string meaning) =>
        name.EndsWith(char.ToUpperInvariant(meaning[0]) + meaning[1..], StringComparison.Ordinal) || name == meaning;

    [GeneratedRegex("[A-Z]?[a-z0-9]+|[A-Z]+(?![a-z])")]
    private static partial Regex Word();
}
