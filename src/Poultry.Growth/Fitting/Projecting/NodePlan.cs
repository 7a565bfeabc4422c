namespace Poultry.Growth.Fitting;

/// <summary>
/// The nodes of a projection: a Gompertz curve by the growth prior with a small or a larger bounded discrepancy (together 0.6), and Richards
/// curves of many shapes by a loose prior on weights (together 0.4).
/// </summary>
internal sealed class NodePlan
{
    /// <summary>Discrepancies between a family and what birds do, as a share of the weight, and the share of the Gompertz nodes with each.</summary>
    public const double SmallDiscrepancy = 0.02;
    public const double LargeDiscrepancy = 0.06;
    private const double SmallShare = 0.7;

    private const double GompertzShare = 0.6;

    /// <summary>
    /// Shapes lie in the middle of cells from the least to the largest; below the turn, where a little of the shape changes much, cells are half as wide. At a step of 0.1: from -0.325 to 0.025 by 0.05, then
    /// from 0.1 to 1.3. A finer step has more cells of the same range, and the same prior.
    /// </summary>
    private const double LeastShape = -0.35;
    private const double TurnShape = 0.05;
    private const double LargestShape = 1.35;
    private const double ShapeDeviation = 0.8;

    private readonly Node[] nodes;

    public NodePlan(GrowthPrior prior, double shapeStep)
    {
        List<Node> plan = [];
        double shareOfFirst = GompertzShare * (1 - prior.FallbackShare);
        AddGompertz(plan, prior, shareOfFirst);
        if (prior.Fallback is { } fallback)
        {
            AddGompertz(plan, fallback, GompertzShare - shareOfFirst);
        }

        GompertzNodes = plan.Count;
        NodePrior weights = NodePrior.OnWeights(prior);
        Cell[] cells = [.. Cells(LeastShape, TurnShape, shapeStep / 2), .. Cells(TurnShape, LargestShape, shapeStep)];
        double total = cells.Sum(cell => cell.Width * ShapeDensity(cell.Shape));

        // Each starts from its neighbour's optimum: upwards from a Gompertz curve, then downwards from it.
        int first = Array.FindIndex(cells, cell => cell.Shape > -1e-9);
        for (int i = first; i < cells.Length; i++)
        {
            Add(cells[i], i == first ? -1 : plan.Count - 1);
        }

        for (int i = first - 1; i >= 0; i--)
        {
            Add(cells[i], i == first - 1 ? GompertzNodes : plan.Count - 1);
        }

        void Add(Cell cell, int neighbour) =>
            plan.Add(new(cell.Shape, SmallDiscrepancy, (1 - GompertzShare) * cell.Width * ShapeDensity(cell.Shape) / total, null, weights, neighbour));

        // Every bird stops growing: what each node held of curves without a mature weight falls to all in proportion.
        double left = plan.Sum(node => node.Share * Math.Exp(node.LogGrownShare));
        foreach (Node node in plan)
        {
            node.Share *= Math.Exp(node.LogGrownShare) / left;
        }

        nodes = [.. plan];
    }

    public ReadOnlySpan<Node> Nodes => nodes;

    /// <summary>How many nodes, the first ones, are Gompertz curves by the growth prior.</summary>
    public int GompertzNodes { get; }

    private static IEnumerable<Cell> Cells(double from, double to, double width)
    {
        int cells = (int)Math.Round((to - from) / width);
        return Enumerable.Range(0, cells).Select(i => new Cell(from + ((to - from) * (i + 0.5) / cells), (to - from) / cells));
    }

    private static double ShapeDensity(double shape) => Math.Exp(-shape * shape / (2 * ShapeDeviation * ShapeDeviation));

    private static void AddGompertz(List<Node> plan, GrowthPrior prior, double share)
    {
        NodePrior parameters = NodePrior.OnParameters(prior);
        int first = plan.Count;
        plan.Add(new(0, SmallDiscrepancy, share * SmallShare, prior, parameters, -1));
        plan.Add(new(0, LargeDiscrepancy, share * (1 - SmallShare), prior, parameters, first));
    }

    private readonly record struct Cell(double Shape, double Width);

    /// <summary>One curve family with its discrepancy and prior.</summary>
    /// <param name="shape">v of the Richards curve.</param>
    /// <param name="discrepancy">Standard deviation of the discrepancy, of ln W.</param>
    /// <param name="share">The chance given beforehand.</param>
    /// <param name="follows">The growth prior that its curve follows; null where it is only loosely held.</param>
    /// <param name="prior">Of its coordinates.</param>
    /// <param name="startsFrom">The node whose optimum is the start; -1 for the middle of its prior.</param>
    internal sealed class Node(double shape, double discrepancy, double share, GrowthPrior? follows, NodePrior prior, int startsFrom)
    {
        public double Shape => shape;

        public double Discrepancy => discrepancy;

        /// <summary>For a prior on weights: the logarithm of how much of it lies among curves with a mature weight.</summary>
        public double LogGrownShare { get; } = prior.IsOnWeights ? prior.LogGrownShare(shape) : 0;

        public double Share { get; set; } = share;

        public GrowthPrior? Follows => follows;

        public NodePrior Prior => prior;

        public int StartsFrom => startsFrom;

        public NodeLaw Law(ReadOnlySpan<double> coordinates) => new(shape, prior.IsOnWeights, coordinates);

        public bool HasLargeDiscrepancy => discrepancy == LargeDiscrepancy;
    }
}
