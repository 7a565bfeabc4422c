using Poultry.Growth.Flock;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>
/// Which birds go to which line of an order, as counts by weight. The n birds are independent draws of the flock's distribution; with X(w) the number
/// of them that weigh w or more, the k heaviest hold min(k, X(w)) birds of w or more, and X(w) is binomial: means and whole laws of the
/// counts follow exactly, without sampling.
/// </summary>
internal sealed class BirdGroups
{
    /// <summary>Enough for the weight of a line to be right to a part in ten thousand where the ranks part within a cell; all other sums are exact.</summary>
    private const int GridCells = 160;
    private const double FarTail = 1e-9;

    /// <summary>Chances below this are passed over in sums over two counts.</summary>
    private const double Nothing = 1e-14;

    private readonly CutOrder order;
    private readonly WeightDistribution weights;
    private readonly int birds;

    /// <summary>Ranks at which the lines part, the heaviest bird first: line g takes ranks from ranks[g] to ranks[g + 1].</summary>
    private readonly int[] ranks;

    public BirdGroups(CutOrder order, WeightDistribution weights, int birds)
    {
        (this.order, this.weights, this.birds) = (order, weights, birds);
        ranks = new int[order.Lines.Count + 1];
        double sum = 0;
        for (int line = 0; line < order.Lines.Count; line++)
        {
            sum += order.Lines[line].ShareFraction;
            ranks[line + 1] = Math.Min(birds, (int)Math.Round(sum * birds, MidpointRounding.AwayFromZero));
        }
    }

    /// <summary>Cells of weight, fine enough for sums over them, that end at the given weights too.</summary>
    public static double[] Edges(WeightDistribution weights, IEnumerable<double> limits)
    {
        double low = weights.WeightAt(Probability.FromFraction(FarTail)).Kilograms, high = weights.WeightAt(Probability.FromFraction(1 - FarTail)).Kilograms;
        IEnumerable<double> grid = Enumerable.Range(0, GridCells + 1).Select(at => low + (at * (high - low) / GridCells));
        return [0, .. grid.Concat(limits).Where(edge => edge > 0 && double.IsFinite(edge)).Distinct().Order(), double.PositiveInfinity];
    }

    /// <summary>Mean weights of the cells between edges; 0 where a cell holds no bird.</summary>
    public static double[] CellMeans(WeightDistribution weights, double[] edges) =>
    [
        .. edges.Zip(edges.Skip(1), (low, high) =>
            weights.MeanBetween(low > 0 ? Mass.FromKilograms(low) : null, double.IsFinite(high) ? Mass.FromKilograms(high) : null)?.Kilograms ?? 0),
    ];

    /// <summary>The birds of a line in each cell, expected.</summary>
    public double[] Expected(int line, double[] edges)
    {
        double[] counts = new double[edges.Length - 1];
        if (order.Rule == CutOrderRule.HeaviestFirst)
        {
            double[] law = new double[birds + 1];
            double above = ranks[line + 1] - ranks[line];
            for (int cell = 0; cell < counts.Length; cell++)
            {
                BinomialCounts.Fill(NotBelow(edges[cell + 1]), law);
                double next = MeanOfLine(law, line);
                (counts[cell], above) = (Math.Max(0, above - next), next);
            }

            return counts;
        }

        for (int cell = 0; cell < counts.Length; cell++)
        {
            counts[cell] = order.Rule == CutOrderRule.AsTheyCome
                ? (ranks[line + 1] - ranks[line]) * Share(edges[cell], edges[cell + 1])
                : birds * ShareInBand(order.Lines[line], edges[cell], edges[cell + 1]);
        }

        return counts;
    }

    /// <summary>The law of the number of birds of a line between two weights.</summary>
    /// <param name="line">Which line.</param>
    /// <param name="low">From this weight on.</param>
    /// <param name="high">Below this weight.</param>
    public double[] CountLaw(int line, double low, double high)
    {
        if (order.Rule == CutOrderRule.HeaviestFirst)
        {
            return RankedLaw(line, low, high);
        }

        double[] law = new double[(order.Rule == CutOrderRule.AsTheyCome ? ranks[line + 1] - ranks[line] : birds) + 1];
        BinomialCounts.Fill(order.Rule == CutOrderRule.AsTheyCome ? Share(low, high) : ShareInBand(order.Lines[line], low, high), law);
        return law;
    }

    /// <summary>The law of those that pass, each with the same chance.</summary>
    public static double[] Thinned(double[] law, double chance)
    {
        if (chance >= 1)
        {
            return law;
        }

        double[] passed = new double[law.Length];
        double[] room = new double[law.Length];
        for (int n = 0; n < law.Length; n++)
        {
            if (law[n] > Nothing)
            {
                Span<double> ofN = room.AsSpan(0, n + 1);
                BinomialCounts.Fill(chance, ofN);
                Add(passed, ofN, law[n], count => count);
            }
        }

        return passed;
    }

    private static void Add(double[] sum, ReadOnlySpan<double> law, double factor, Func<int, int> place)
    {
        for (int count = 0; count < law.Length; count++)
        {
            if (law[count] > 0)
            {
                sum[place(count)] += factor * law[count];
            }
        }
    }

    /// <summary>X(high) given X(low) is binomial again: the birds of a class are X(low) less X(high), each cut off at the ranks of the line.</summary>
    private double[] RankedLaw(int line, double low, double high)
    {
        double[] result = new double[ranks[line + 1] - ranks[line] + 1];
        double[] lawLow = new double[birds + 1], room = new double[birds + 1];
        double atLeastLow = NotBelow(low);
        BinomialCounts.Fill(atLeastLow, lawLow);
        double chanceHigh = atLeastLow > 0 ? Math.Min(1, NotBelow(high) / atLeastLow) : 0;
        for (int inAll = 0; inAll <= birds; inAll++)
        {
            if (lawLow[inAll] > Nothing)
            {
                Span<double> lawHigh = room.AsSpan(0, inAll + 1);
                BinomialCounts.Fill(chanceHigh, lawHigh);
                int ofLine = OfLine(inAll, line);
                Add(result, lawHigh, lawLow[inAll], heavier => ofLine - OfLine(heavier, line));
            }
        }

        return result;
    }

    private int OfLine(int heaviest, int line) => Math.Min(ranks[line + 1], heaviest) - Math.Min(ranks[line], heaviest);

    private double MeanOfLine(double[] law, int line)
    {
        double mean = 0;
        for (int count = 0; count < law.Length; count++)
        {
            mean += law[count] * OfLine(count, line);
        }

        return mean;
    }

    private double ShareInBand(CutOrderLine line, double low, double high) =>
        Math.Min(high, line.ToKilograms) > Math.Max(low, line.FromKilograms) ? Share(Math.Max(low, line.FromKilograms), Math.Min(high, line.ToKilograms)) : 0;

    private double Share(double low, double high) => Math.Max(0, NotBelow(low) - NotBelow(high));

    private double NotBelow(double weight) =>
        weight <= 0 ? 1 : double.IsPositiveInfinity(weight) ? 0 : 1 - weights.ShareBelow(Mass.FromKilograms(weight)).Fraction;
}
