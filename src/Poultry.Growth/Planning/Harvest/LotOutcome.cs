namespace Poultry.Growth.Planning;

/// <summary>What became of the birds of one day at the plant.</summary>
internal readonly record struct LotOutcome
{
    /// <summary>Birds dead on arrival.</summary>
    public double Dead { get; init; }

    /// <summary>Birds condemned, of those delivered.</summary>
    public double Condemned { get; init; }

    /// <summary>Meat lost to dead tenders.</summary>
    public double LesionKilograms { get; init; }

    /// <summary>Killing, cutting, packing and what is charged for birds missing or condemned.</summary>
    public double Charges { get; init; }

    public static LotOutcome operator +(LotOutcome one, LotOutcome two) => new()
    {
        Dead = one.Dead + two.Dead,
        Condemned = one.Condemned + two.Condemned,
        LesionKilograms = one.LesionKilograms + two.LesionKilograms,
        Charges = one.Charges + two.Charges,
    };
}
