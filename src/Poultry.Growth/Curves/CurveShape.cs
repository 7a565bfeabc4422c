using Poultry.Growth.Numerics;

namespace Poultry.Growth.Curves;

/// <summary>
/// The coordinates in which a family is fitted: W(t) = scale * exp(logShape(t; q)). Every growth law has this form, since weighing in
/// pounds must give the same birds; the scale follows from the data in closed form, and q is what remains to be searched. The
/// coordinates are chosen to be smooth through the limit where no mature weight exists, so that a fit finds out instead of running away.
/// </summary>
/// <remarks><c>origin</c> is an age in days, above 0, about which the coordinates are taken: that of the last weigh-in.</remarks>
internal abstract class CurveShape
{
    /// <summary>In place of a parameter to hold: the limit of the law where the mature weight has grown beyond all bounds.</summary>
    public const int NoMatureWeight = -1;

    /// <summary>How many coordinates q has, besides the scale.</summary>
    public abstract int Count { get; }

    /// <summary>How many different starts are worth trying; the best optimum counts.</summary>
    public abstract int Starts { get; }

    /// <summary>Logarithm of the shape, and unless <paramref name="gradient"/> is empty its derivatives: [j * ages + i]. False outside the law.</summary>
    public bool Evaluate(ReadOnlySpan<double> q, double origin, ReadOnlySpan<double> ageDays, Span<double> logShape, Span<double> gradient)
    {
        int n = ageDays.Length;
        int rows = Lanes.Padded(n);
        if (rows == n)
        {
            return EvaluateFours(q, origin, ageDays, logShape[..n], gradient);
        }

        // At the origin every law has a weight.
        int columns = gradient.IsEmpty ? 0 : Count;
        int length = rows * (2 + columns);
        Span<double> room = length <= Workspace.StackRoom ? stackalloc double[length] : new double[length];
        Span<double> padded = Workspace.Take(ref room, rows);
        ageDays.CopyTo(padded);
        padded[n..].Fill(origin);
        Span<double> log = Workspace.Take(ref room, rows);
        bool sound = EvaluateFours(q, origin, padded, log, room);
        log[..n].CopyTo(logShape);
        for (int j = 0; j < columns; j++)
        {
            room.Slice(j * rows, n).CopyTo(gradient[(j * n)..]);
        }

        return sound;
    }

    /// <summary>The same for ages in whole fours (<see cref="Lanes"/>).</summary>
    protected abstract bool EvaluateFours(
        ReadOnlySpan<double> q, double origin, ReadOnlySpan<double> ageDays, Span<double> logShape, Span<double> gradient);

    /// <summary>A start from the data: a few rates are tried, the rest is linear.</summary>
    /// <param name="start">Which start, from 0.</param>
    /// <param name="origin">Origin of the coordinates, d.</param>
    /// <param name="ageDays">Ages, d.</param>
    /// <param name="logKilograms">Logarithm of the weights.</param>
    /// <param name="weights">Statistical weights on the logarithmic scale.</param>
    /// <param name="q">Receives the coordinates.</param>
    /// <param name="workspace">Room for three numbers an age.</param>
    public abstract void Start(
        int start,
        double origin,
        ReadOnlySpan<double> ageDays,
        ReadOnlySpan<double> logKilograms,
        ReadOnlySpan<double> weights,
        Span<double> q,
        Span<double> workspace);

    /// <summary>Whether q has a finite mature weight.</summary>
    public abstract bool HasMatureWeight(ReadOnlySpan<double> q);

    /// <summary>
    /// The family's own parameters, and their derivatives with respect to (ln scale, q): [parameter * (1 + Count) + coordinate].
    /// Only where there is a mature weight.
    /// </summary>
    public abstract void ToParameters(double logScale, ReadOnlySpan<double> q, double origin, Span<double> parameters, Span<double> jacobian);

    /// <summary>The coordinate that gives way when a parameter is held: 0 is the scale, 1 + j is q[j].</summary>
    public abstract int CoordinateFor(int parameter);

    /// <summary>
    /// Holds a parameter at a value, or for <see cref="NoMatureWeight"/> keeps the law at its limit: writes the coordinate that gives way
    /// into q, or the logarithm of the scale where that is the scale, and how it changes with each of q. False where the rest of q allows no such value.
    /// </summary>
    public abstract bool Hold(int parameter, double value, double origin, Span<double> q, Span<double> derivatives, out double logScale);

    /// <summary>Moves q so that the mature weight has a value while the scale and the slope at the origin stay: a start for a fit that holds it. False where there is no such q.</summary>
    public abstract bool AimAtMatureWeight(double logMature, double logScale, Span<double> q);

    /// <summary>Whether a parameter runs off in this direction (to infinity, or a rate to 0) as the law nears its limit without a mature weight.</summary>
    public abstract bool LimitIsTowards(int parameter, bool upward);

    /// <summary>Moves q onto the limit without a mature weight while a parameter keeps its value, where one point of the limit has it; else returns false.</summary>
    public abstract bool MoveToLimit(int parameter, Span<double> q);
}
