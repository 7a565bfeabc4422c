using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>In which state a live bird was weighed: full-fed on the farm, or so many hours after its last feed.</summary>
public sealed class LiveState : IEquatable<LiveState>
{
    private LiveState(double? hoursOffFeed, double roadHours) => (HoursOffFeed, RoadHours) = (hoursOffFeed, roadHours);

    /// <summary>On the farm, with feed before it.</summary>
    public static LiveState FullFed { get; } = new(0, 0);

    /// <summary>The source does not say.</summary>
    public static LiveState NotStated { get; } = new(null, 0);

    /// <summary>Hours since the last feed; 0 for full-fed, null where it is not stated.</summary>
    public double? HoursOffFeed { get; }

    /// <summary>How many of them were spent on the road.</summary>
    public double RoadHours { get; }

    /// <summary>Whether the source says it.</summary>
    public bool IsStated => HoursOffFeed is not null;

    /// <summary>So long after the last feed: at killing, the time from taking the feed away to killing.</summary>
    /// <param name="sinceLastFeed">0 to 48 h.</param>
    /// <param name="onRoad">The part of it on the road, 0 h to <paramref name="sinceLastFeed"/>; none where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time is out of its range.</exception>
    public static LiveState OffFeed(Duration sinceLastFeed, Duration? onRoad = null)
    {
        double hours = Require.Between(sinceLastFeed.Hours, 0, 48, "h", nameof(sinceLastFeed));
        return new(hours, Require.Between(onRoad?.Hours ?? 0, 0, hours, "h", nameof(onRoad)));
    }

    /// <inheritdoc/>
    public bool Equals(LiveState? other) => other is not null && Nullable.Equals(HoursOffFeed, other.HoursOffFeed) && RoadHours.Equals(other.RoadHours);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LiveState);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(HoursOffFeed, RoadHours);

    /// <summary>As in <c>12 h off feed</c>, in every culture.</summary>
    public override string ToString() => HoursOffFeed switch
    {
        null => "state not stated",
        0 => "full-fed",
        { } hours => string.Create(CultureInfo.InvariantCulture, $"{hours:0.##} h off feed") + (RoadHours > 0 ? string.Create(CultureInfo.InvariantCulture, $", {RoadHours:0.##} h of them on the road") : ""),
    };
}
