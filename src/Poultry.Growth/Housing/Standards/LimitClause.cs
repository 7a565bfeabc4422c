using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>A condition of a limit's scope that a figure decides: a flock of 500 birds or more, a bird above 2 kg.</summary>
public sealed class LimitClause
{
    /// <summary>States a condition.</summary>
    /// <param name="subject">What decides.</param>
    /// <param name="comparison">On which side of the value it holds.</param>
    /// <param name="value">In the unit that <see cref="LimitSubject"/> names.</param>
    /// <param name="isSettled">False where the text was not read on this: not meeting it then leaves open whether the limit applies.</param>
    /// <exception cref="ArgumentException">No subject that can be judged.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite, or negative where its subject cannot be.</exception>
    public LimitClause(LimitSubject subject, LimitComparison comparison, double value, bool isSettled = true)
    {
        if (subject == LimitSubject.NotJudged)
        {
            throw new ArgumentException("A condition needs a subject that can be judged.", nameof(subject));
        }

        _ = LimitUnits.MayBeNegative(subject) ? Require.Finite(value, LimitUnits.Of(subject)) : Require.NotNegative(value, LimitUnits.Of(subject));
        (Subject, Comparison, Value, IsSettled) = (subject, comparison, value, isSettled);
    }

    /// <summary>What decides.</summary>
    public LimitSubject Subject { get; }

    /// <summary>On which side of the value it holds.</summary>
    public LimitComparison Comparison { get; }

    /// <summary>In the unit that <see cref="LimitSubject"/> names.</summary>
    public double Value { get; }

    /// <summary>Whether not meeting it settles that the limit does not apply.</summary>
    public bool IsSettled { get; }

    /// <summary>As in <c>flock size of 500 birds or more</c>, in every culture.</summary>
    public override string ToString() => LimitText.Words(Subject) + " " + LimitText.Side(Comparison, Subject, Value);

    /// <summary>Whether a value meets it.</summary>
    internal bool Holds(double value) => LimitText.Holds(Comparison, value, Value);

    /// <summary>Why a value does not meet it.</summary>
    internal string Missed(double value) => LimitText.Words(Subject) + " is " + LimitText.Figure(Subject, value) + ", the scope is " + LimitText.Side(Comparison, Subject, Value);
}
