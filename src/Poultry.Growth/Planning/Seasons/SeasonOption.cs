using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>One way to raise a batch within a season: its days, what it takes of the farm, and what it brings.</summary>
public sealed class SeasonOption
{
    private SeasonOption(DateOnly placed, DateOnly movedOut, DateOnly killed, Money margin, SeasonNeeds needs) =>
        (Placed, MovedOut, Killed, Margin, Needs) = (placed, movedOut, killed, margin, needs);

    /// <summary>The day the chicks come.</summary>
    public DateOnly Placed { get; }

    /// <summary>The day they leave the brooder for the shelters.</summary>
    public DateOnly MovedOut { get; }

    /// <summary>The day they are killed.</summary>
    public DateOnly Killed { get; }

    /// <summary>What the batch brings, all its own costs paid.</summary>
    public Money Margin { get; }

    /// <summary>What it takes of the farm and the plant.</summary>
    public SeasonNeeds Needs { get; }

    /// <summary>A way to raise a batch.</summary>
    /// <param name="placed">The day the chicks come.</param>
    /// <param name="movedOut">The day they leave the brooder; not before.</param>
    /// <param name="killed">The day they are killed; later.</param>
    /// <param name="margin">What the batch brings, all its own costs paid; may be a loss.</param>
    /// <param name="needs">What it takes of the farm and the plant.</param>
    /// <exception cref="ArgumentException">The days are not in this order.</exception>
    public static SeasonOption Of(DateOnly placed, DateOnly movedOut, DateOnly killed, Money margin, SeasonNeeds needs)
    {
        ArgumentNullException.ThrowIfNull(needs);
        return placed <= movedOut && movedOut < killed
            ? new(placed, movedOut, killed, margin, needs)
            : throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{placed:yyyy-MM-dd}, {movedOut:yyyy-MM-dd}, {killed:yyyy-MM-dd} are not in order; expected placed, moved out, killed."),
                nameof(placed));
    }

    /// <summary>As in <c>2027-04-12 to 2027-06-08, 912.00</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Placed:yyyy-MM-dd} to {Killed:yyyy-MM-dd}, {Margin.Amount:0.00}");
}
