using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>Draws the true growth of a batch.</summary>
internal delegate Func<double, double> TrueGrowthDraw(ref RandomStream random);

/// <summary>One kind of simulated batches under one prior, at some stops.</summary>
internal sealed record StudyRow
{
    public required string Name { get; init; }

    public required TrueGrowthDraw Truth { get; init; }

    public required string PriorName { get; init; }

    public required GrowthPrior Prior { get; init; }

    /// <summary>Ages of weigh-ins, d, and how many of them are made at each stop.</summary>
    public IReadOnlyList<double> Days { get; init; } = [7, 14, 21, 28, 35, 42];

    public IReadOnlyList<int> Stops { get; init; } = [3, 4, 5, 6];

    /// <summary>Error of a whole weigh-in.</summary>
    public double WeighInError { get; init; } = 0.02;

    /// <summary>Whether ages are moved by up to three days either way, and one day in two weighed twice.</summary>
    public bool Irregular { get; init; }

    /// <summary>Mixed birds, caught at random.</summary>
    public bool IsMixed => Prior.Sex == Sex.Mixed;

    /// <summary>Whether birds below the mean are caught twice as easily.</summary>
    public bool SlowFirst { get; init; }

    /// <summary>Drift of the scale a week, as a standard deviation, the same way all along.</summary>
    public double DriftPerWeek { get; init; }

    /// <summary>What the median error, the 90th percentile, the coverage and the width must be at each stop, in % and as a fraction; null where nothing is asked.</summary>
    public (double[]? Median, double[]? Ninetieth, double[]? Coverage, double[]? Width) Asked { get; init; }
}
