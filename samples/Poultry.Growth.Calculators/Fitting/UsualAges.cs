using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The ages that are projected to where none is asked for.</summary>
internal static class UsualAges
{
    /// <summary>The age at which growers compare.</summary>
    public static Age EightWeeks { get; } = Age.FromDays(56);

    /// <summary>The weeks in which meat birds are sold.</summary>
    public static IReadOnlyList<Age> OfSale { get; } = [.. ((double[])[42, 49, 56, 63]).Select(Age.FromDays)];

    /// <summary>The last weigh-in and the weeks of sale after it; for older birds the next two weeks.</summary>
    public static IReadOnlyList<Age> After(Age last)
    {
        Age[] later = [.. OfSale.Where(age => age > last)];
        return [last, .. later.Length > 0 ? later : [Age.FromDays(last.Days + 7), Age.FromDays(last.Days + 14)]];
    }
}
