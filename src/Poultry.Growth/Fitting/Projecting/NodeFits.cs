namespace Poultry.Growth.Fitting;

/// <summary>
/// Every node at its optimum under the data: weight, parameters, curvature, and what the weigh-ins say about its discrepancy. One block of doubles,
/// filled by <see cref="ProjectionKernel"/>.
/// </summary>
internal sealed class NodeFits
{
    private const int Head = 1 + 1 + 3 + 9;

    private readonly double[] block;
    private readonly double[] noises;

    public NodeFits(NodePlan plan, ProjectionData data)
    {
        (Plan, Data) = (plan, data);
        block = new double[Count * Stride];
        noises = new double[2 * data.Count * (data.Count + 1)];
    }

    public NodePlan Plan { get; }

    public ProjectionData Data { get; }

    public int Count => Plan.Nodes.Length;

    /// <summary>Nodes without a certified optimum; their weight is 0.</summary>
    public int Failed { get; set; }

    private int Stride => Head + (3 * Data.Count);

    /// <summary>Share of the evidence; all together 1.</summary>
    public ref double Weight(int node) => ref block[node * Stride];

    /// <summary>δ'S⁻¹δ: how far the prior was left.</summary>
    public ref double PriorDistance(int node) => ref block[(node * Stride) + 1];

    /// <summary>The curve in the coordinates of the node's prior.</summary>
    public Span<double> Coordinates(int node) => block.AsSpan((node * Stride) + 2, 3);

    /// <summary>Cholesky's factor of H, the curvature of half the sum of squares.</summary>
    public Span<double> Curvature(int node) => block.AsSpan((node * Stride) + 5, 9);

    /// <summary>C⁻¹ r, and C⁻¹ J by the second and the third coordinate: three columns of one number a weigh-in.</summary>
    public Span<double> Discrepancy(int node) => block.AsSpan((node * Stride) + Head, 3 * Data.Count);

    /// <summary>Cholesky's factor of C for a discrepancy.</summary>
    public Span<double> Noise(bool large)
    {
        int length = Data.Count * Data.Count;
        return noises.AsSpan(large ? length : 0, length);
    }

    /// <summary>C⁻¹ J by the first coordinate, which moves every ln W alike: C⁻¹ 1, the same for every node of a discrepancy.</summary>
    public Span<double> Level(bool large) => noises.AsSpan((2 * Data.Count * Data.Count) + (large ? Data.Count : 0), Data.Count);

    public Span<double> Noise(int node) => Noise(Plan.Nodes[node].HasLargeDiscrepancy);
}
