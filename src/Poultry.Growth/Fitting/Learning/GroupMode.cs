using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>A batch seen from its population: its most likely curve, and the tangent plane there, which is all that learning needs of it.</summary>
internal sealed partial class GroupMode
{
    /// <summary>No mode is further off than this many standard deviations of its own, squared.</summary>
    private const double DecrementLimit = 1e-10;

    private readonly double[] point;
    private readonly double[] trial;
    private readonly double[] workspace;

    public GroupMode(MixedGroup group, int coordinates, int differing)
    {
        Group = group;
        Coordinates = new double[coordinates];
        Residuals = new double[group.Count];
        Slopes = new double[group.Count * coordinates];
        Information = new double[coordinates * coordinates];
        Score = new double[coordinates];
        Covariance = new double[differing * differing];
        (point, trial) = (new double[differing], new double[differing]);
        workspace = new double[coordinates + ((1 + coordinates) * group.Count) + LeastSquares.WorkspaceLength(group.Count + differing, differing)];
    }

    public MixedGroup Group { get; }

    /// <summary>theta at the mode.</summary>
    public double[] Coordinates { get; }

    /// <summary>r = z - f(theta).</summary>
    public double[] Residuals { get; }

    /// <summary>J, column by column.</summary>
    public double[] Slopes { get; }

    /// <summary>H = J'R⁻¹J.</summary>
    public double[] Information { get; }

    /// <summary>h = H theta + J'R⁻¹r: what the tangent plane says of theta, without an inverse of H, which few weigh-ins make singular.</summary>
    public double[] Score { get; }

    /// <summary>V = (H + S⁻¹)⁻¹ of the coordinates that differ.</summary>
    public double[] Covariance { get; }

    /// <summary>sum r²/v + b'S⁻¹b.</summary>
    public double Objective { get; private set; }

    /// <summary>ln |R| + ln |S| + ln |H + S⁻¹|: with the objective, minus twice the log-likelihood by Laplace's method, but for n ln 2π.</summary>
    public double LogDeterminant { get; private set; }

    /// <summary>Seeks the mode; false where no start leads to one.</summary>
    /// <param name="curve">The law.</param>
    /// <param name="population">What is known of the batch beforehand.</param>
    /// <param name="again">Whether <see cref="Coordinates"/> hold the mode of an earlier round: a start beside the middle of the population.</param>
    /// <remarks>A batch with few weigh-ins may have two modes. Both starts are tried each time, so that where a search ends does not depend on where it began.</remarks>
    public bool Seek<TCurve>(TCurve curve, MixedPopulation population, bool again)
        where TCurve : struct, IMixedCurve
    {
        Array.Clear(point);
        double best = Improve(curve, population, point);
        if (again)
        {
            int q = trial.Length;
            for (int a = 0; a < q; a++)
            {
                int coordinate = population.Random[a];
                trial[a] = Coordinates[coordinate] - population.Mean[coordinate];
            }

            Cholesky.SolveLower(population.Factor, q, trial);
            double other = Improve(curve, population, trial);
            if (other < best)
            {
                best = other;
                trial.CopyTo(point, 0);
            }
        }

        return double.IsFinite(best) && Describe(curve, population);
    }

    /// <summary>The least objective near a start, infinite where none is certified.</summary>
    private double Improve<TCurve>(TCurve curve, MixedPopulation population, double[] start)
        where TCurve : struct, IMixedCurve
    {
        Span<double> room = workspace;
        ModeProblem<TCurve> problem = new(curve, Group, population, ref room);
        LeastSquaresResult result = LeastSquares.Solve(ref problem, start, room, new() { EvaluationLimit = 500 });
        bool certified = result.Status is LeastSquaresStatus.Converged or LeastSquaresStatus.ExactFit
            || result.Certificate * result.Certificate * result.SumOfSquares < DecrementLimit;
        return certified ? result.SumOfSquares : double.PositiveInfinity;
    }
}
