using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What the spread of a margin comes from, by squared correlation with what was drawn.</summary>
internal static class HarvestDrivers
{
    public static IReadOnlyList<SpreadDriver> Of(HarvestDraws draws, BatchPlan plan, long seed)
    {
        int count = draws.Margin.Length;
        double[] Drawn(Func<DrawnInputs, double> input) => [.. Enumerable.Range(0, count).Select(draw => input(new(seed, draw)))];
        (string Name, double[] Values)[] inputs =
        [
            ("growth", draws.MeanKilograms),
            ("birds alive", draws.Head),
            ("feed eaten at the same growth", Drawn(input => input.Feed)),
            ("dressing", Drawn(input => input.Dressing)),
            ("dead tenders", draws.LesionKilograms),
            ("prices", Drawn(input => input.Prices)),
            .. plan.Offers.Select((offer, at) => ("demand for " + offer.Piece, Drawn(input => Nth(input, at)))),
        ];
        return
        [
            .. inputs.Select(input => new SpreadDriver(input.Name, Probability.FromFraction(Math.Min(1, Sample.SharedVariance(input.Values, draws.Margin)))))
                .OrderByDescending(driver => driver.Share),
        ];
    }

    private static double Nth(DrawnInputs input, int at)
    {
        Numerics.RandomStream stream = input.Demand;
        double value = 0;
        for (int i = 0; i <= at; i++)
        {
            value = stream.NextUniform();
        }

        return value;
    }
}
