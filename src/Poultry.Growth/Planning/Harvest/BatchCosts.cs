using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What a batch costs beside feed and plant. What is not stated is nothing, and a forecast of money is then too good.</summary>
public sealed class BatchCosts
{
    /// <summary>A chick, shipping included, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money Chick { get; init => field = NotNegative(value, nameof(Chick)); }

    /// <summary>Bedding of the batch, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money Bedding { get; init => field = NotNegative(value, nameof(Bedding)); }

    /// <summary>Whatever else the batch costs in any case: brooder heat, the batch's part of shelters and fence; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money Fixed { get; init => field = NotNegative(value, nameof(Fixed)); }

    /// <summary>A trip to the plant, counted for every day of killing: fuel, hire, the time of driver and catchers; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money Trip { get; init => field = NotNegative(value, nameof(Trip)); }

    /// <summary>An hour of work, 0 or more. Own work at nothing makes any batch look well.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money LabourHour { get; init => field = NotNegative(value, nameof(LabourHour)); }

    /// <summary>Work a day for the batch, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Duration LabourADay { get; init => field = Duration.FromHours(Require.NotNegative(value.Hours, "h", nameof(LabourADay))); }

    /// <summary>As in <c>2.10 a chick, 60.00 bedding, 150.00 fixed, 45.00 a trip, 1.5 h a day at 20.00</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Chick} a chick, {Bedding} bedding, {Fixed} fixed, {Trip} a trip, {LabourADay.Hours:0.##} h a day at {LabourHour}");

    /// <summary>What so many chicks kept for so many days and killed in so many trips cost.</summary>
    internal double Of(int chicks, double days, int trips) =>
        (Chick.Amount * chicks) + Bedding.Amount + Fixed.Amount + (Trip.Amount * trips) + (LabourHour.Amount * LabourADay.Hours * days);

    private static Money NotNegative(Money money, string name) => Money.Of(Require.NotNegative(money.Amount, "", name));
}
