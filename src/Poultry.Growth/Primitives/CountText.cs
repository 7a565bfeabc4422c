using System.Globalization;

namespace Poultry.Growth.Primitives;

/// <summary>Things counted, in sentences: one bird, two birds.</summary>
internal static class CountText
{
    /// <summary>As in <c>1 bird</c> or <c>3 birds</c>, in every culture.</summary>
    public static string Of(long count, string one) => Of(count, one, one + "s");

    /// <summary>As in <c>1 batch</c> or <c>3 batches</c>, in every culture.</summary>
    public static string Of(long count, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");

    /// <summary>As in <c>3 batches</c>.</summary>
    public static string Batches(int count) => Of(count, "batch", "batches");

    /// <summary>As in <c>3 own batches</c>: the farm's.</summary>
    public static string OwnBatches(int count) => Of(count, "own batch", "own batches");
}
