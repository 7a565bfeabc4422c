using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;

namespace Poultry.Growth.Feeding;

/// <summary>What a reader of a feed forecast must mind.</summary>
internal static class FeedCautions
{
    /// <summary>So far above the temperature of least heat birds pant and eat less.</summary>
    private const double HotDegrees = 3;

    public static IReadOnlyList<Caution> Of(
        FeedingPlan plan, FeedingConditions conditions, FeedForecastOptions options, WeightPath weights, FeedPath path, CurveError error, double startDays)
    {
        List<Caution> cautions = [.. OutsideRanges(conditions.Model, weights, path, startDays)];
        if (conditions.Type != BirdType.Fast)
        {
            cautions.Add(new("slow-birds-uncertain", "No model follows slow-growing birds well: count on 20 % more or less, and weigh what they eat."));
        }
        else if (!conditions.TakesFarmFactor)
        {
            cautions.Add(new("not-the-default-model", "This model is a second opinion: its weekly error slides from too much in young birds to too little in old ones, or its fit was less good."));
        }

        if (conditions.Temperatures == Temperatures.StandardHouse)
        {
            cautions.Add(new("standard-house", "A heated house that falls to 21 °C (70 °F) was assumed: outdoors at 10 °C (50 °F) birds eat about 10 % more."));
        }

        if (Enumerable.Range(0, path.Count).Any(day => path.Celsius(day) > FastingHeat.CriticalCelsius(weights.Middles[day]) + HotDegrees))
        {
            cautions.Add(new("heat-lowers-intake", "On hot days the model asks for more feed, but birds eat less and grow less: lower the weights first, never the feed alone."));
        }

        if (plan.Caution is { } assumed)
        {
            cautions.Add(assumed);
        }

        if (options.Curves is null)
        {
            cautions.Add(new("curve-taken-as-right", "The weights were taken as exactly right: the intervals hold the error of the feed model only."));
        }

        if (options.Record is { } record && conditions.TakesFarmFactor && record.Age.Days > FarmFactor.LastTestedDays)
        {
            cautions.Add(new("late-record", string.Create(
                CultureInfo.InvariantCulture, $"A factor was tried on records of 21 to {FarmFactor.LastTestedDays:0} d; how well one of {record.Age.Days:0.##} d does is not known.")));
        }

        if (error.LeftOut > 0)
        {
            cautions.Add(new("curves-left-out", string.Create(CultureInfo.InvariantCulture, $"{error.LeftOut} of {options.Draws} curves drawn have weights or falls of weight that no bird has, and were left out.")));
        }

        return cautions;
    }

    private static IEnumerable<Caution> OutsideRanges(EnergyModel model, WeightPath weights, FeedPath path, double startDays)
    {
        int last = path.Count - 1;
        return Enumerable.Range(0, path.Count)
            .Select(day => (Kilograms: weights.Middles[day], Celsius: path.Celsius(day), Age: startDays + day))
            .Where((day, at) => at == 0 || at == last || model.IsOutside("temperature", day.Celsius))
            .SelectMany(day => model.OutsideRanges(day.Kilograms, day.Celsius, day.Age))
            .DistinctBy(caution => caution.Code);
    }
}
