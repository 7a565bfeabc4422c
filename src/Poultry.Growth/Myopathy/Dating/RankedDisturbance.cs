using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>A logged disturbance with the part of the lesions found that it may have made.</summary>
public sealed class RankedDisturbance
{
    internal RankedDisturbance(Disturbance disturbance, DateOnly date, int daysBefore, Probability share, double expectedBirds, bool explainsAll) =>
        (Disturbance, Date, DaysBefore, Share, ExpectedBirds, ExplainsAll) = (disturbance, date, daysBefore, share, expectedBirds, explainsAll);

    /// <summary>Which.</summary>
    public Disturbance Disturbance { get; }

    /// <summary>When.</summary>
    public DateOnly Date { get; }

    /// <summary>Days before killing; beyond 14 the look tells disturbances apart no more.</summary>
    public int DaysBefore { get; }

    /// <summary>The chance that one of the lesions found, of a look that any logged disturbance can have, is from it.</summary>
    public Probability Share { get; }

    /// <summary>How many of the birds with lesions that makes.</summary>
    public double ExpectedBirds { get; }

    /// <summary>Whether it could have made all of them by itself, by the coarse rule.</summary>
    public bool ExplainsAll { get; }

    /// <summary>As in <c>2027-06-05, moving the shelter: 34 %</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Date:yyyy-MM-dd}, {Disturbance.What}: {Share}");
}
