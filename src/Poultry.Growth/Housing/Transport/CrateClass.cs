namespace Poultry.Growth.Housing;

/// <summary>A weight class of a transport standard: the floor for each kg of live weight, from one weight to another.</summary>
internal readonly record struct CrateClass(double FromKilograms, double ToKilograms, bool ToIsIncluded, double SquareCentimetersPerKilogram)
{
    /// <summary>From the conditions on bird weight of a limit.</summary>
    public static CrateClass Of(Limit limit)
    {
        (double from, double to, bool included) = (0, double.PositiveInfinity, true);
        foreach (LimitClause clause in limit.When.Where(clause => clause.Subject == LimitSubject.BirdWeight))
        {
            if (clause.Comparison is LimitComparison.Below or LimitComparison.AtMost)
            {
                (to, included) = (clause.Value, clause.Comparison == LimitComparison.AtMost);
            }
            else
            {
                from = clause.Value;
            }
        }

        return new(from, to, included, limit.Value!.Value);
    }

    /// <summary>Floor of a bird of this class at its heavy end, or at a lighter weight; in cm².</summary>
    public double AreaUpTo(double kilograms) => SquareCentimetersPerKilogram * Math.Min(kilograms, ToKilograms);
}
