using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>The days that a timeline is worked out from, counted from hatch or back from killing; defaults are common practice for fast-growing birds outdoors.</summary>
public sealed class TimelineInputs
{
    /// <summary>The day the chicks come.</summary>
    public required DateOnly Placed { get; init; }

    /// <summary>How old they are that day.</summary>
    public required Age AgeAtPlacement { get; init; }

    /// <summary>The day of killing and its terms.</summary>
    public required OfferedDate Date { get; init; }

    /// <summary>When they leave the brooder: feathered, and when the weather allows; at three weeks where nothing is said.</summary>
    public Age MoveOut { get; init; } = Age.FromDays(21);

    /// <summary>Each feed with the age from which it is fed and how long its delivery takes.</summary>
    public IReadOnlyList<(string Name, Age From, Duration DeliveryTime)> Feeds { get; init; } = [];

    /// <summary>Ages at which to weigh; weekly from 14 d on where nothing is said.</summary>
    public IReadOnlyList<Age>? WeighIns { get; init; }

    /// <summary>How long before they come chicks must be ordered; eight weeks where nothing is said.</summary>
    public Duration ChickOrder { get; init; } = Duration.FromDays(56);

    /// <summary>How long before killing a plant's date must be booked; five months where nothing is said.</summary>
    public Duration PlantBooking { get; init; } = Duration.FromDays(150);

    /// <summary>How long before killing the cut sheet is due, where the plant names no last day for changes; ten days where nothing is said.</summary>
    public Duration CutSheet { get; init; } = Duration.FromDays(10);

    /// <summary>As in <c>placed 2027-04-27 at 1 d, killed 2027-06-08</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"placed {Placed:yyyy-MM-dd} at {AgeAtPlacement}, killed {Date}");
}
