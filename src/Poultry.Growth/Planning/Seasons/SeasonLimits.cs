using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What a farm and its plant can take at a time. A limit that is null does not bind.</summary>
public sealed class SeasonLimits
{
    /// <summary>Chicks that the brooder holds; null for any number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int? BrooderPlaces { get; init => field = value is { } places ? Require.AtLeast(places, 0, nameof(BrooderPlaces)) : null; }

    /// <summary>Shelters; null for any number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int? Shelters { get; init => field = value is { } shelters ? Require.AtLeast(shelters, 0, nameof(Shelters)) : null; }

    /// <summary>How long shelters stand empty after the birds are caught, before the next: cleaning, repair.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Duration ShelterRest { get; init => field = Duration.FromDays(Require.NotNegative(value.Days, "d", nameof(ShelterRest))); }

    /// <summary>Fresh ground for the season; null for any.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Area? Ground { get; init => field = value is { } area ? Area.FromSquareMeters(Require.NotNegative(area.SquareMeters, "m2", nameof(Ground))) : null; }

    /// <summary>Hands for the birds a day; null for any.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Duration? LabourADay { get; init => field = value is { } work ? Duration.FromHours(Require.NotNegative(work.Hours, "h", nameof(LabourADay))) : null; }

    /// <summary>Birds that the plant takes on each of its days; a day that is not named has no limit known.</summary>
    public IReadOnlyDictionary<DateOnly, int> HeadByDay { get; init; } = new Dictionary<DateOnly, int>();

    /// <summary>As in <c>brooder 300 birds, shelters 4, ground any, work any</c>, the plant's days apart; in every culture.</summary>
    public override string ToString() => "brooder " + Most(BrooderPlaces, " birds") + ", shelters " + Most(Shelters, "")
        + ", ground " + (Ground is { } ground ? string.Create(CultureInfo.InvariantCulture, $"{ground.SquareMeters:0} m2 ({ground.SquareFeet:0} ft2)") : "any")
        + ", work " + (LabourADay is { } work ? string.Create(CultureInfo.InvariantCulture, $"{work.Hours:0.##} h a day") : "any");

    /// <summary>The same limits with one of them raised by a step.</summary>
    internal SeasonLimits With(SeasonLimitKind raised, DateOnly? day) => new()
    {
        BrooderPlaces = raised == SeasonLimitKind.BrooderPlaces ? BrooderPlaces + SeasonLimitSteps.Birds : BrooderPlaces,
        Shelters = raised == SeasonLimitKind.Shelters ? Shelters + 1 : Shelters,
        ShelterRest = ShelterRest,
        Ground = raised == SeasonLimitKind.Ground && Ground is { } ground ? Area.FromSquareMeters(ground.SquareMeters + SeasonLimitSteps.SquareMeters) : Ground,
        LabourADay = raised == SeasonLimitKind.Labour && LabourADay is { } work ? Duration.FromHours(work.Hours + 1) : LabourADay,
        HeadByDay = HeadByDay.ToDictionary(
            limit => limit.Key, limit => raised == SeasonLimitKind.PlantHead && limit.Key == day ? limit.Value + SeasonLimitSteps.Birds : limit.Value),
    };

    private static string Most(int? places, string unit) => places is { } most ? string.Create(CultureInfo.InvariantCulture, $"{most}{unit}") : "any";
}
