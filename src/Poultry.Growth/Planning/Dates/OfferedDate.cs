using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>A day on which a plant would kill the batch, on its terms.</summary>
public sealed class OfferedDate
{
    private const int UsualCutSheetDays = 10;

    /// <summary>The day of killing.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What the plant charges and takes; nothing where it says nothing.</summary>
    public PlantTerms Terms { get; init; } = new();

    /// <summary>Whether this date is the one booked now.</summary>
    public bool IsBooked { get; init; }

    /// <summary>Birds booked; null where none are yet.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public int? BookedBirds { get; init => field = value is { } birds ? Require.AtLeast(birds, 1, nameof(BookedBirds)) : null; }

    /// <summary>Last day on which date, head or cut sheet may be changed; null where the plant says nothing.</summary>
    public DateOnly? ChangeUntil { get; init; }

    /// <summary>What a change costs, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money ChangeCost { get; init => field = Money.Of(Require.NotNegative(value.Amount, "", nameof(ChangeCost))); }

    /// <summary>From feed removed to killing, road and waiting included; the usual 10 h where the plant says nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not within 0 and 48 h.</exception>
    public Duration OffFeed { get; init => field = Duration.FromHours(Require.Between(value.Hours, 0, 48, "h", nameof(OffFeed))); } = Duration.FromHours(10);

    /// <summary>Of these, on the road; none where nothing is said.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not within 0 and 24 h.</exception>
    public Duration Road { get; init => field = Duration.FromHours(Require.Between(value.Hours, 0, 24, "h", nameof(Road))); }

    /// <summary>When the birds must be at the plant; seven in the morning where it says nothing.</summary>
    public TimeOnly Arrival { get; init; } = new(7, 0);

    /// <summary>When packs can be collected, so many days after killing, 0 or more; the next day where the plant says nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int CollectAfterDays { get; init => field = Require.AtLeast(value, 0, nameof(CollectAfterDays)); } = 1;

    /// <summary>Until when the plant must hear of a change: its own last day, or ten days before (common practice).</summary>
    internal DateOnly DecideBy => ChangeUntil ?? Date.AddDays(-UsualCutSheetDays);

    /// <summary>The next day on the same terms.</summary>
    internal OfferedDate DayLater() => As(Date.AddDays(1), IsBooked, BookedBirds);

    /// <summary>The same terms on another day, or for another booking.</summary>
    internal OfferedDate As(DateOnly date, bool isBooked, int? bookedBirds) => new()
    {
        Date = date,
        Terms = Terms,
        IsBooked = isBooked,
        BookedBirds = bookedBirds,
        ChangeUntil = ChangeUntil,
        ChangeCost = ChangeCost,
        OffFeed = OffFeed,
        Road = Road,
        Arrival = Arrival,
        CollectAfterDays = CollectAfterDays,
    };

    /// <summary>The date, as in <c>2027-06-08</c>, in every culture.</summary>
    public override string ToString() => Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
