using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A limit that keeps a season from bringing more, from when to when it is nearest to its bound, and what a step more of it would bring.</summary>
public sealed class SeasonLimit
{
    internal SeasonLimit(SeasonLimitKind kind, DateOnly from, DateOnly to, Money worth) => (Kind, From, To, Worth) = (kind, from, to, worth);

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

    /// <summary>As in <c>one shelter more: 412.00 (2027-06-01 to 2027-06-20)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Step}: {Worth.Amount:0.00} ({From:yyyy-MM-dd} to {To:yyyy-MM-dd})");
}
