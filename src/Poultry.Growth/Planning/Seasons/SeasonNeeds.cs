using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What a batch takes of the farm and the plant while it is there. What is not stated is none.</summary>
public sealed class SeasonNeeds
{
    /// <summary>Places in the brooder, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int BrooderPlaces { get; init => field = Require.AtLeast(value, 0, nameof(BrooderPlaces)); }

    /// <summary>Shelters outdoors, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Shelters { get; init => field = Require.AtLeast(value, 0, nameof(Shelters)); }

    /// <summary>Birds delivered to the plant, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Head { get; init => field = Require.AtLeast(value, 0, nameof(Head)); }

    /// <summary>Fresh ground used up in the season, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Area Ground { get; init => field = Area.FromSquareMeters(Require.NotNegative(value.SquareMeters, "m2", nameof(Ground))); }

    /// <summary>Work a day, from the day the chicks come to the day of killing, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Duration LabourADay { get; init => field = Duration.FromHours(Require.NotNegative(value.Hours, "h", nameof(LabourADay))); }

    /// <summary>As in <c>300 brooder places, 3 shelters, 285 head, 900 m2 (9688 ft2), 1.5 h a day</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{BrooderPlaces} brooder places, {CountText.Of(Shelters, "shelter")}, {Head} head, {Ground.SquareMeters:0} m2 ({Ground.SquareFeet:0} ft2), {LabourADay.Hours:0.##} h a day");
}
