using Poultry.Growth.Numerics;

namespace Poultry.Growth.Carcass;

/// <summary>Pieces and packs of an order: weights as sums over cells of weight, packs by the law of the counts of birds.</summary>
internal sealed class Packing(CutOrder order, DeliveredBirds birds, IReadOnlyList<PackOffer> offers)
{
    private readonly BirdGroups groups = new(order, birds.Weights, birds.Birds);
    private double[] edges = [], means = [];
    private double[][] expected = [];

    /// <summary>The chance of a bird to pass both inspections.</summary>
    public required double Passing { get; init; }

    /// <summary>Carcass over live weight as weighed, of a bird that passes.</summary>
    public required double CarcassPerLive { get; init; }

    /// <summary>What is left of a carcass after cutting, as a part of it.</summary>
    public required double KeptInCutting { get; init; }

    public (IReadOnlyList<LineYield> Lines, IReadOnlyList<PackSale> Packs) Count()
    {
        IEnumerable<double> limits = order.Lines.SelectMany(line => new[] { line.FromKilograms, line.ToKilograms })
            .Concat(offers.SelectMany(offer => Places(offer).SelectMany(at => new[] { LiveOf(at.Line, at.Piece, offer.FromKilograms), LiveOf(at.Line, at.Piece, offer.ToKilograms) })));
        edges = BirdGroups.Edges(birds.Weights, limits);
        means = BirdGroups.CellMeans(birds.Weights, edges);
        expected = [.. Enumerable.Range(0, order.Lines.Count).Select(line => groups.Expected(line, edges))];
        return ([.. Enumerable.Range(0, order.Lines.Count).Select(LineOf)], [.. offers.Select(Sale)]);
    }

    private LineYield LineOf(int at)
    {
        CutOrderLine line = order.Lines[at];
        double OfAll(Func<double, double> ofLive) => Sum(at, 0, double.PositiveInfinity, ofLive);
        double delivered = expected[at].Sum(), carcass = Passing * OfAll(live => CarcassPerLive * live);
        return new(
            line,
            delivered,
            OfAll(live => live),
            carcass,
            line.Set is null ? 0 : carcass * (1 - KeptInCutting),
            [.. line.Pieces.Select((piece, index) => new PieceYield(
                piece.Name, Passing * delivered * piece.PerBird, Passing * piece.PerBird * OfAll(live => PieceOf(line, index, live))))]);
    }

    private PackSale Sale(PackOffer offer)
    {
        double[] packs = [1];
        double kilograms = 0, pieces = 0;
        foreach ((int at, int index) in Places(offer))
        {
            CutOrderLine line = order.Lines[at];
            int perBird = line.Pieces[index].PerBird;
            double low = LiveOf(at, index, offer.FromKilograms), high = LiveOf(at, index, offer.ToKilograms);
            kilograms += Passing * perBird * Sum(at, low, high, live => PieceOf(line, index, live));
            pieces += Passing * perBird * Sum(at, low, high, _ => 1);
            packs = Convolved(packs, InPacks(BirdGroups.Thinned(groups.CountLaw(at, low, high), Passing), perBird, offer.PiecesPerPack));
        }

        return new(offer, packs, kilograms, pieces);
    }

    /// <summary>Lines and pieces of them that an offer packs.</summary>
    private IEnumerable<(int Line, int Piece)> Places(PackOffer offer) =>
        from line in Enumerable.Range(0, order.Lines.Count)
        from piece in Enumerable.Range(0, order.Lines[line].Pieces.Count)
        where order.Lines[line].Pieces[piece].Name.Equals(offer.Piece, StringComparison.OrdinalIgnoreCase)
        select (line, piece);

    private double Sum(int line, double low, double high, Func<double, double> ofLive)
    {
        double sum = 0;
        for (int cell = 0; cell < means.Length; cell++)
        {
            if (edges[cell] >= low && edges[cell + 1] <= high && expected[line][cell] > 0)
            {
                sum += expected[line][cell] * ofLive(means[cell]);
            }
        }

        return sum;
    }

    private double PieceOf(CutOrderLine line, int piece, double live) => line.PieceKilograms(piece, CarcassPerLive * live, KeptInCutting);

    /// <summary>The live weight at which a piece has a weight: it rises with the bird.</summary>
    private double LiveOf(int line, int piece, double kilograms)
    {
        if (kilograms <= 0 || !double.IsFinite(kilograms))
        {
            return kilograms;
        }

        PieceMiss miss = new(this, order.Lines[line], piece, kilograms);
        double high = 1;
        while (miss.At(high) < 0)
        {
            high *= 2;
        }

        return RootFinding.Bracketed(ref miss, 1e-9, high, tolerance: 0, out double root) ? root : 0;
    }

    private static double[] InPacks(double[] law, int perBird, int perPack)
    {
        double[] packs = new double[((law.Length - 1) * perBird / perPack) + 1];
        for (int count = 0; count < law.Length; count++)
        {
            packs[count * perBird / perPack] += law[count];
        }

        return packs;
    }

    private static double[] Convolved(double[] a, double[] b)
    {
        double[] sum = new double[a.Length + b.Length - 1];
        for (int i = 0; i < a.Length; i++)
        {
            for (int j = 0; a[i] > 0 && j < b.Length; j++)
            {
                sum[i + j] += a[i] * b[j];
            }
        }

        return sum;
    }

    private readonly struct PieceMiss(Packing packing, CutOrderLine line, int piece, double kilograms) : IScalarFunction
    {
        public double At(double x) => packing.PieceOf(line, piece, x) - kilograms;
    }
}
