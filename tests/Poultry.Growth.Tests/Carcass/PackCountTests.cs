using Poultry.Growth.Carcass;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Pack counts from the distribution agree with weighing, ranking, inspecting, cutting and packing thousands of flocks bird by bird.</summary>
public sealed class PackCountTests
{
    private const int Flocks = 4000;

    public static TheoryData<CutOrderRule> Rules => [CutOrderRule.HeaviestFirst, CutOrderRule.AsTheyCome, CutOrderRule.ByWeight];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Counts_and_weights_agree_with_brute_force(CutOrderRule rule)
    {
        const int Birds = 60;
        DeliveredBirds flock = SaleCase.Flock(Birds);
        CutOrderLine[] shares = [CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(45)), CutOrderLine.Of(null, Probability.FromPercent(55))];
        Mass limit = Mass.FromKilograms(3);
        CutOrder order = rule switch
        {
            CutOrderRule.HeaviestFirst => CutOrder.HeaviestFirst(shares),
            CutOrderRule.AsTheyCome => CutOrder.AsTheyCome(shares),
            _ => CutOrder.ByWeight(CutOrderLine.Of(CutSets.Rudn42Days, limit, null), CutOrderLine.Of(null, null, limit)),
        };
        PackOffer[] offers =
        [
            SaleCase.ByKilogram("whole", 1, 9, Demand.Of(5, 10, 20)).Weighing(null, Mass.FromKilograms(1.9)),
            SaleCase.ByKilogram("whole", 1, 9, Demand.Of(5, 10, 20)).Weighing(Mass.FromKilograms(1.9), Mass.FromKilograms(2.2)),
            SaleCase.ByKilogram("thigh", 4, 11, Demand.Of(2, 9, 12)).Weighing(Mass.FromGrams(190), Mass.FromGrams(215)),
            SaleCase.ByKilogram("frame", 1, 3, Demand.Of(5, 10, 20)),
        ];
        PlantReturn expected = PlantReturn.Of(flock, SaleCase.Plant, order, offers);

        Sampled[] sampled = [.. offers.Select(_ => new Sampled())];
        for (int draw = 0; draw < Flocks; draw++)
        {
            OneFlock(rule, Birds, limit.Kilograms, new RandomStream(7, draw, 0), offers, sampled);
        }

        foreach ((PackSale sale, Sampled brute) in expected.Packs.Zip(sampled))
        {
            sale.ExpectedPacks.Should().BeApproximately(brute.MeanPacks, 4.5 * brute.ErrorOfPacks, "{0}: four and a half Monte Carlo errors", sale);
            sale.PacksDeviation.Should().BeApproximately(brute.DeviationOfPacks, 0.06 * brute.DeviationOfPacks + 1e-9, "{0}", sale);
            (sale.Packed + sale.Loose).Kilograms.Should().BeApproximately(brute.MeanKilograms, 4.5 * brute.ErrorOfKilograms, "{0}", sale);
            sale.PacksSold.Should().BeApproximately(brute.MeanSold, 4.5 * brute.ErrorOfSold, "{0}", sale);
        }
    }

    /// <summary>One flock, bird by bird, in the plainest way: nothing of the library's kernels but its random numbers.</summary>
    private static void OneFlock(CutOrderRule rule, int birds, double limit, RandomStream random, PackOffer[] offers, Sampled[] sampled)
    {
        List<(double Live, bool Passed)> flock = [];
        for (int bird = 0; bird < birds; bird++)
        {
            double mean = random.NextUniform() < 0.5 ? 3.2 : 2.7;
            flock.Add((mean * (1 + (0.12 * random.NextNormal())), random.NextUniform() < 0.99 && random.NextUniform() < 0.98));
        }

        if (rule == CutOrderRule.HeaviestFirst)
        {
            flock.Sort((a, b) => b.Live.CompareTo(a.Live));
        }

        int[] pieces = new int[offers.Length];
        double[] kilograms = new double[offers.Length];
        for (int bird = 0; bird < birds; bird++)
        {
            (double live, bool passed) = flock[bird];
            bool cut = rule == CutOrderRule.ByWeight ? live >= limit : bird < 27;
            for (int at = 0; passed && at < offers.Length; at++)
            {
                (string piece, int perBird, double share) = cut
                    ? at == 2 ? ("thigh", 2, 0.1709) : ("frame", 1, 0.2180)
                    : ("whole", 1, 1 / 0.99);
                double weight = 0.72 * live * 0.99 * share / perBird;
                if (offers[at].Piece == piece && weight >= (offers[at].From?.Kilograms ?? 0) && weight < (offers[at].To?.Kilograms ?? 99))
                {
                    pieces[at] += perBird;
                    kilograms[at] += perBird * weight;
                }
            }
        }

        for (int at = 0; at < offers.Length; at++)
        {
            LikelyRange<double> demand = offers[at].Demand.Packs!;
            int packs = pieces[at] / offers[at].PiecesPerPack;
            sampled[at].Add(packs, kilograms[at], Math.Min(packs, Triangular(demand.Low, demand.Likely, demand.High, random.NextUniform())));
        }
    }

    private static double Triangular(double low, double likely, double high, double uniform) => uniform < (likely - low) / (high - low)
        ? low + Math.Sqrt(uniform * (high - low) * (likely - low))
        : high - Math.Sqrt((1 - uniform) * (high - low) * (high - likely));

    /// <summary>Sums over sampled flocks.</summary>
    private sealed class Sampled
    {
        private readonly double[] sums = new double[3], squares = new double[3];

        public double MeanPacks => sums[0] / Flocks;

        public double MeanKilograms => sums[1] / Flocks;

        public double MeanSold => sums[2] / Flocks;

        public double DeviationOfPacks => Deviation(0);

        public double ErrorOfPacks => Error(0);

        public double ErrorOfKilograms => Error(1);

        public double ErrorOfSold => Error(2);

        public void Add(params double[] values)
        {
            for (int at = 0; at < values.Length; at++)
            {
                sums[at] += values[at];
                squares[at] += values[at] * values[at];
            }
        }

        private double Deviation(int at) => Math.Sqrt((squares[at] / Flocks) - (sums[at] / Flocks * sums[at] / Flocks));

        private double Error(int at) => Deviation(at) / Math.Sqrt(Flocks);
    }
}
