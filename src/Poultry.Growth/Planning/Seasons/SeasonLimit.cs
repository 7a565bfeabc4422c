using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A limit that keeps a season from bringing more, from when to when it is nearest to its bound, and what a step more of it would bring.</summary>
public sealed class SeasonLimit
{
    internal SeasonLimit(SeasonLimitKind kind, DateOnly from, DateOnly to, Money worth, IReadOnlyList<SeasonOption?> raised, Interval<Money>? range = null) =>
        (Kind, From, To, Worth, Raised, Range) = (kind, from, to, worth, raised, range);

    /// <summary>Which limit.</summary>
    public SeasonLimitKind Kind { get; }

    /// <summary>First day on which most of it is used.</summary>
    public DateOnly From { get; }

    /// <summary>Last such day.</summary>
    public DateOnly To { get; }

    /// <summary>The step by which it was raised, in words.</summary>
    public string Step => SeasonLimitSteps.Words(Kind);

    /// <summary>What the best season brings more with the step; 0 or more.</summary>
    public Money Worth { get; }

    /// <summary>What it brings more in most of the fates drawn, where all batches meet the same: below 0 in some, for the days are chosen by means; null where no fates were drawn, as by <see cref="Season.Best"/>.</summary>
    public Interval<Money>? Range { get; }

    /// <summary>How each batch would be raised with the step; null where the season is better without it.</summary>
    internal IReadOnlyList<SeasonOption?> Raised { get; }

    internal SeasonLimit With(Interval<Money> range) => new(Kind, From, To, Worth, Raised, range);

    /// <summary>As in <c>one shelter more: 412.00 (2027-06-01 to 2027-06-20)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Step}: {Worth.Amount:0.00} ({From:yyyy-MM-dd} to {To:yyyy-MM-dd})");
}
