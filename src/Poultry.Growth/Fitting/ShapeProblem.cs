using System.Runtime.Intrinsics;
using Poultry.Growth.Curves;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Fitting;

/// <summary>
/// The residuals of a fit as a function of the shape coordinates alone. The scale of the curve follows from them in closed form for each
/// of the three sums of squares (variable projection with its exact derivative), unless something else fixes it: a known hatch weight, or a parameter that is held.
/// </summary>
internal ref partial struct ShapeProblem : ILeastSquaresProblem
{
    private readonly FitData data;
    private readonly CurveShape shape;
    private readonly HeldValue held;
    private readonly Span<double> log;
    private readonly Span<double> gradient;
    private readonly Span<double> q;
    private readonly Span<double> heldDerivatives;
    private readonly Span<double> logScaleDerivatives;
    private readonly Span<double> hatchGradient;
    private readonly Span<double> roots;
    private readonly Span<double> rootedKilograms;

    public ShapeProblem(in FitData data, CurveShape shape, in HeldValue held, ref Span<double> workspace)
    {
        this.data = data;
        (this.shape, this.held) = (shape, held);
        int count = shape.Count;
        log = Workspace.Take(ref workspace, data.Count);
        gradient = Workspace.Take(ref workspace, data.Count * count);
        q = Workspace.Take(ref workspace, count);
        heldDerivatives = Workspace.Take(ref workspace, count);
        logScaleDerivatives = Workspace.Take(ref workspace, count);
        hatchGradient = Workspace.Take(ref workspace, count);
        roots = Workspace.Take(ref workspace, data.Count);
        rootedKilograms = Workspace.Take(ref workspace, data.Count);
        Span<Vector256<double>> root = Lanes.Of(roots);
        Span<Vector256<double>> rooted = Lanes.Of(rootedKilograms)[..root.Length];
        ReadOnlySpan<Vector256<double>> weights = Lanes.Of(data.Weights)[..root.Length];
        ReadOnlySpan<Vector256<double>> kilograms = Lanes.Of(data.Kilograms)[..root.Length];
        for (int i = 0; i < root.Length; i++)
        {
            root[i] = Vector256.Sqrt(weights[i]);
            rooted[i] = root[i] * kilograms[i];
        }
    }

    /// <summary>The scale at the last evaluation, kg.</summary>
    public double Scale { get; private set; }

    public readonly int Residuals => data.Scale == ResidualScale.ProportionalLikelihood ? 2 * data.Count : data.Count;

    public readonly int Parameters => shape.Count - (held.Coordinate > 0 ? 1 : 0);

    public static int WorkspaceLength(int ages, int coordinates) => (ages * (3 + coordinates)) + (4 * coordinates);

    /// <summary>Whether these coordinates were the last to be evaluated.</summary>
    public readonly bool WasLastAt(ReadOnlySpan<double> all) => q.SequenceEqual(all);

    /// <summary>All coordinates from those that are free.</summary>
    public readonly bool Complete(ReadOnlySpan<double> free, Span<double> all, out double heldLogScale)
    {
        int from = 0;
        for (int j = 0; j < all.Length; j++)
        {
            all[j] = held.Coordinate == j + 1 ? double.NaN : free[from++];
        }

        heldLogScale = double.NaN;
        return !held.IsHeld || shape.Hold(held.Parameter, held.Value, data.Origin, all, heldDerivatives, out heldLogScale);
    }

    public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> jacobian)
    {
        bool wanted = !jacobian.IsEmpty;
        if (!Complete(parameters, q, out double heldLogScale)
            || !shape.Evaluate(q, data.Origin, data.AgeDays, log, wanted ? gradient : default))
        {
            return false;
        }

        if (wanted && held.Coordinate > 0)
        {
            FoldHeldCoordinate();
        }

        int free = Parameters;
        Span<double> columns = gradient[..(free * data.Count)];
        bool fixedScale = false;
        if (held is { IsHeld: true, Coordinate: 0 })
        {
            Scale = Math.Exp(heldLogScale);
            heldDerivatives.CopyTo(logScaleDerivatives);
            fixedScale = true;
        }
        else if (held.HatchKilograms > 0)
        {
            fixedScale = true;
            if (!ScaleFromHatch())
            {
                return false;
            }
        }

        Span<double> scaleDerivatives = logScaleDerivatives[..free];
        return data.Scale switch
        {
            ResidualScale.Kilograms => InKilograms(fixedScale, columns, scaleDerivatives, residuals, jacobian),
            ResidualScale.Logarithm => InLogarithms(fixedScale, columns, scaleDerivatives, residuals, jacobian),
            _ => ByLikelihood(fixedScale, columns, scaleDerivatives, residuals, jacobian),
        };
    }

    /// <summary>Chain rule: what the held coordinate does as the free ones move; then the columns of the free ones stand side by side.</summary>
    private readonly void FoldHeldCoordinate()
    {
        int n = data.Count;
        int gone = held.Coordinate - 1;
        ReadOnlySpan<double> column = gradient.Slice(gone * n, n);
        for (int j = 0; j < q.Length; j++)
        {
            for (int i = 0; j != gone && i < n; i++)
            {
                gradient[(j * n) + i] += heldDerivatives[j] * column[i];
            }
        }

        gradient[((gone + 1) * n)..].CopyTo(gradient[(gone * n)..]);
    }

    private bool ScaleFromHatch()
    {
        Span<double> atHatch = stackalloc double[1];
        if (!shape.Evaluate(q, data.Origin, [0.0], atHatch, hatchGradient))
        {
            return false;
        }

        Scale = held.HatchKilograms * Math.Exp(-atHatch[0]);
        for (int j = 0, to = 0; j < q.Length; j++)
        {
            if (held.Coordinate != j + 1)
            {
                double chain = held.Coordinate > 0 ? heldDerivatives[j] * hatchGradient[held.Coordinate - 1] : 0;
                logScaleDerivatives[to++] = -hatchGradient[j] - chain;
            }
        }

        return double.IsFinite(Scale);
    }
}
