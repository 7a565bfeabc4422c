namespace Poultry.Growth.Housing;

/// <summary>How many birds a limit on space lets onto a floor: always the safe whole number.</summary>
internal static class FloorFit
{
    /// <summary>What the limits on space limit.</summary>
    public static readonly IReadOnlyList<LimitSubject> Subjects =
        Array.AsReadOnly([LimitSubject.StockingDensity, LimitSubject.MeanStockingDensity, LimitSubject.BirdsPerArea, LimitSubject.FloorAreaPerBird]);

    /// <summary>birds = floor(min(n, D/W) A), by one limit; null where the limit is none on space, or its mean cannot be told.</summary>
    /// <param name="limit">A limit on space.</param>
    /// <param name="squareMeters">A, the floor.</param>
    /// <param name="kilograms">W, the mean weight of a bird.</param>
    /// <param name="earlierSum">Highest densities of the two batches before, added up in kg/m²; null where unknown.</param>
    public static int? MostBirds(Limit limit, double squareMeters, double kilograms, double? earlierSum)
    {
        if (limit.Value is not { } value)
        {
            return null;
        }

        return limit.Subject switch
        {
            LimitSubject.StockingDensity => Most(limit, value * squareMeters / kilograms, birds => birds * kilograms / squareMeters),
            LimitSubject.MeanStockingDensity when earlierSum is { } earlier =>
                Most(limit, ((3 * value) - earlier) * squareMeters / kilograms, birds => (earlier + (birds * kilograms / squareMeters)) / 3),
            LimitSubject.BirdsPerArea => Most(limit, value * squareMeters, birds => birds / squareMeters),
            LimitSubject.FloorAreaPerBird => Most(limit, squareMeters / value, birds => squareMeters / birds),
            _ => null,
        };
    }

    /// <summary>Floors, and steps over what rounding did to a whole number.</summary>
    private static int Most(Limit limit, double birds, Func<double, double> figureOf)
    {
        double whole = Math.Floor(Math.Min(Math.Max(birds, 0), int.MaxValue - 1)) + 1;
        while (whole > 0 && !LimitText.Holds(limit.Comparison, figureOf(whole), limit.Value!.Value))
        {
            whole--;
        }

        return (int)whole;
    }
}
