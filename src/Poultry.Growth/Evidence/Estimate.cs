using Poultry.Growth.Primitives;

namespace Poultry.Growth.Evidence;

/// <summary>A number that tells the truth about itself: how sure it is, which model gave it, and what to mind.</summary>
/// <typeparam name="T">A quantity, an <see cref="Age"/>, or a plain number without unit.</typeparam>
/// <remarks>A quantity is kept in its base unit.</remarks>
public sealed class Estimate<T>
    where T : struct, IComparable<T>
{
    /// <summary>States an estimate.</summary>
    /// <param name="value">The best single answer.</param>
    /// <param name="interval">How sure it is.</param>
    /// <param name="model">What gave it.</param>
    /// <param name="cautions">What to mind; may be empty.</param>
    public Estimate(T value, Interval<T> interval, ModelInfo model, IReadOnlyList<Caution> cautions)
    {
        ArgumentNullException.ThrowIfNull(interval);
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(cautions);
        Value = Interval<T>.Canonical(value)!.Value;
        (Interval, Model, Cautions) = (interval, model, cautions);
    }

    /// <summary>The best single answer, in the base unit.</summary>
    public T Value { get; }

    /// <summary>How sure it is.</summary>
    public Interval<T> Interval { get; }

    /// <summary>What gave it.</summary>
    public ModelInfo Model { get; }

    /// <summary>What to mind before acting on it.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Value and interval in one line, as in <c>2.54 kg (5.6 lb; 90 %: 2.41 to 2.68 kg, 5.313 to 5.908 lb)</c> or <c>47.9 d (90 %: 45.3 to 52.1)</c>, in every culture.</summary>
    public override string ToString() => RangeText<T>.Around(Value, Interval.Percent + ": ", Interval.Low, Interval.High);
}
