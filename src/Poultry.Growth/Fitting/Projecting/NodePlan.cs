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

    /// <summary>Shapes lie in the middle of cells between these: at a step of 0.1 from -0.3 to 1.3. A finer step has more cells of the same range, and the same prior.</summary>
    private const double LeastShape = -0.35;
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
        int shapes = (int)Math.Round((LargestShape - LeastShape) / shapeStep);
        double total = 0;
        for (int i = 0; i < shapes; i++)
        {
            total += ShapeDensity(Shape(i, shapes));
        }

        // Each starts from its neighbour's optimum: upwards from Gompertz, or the shape next to it, then downwards from it.
        int zero = (int)(-LeastShape / shapeStep);
        for (int i = zero; i < shapes; i++)
        {
            plan.Add(new(Shape(i, shapes), SmallDiscrepancy, (1 - GompertzShare) * ShapeDensity(Shape(i, shapes)) / total, null, weights, i == zero ? -1 : plan.Count - 1));
        }

        for (int i = zero - 1; i >= 0; i--)
        {
            int neighbour = i == zero - 1 ? GompertzNodes : plan.Count - 1;
            plan.Add(new(Shape(i, shapes), SmallDiscrepancy, (1 - GompertzShare) * ShapeDensity(Shape(i, shapes)) / total, null, weights, neighbour));
        }

        nodes = [.. plan];
    }

    public ReadOnlySpan<Node> Nodes => nodes;

    /// <summary>How many nodes, the first ones, are Gompertz curves by the growth prior.</summary>
    public int GompertzNodes { get; }

    private static double Shape(int i, int shapes)
    {
        double shape = LeastShape + ((LargestShape - LeastShape) * (i + 0.5) / shapes);
        return Math.Abs(shape) < 1e-9 ? 0 : shape;
    }

    private static double ShapeDensity(double shape) => Math.Exp(-shape * shape / (2 * ShapeDeviation * ShapeDeviation));

    private static void AddGompertz(List<Node> plan, GrowthPrior prior, double share)
    {
        NodePrior parameters = NodePrior.OnParameters(prior);
        int first = plan.Count;
        plan.Add(new(0, SmallDiscrepancy, share * SmallShare, prior, parameters, -1));
        plan.Add(new(0, LargeDiscrepancy, share * (1 - SmallShare), prior, parameters, first));
    }

    /// <summary>One curve family with its discrepancy and prior.</summary>
    /// <param name="shape">v of the Richards curve.</param>
    /// <param name="discrepancy">Standard deviation of the discrepancy, of ln W.</param>
    /// <param name="share">The chance given beforehand.</param>
    /// <param name="follows">The growth prior that its curve follows; null where it is only loosely held.</param>
    /// <param name="prior">Of its coordinates.</param>
    /// <param name="startsFrom">The node whose optimum is the start; -1 for the middle of the growth prior.</param>
    internal sealed class Node(double shape, double discrepancy, double share, GrowthPrior? follows, NodePrior prior, int startsFrom)
    {
        public double Shape => shape;

        public double Discrepancy => discrepancy;

        public double Share => share;

        public GrowthPrior? Follows => follows;

        public NodePrior Prior => prior;

        public int StartsFrom => startsFrom;

        public bool HasLargeDiscrepancy => discrepancy == LargeDiscrepancy;
    }
}
