using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;

namespace Poultry.Growth.Planning;

/// <summary>
/// Packs by mean live weight and head: worked out exactly on a grid and read off between its points, since counting the packs of every draw by itself would take
/// a thousand times as long. Packs are linear in the head but for whole birds in a line and pieces over that fill no pack, so that large batches are read off a line beyond
/// their grid, and cost no more than small ones. Tests hold what is read off against the exact count.
/// </summary>
internal sealed class PackSurface
{
    private const int Weights = 11;

    /// <summary>Above so many birds the line in the head is taken from here on, and from so few.</summary>
    private const int ManyBirds = 600, FewerBirds = 200;

    private readonly double lowKilograms, kilogramStep, lowHead, headStep;
    private readonly int offers, heads;

    /// <summary>At each point: packs and kilograms a pack of each offer, then charges for cutting and packing.</summary>
    private readonly double[] points;

    public PackSurface(BatchPlan plan, LiveState atKilling, Func<double, WeightDistribution> flock, (double Low, double High) kilograms, (double Low, double High) head)
    {
        offers = plan.Offers.Count;
        (lowKilograms, kilogramStep) = (kilograms.Low, (kilograms.High - kilograms.Low) / (Weights - 1));
        (lowHead, double highHead, heads) = head.High > ManyBirds ? (FewerBirds, ManyBirds, 2) : (head.Low, head.High, 3);

        // Birds are counted in whole birds: the grid lies on these.
        lowHead = Math.Max(1, Math.Floor(lowHead));
        headStep = Math.Max(1, Math.Ceiling((highHead - lowHead) / (heads - 1)));
        points = new double[Weights * heads * Stride];
        PlantConditions conditions = At(plan.Plant, atKilling);
        for (int w = 0; w < Weights; w++)
        {
            WeightDistribution birds = flock(lowKilograms + (w * kilogramStep));
            for (int h = 0; h < heads; h++)
            {
                int count = (int)(lowHead + (h * headStep));
                Fill(points.AsSpan(((w * heads) + h) * Stride, Stride), PlantReturn.Of(DeliveredBirds.Of(count, birds, LiveState.FullFed), conditions, plan.Order, plan.Offers, plan.Cutting));
            }
        }
    }

    /// <summary>What to mind about carcasses and packs, as of the heaviest and most birds.</summary>
    public IReadOnlyList<Caution> Cautions { get; private set; } = [];

    private int Stride => (2 * offers) + 1;

    /// <summary>Packs and kilograms a pack of each offer, then charges, at a mean weight and a head.</summary>
    public void At(double kilograms, double head, Span<double> values)
    {
        (int w, double x) = Cell((kilograms - lowKilograms) / kilogramStep, Weights);
        (int h, double y) = Cell((head - lowHead) / headStep, heads);
        int corner = ((w * heads) + h) * Stride;
        for (int i = 0; i < Stride; i++)
        {
            double low = points[corner + i] + (y * (points[corner + Stride + i] - points[corner + i]));
            int next = corner + (heads * Stride) + i;
            double high = points[next] + (y * (points[next + Stride] - points[next]));
            values[i] = Math.Max(0, low + (x * (high - low)));
        }
    }

    /// <summary>The cell of the grid and the place in it; beyond the grid its outermost cells go on.</summary>
    private static (int Cell, double Place) Cell(double at, int count)
    {
        int cell = Math.Clamp((int)at, 0, count - 2);
        return (cell, at - cell);
    }

    private static PlantConditions At(PlantConditions plant, LiveState atKilling) => new()
    {
        Dressing = plant.Dressing,
        AtKilling = atKilling,
        Withdrawal = plant.Withdrawal,
        Condemned = plant.Condemned,
        Trim = plant.Trim,
        CuttingLoss = plant.CuttingLoss,
        Water = plant.Water,
        OtherParts = plant.OtherParts,
    };

    private void Fill(Span<double> point, PlantReturn back)
    {
        // A plan shows no line by difference.
        Cautions = [.. back.Cautions.Where(caution => caution.Code != "water-in-carcass")];
        for (int offer = 0; offer < offers; offer++)
        {
            point[2 * offer] = back.Packs[offer].ExpectedPacks;
            point[(2 * offer) + 1] = back.Packs[offer].PackWeight.Kilograms;
        }

        point[^1] = (back.Revenue - back.Value).Amount;
    }
}
