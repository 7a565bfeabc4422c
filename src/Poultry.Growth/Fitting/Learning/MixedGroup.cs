namespace Poultry.Growth.Fitting;

/// <summary>What was measured of one batch: values at ages, each with the variance that is known of it beforehand (0 where none is). May be empty.</summary>
internal sealed class MixedGroup(double[] ageDays, double[] values, double[] knownVariances)
{
    /// <summary>An order that knows nothing of names or places.</summary>
    public static IComparer<MixedGroup> ByContent { get; } = Comparer<MixedGroup>.Create((left, right) =>
    {
        int order = left.AgeDays.SequenceCompareTo(right.AgeDays);
        order = order != 0 ? order : left.Values.SequenceCompareTo(right.Values);
        return order != 0 ? order : left.KnownVariances.SequenceCompareTo(right.KnownVariances);
    });

    public int Count => ageDays.Length;

    public ReadOnlySpan<double> AgeDays => ageDays;

    public ReadOnlySpan<double> Values => values;

    public ReadOnlySpan<double> KnownVariances => knownVariances;
}
