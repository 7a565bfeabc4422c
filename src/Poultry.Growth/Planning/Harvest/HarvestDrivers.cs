using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What the spread of a margin comes from, by squared correlation with what was drawn.</summary>
internal static class HarvestDrivers
{
    public static IReadOnlyList<SpreadDriver> Of(HarvestDraws draws, BatchPlan plan, Sample sample, long seed)
    {
        SpreadDriver Driver(string name, Func<int, double> value) =>
            new(name, Probability.FromFraction(Math.Min(1, sample.SharedVariance(value, draws.Margin))));

        return
        [
            .. new[]
            {
                Driver("growth", draw => draws.MeanKilograms[draw]),
                Driver("birds alive", draw => draws.Head[draw]),
                Driver("feed eaten at the same growth", draw => new DrawnInputs(seed, draw).Feed),
                Driver("dressing", draw => Triangular.Quantile(plan.Plant.Dressing.Ratio, new DrawnInputs(seed, draw).Dressing)),
                Driver("cuts", draw => Triangular.Quantile(plan.CutWeights, new DrawnInputs(seed, draw).Cuts)),
                Driver("dead tenders", draw => draws.LesionKilograms[draw]),
                Driver("birds dead on arrival", draw => Triangular.Quantile(plan.DeadOnArrival.Share, new DrawnInputs(seed, draw).Road)),
                Driver("birds condemned", draw => plan.CondemnedBirds is { } range ? Triangular.Quantile(range, new DrawnInputs(seed, draw).Condemned) : 0),
                Driver("prices", draw => Triangular.Quantile(plan.Prices, new DrawnInputs(seed, draw).Prices)),
            }.Concat(plan.Offers.Select((offer, at) => Driver("demand for " + Name(offer, plan), draw => Demanded(offer, new(seed, draw), at))))
                .OrderByDescending(driver => driver.Share),
        ];
    }

    /// <summary>The piece, and its weights where other offers are of the same piece.</summary>
    private static string Name(PackOffer offer, BatchPlan plan) =>
        plan.Offers.Count(other => other.Piece == offer.Piece) == 1 ? offer.Piece : offer.ToString()[(offer.ToString().IndexOf(' ', StringComparison.Ordinal) + 1)..];

    private static double Demanded(PackOffer offer, DrawnInputs input, int at)
    {
        if (offer.Demand.Packs is not { } range)
        {
            return 0;
        }

        Numerics.RandomStream stream = input.Demand;
        for (int i = 0; i < at; i++)
        {
            stream.NextUniform();
        }

        return Triangular.Quantile(range, stream.NextUniform());
    }
}
