using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>
/// Where the chicks placed have gone: placed = dead + culled + missing + dead on arrival + condemned + kept + sold + on hand. What does not add up is the
/// <see cref="Remainder"/>: it is told and never put anywhere.
/// </summary>
public sealed class HeadBalance
{
    private readonly int delivered;
    private readonly int passed;

    internal HeadBalance(BatchPlan plan, PlantSheet sheet, Age killed)
    {
        Flock.Deaths[] deaths = [.. plan.Birds.Deaths.Where(day => day.Age <= killed)];
        (Placed, delivered) = (plan.Birds.Placed, sheet.Delivered);
        (Dead, Culled) = (sheet.Dead + deaths.Sum(day => day.Birds - day.Culled), sheet.Culled + deaths.Sum(day => day.Culled));
        Undated = sheet.Dead + sheet.Culled;
        (Missing, OnHand, DeadOnArrival, Condemned, Kept) = (sheet.Missing, sheet.OnHand, sheet.DeadOnArrival, sheet.CondemnedBirds, sheet.Kept);
        passed = sheet.Passed ?? sheet.Delivered - sheet.DeadOnArrival - sheet.CondemnedBirds;
        DeathsWritten = deaths.Length > 0;
    }

    /// <summary>Chicks placed alive.</summary>
    public int Placed { get; }

    /// <summary>Found dead on the farm.</summary>
    public int Dead { get; }

    /// <summary>Culled on the farm, where they were counted apart from the dead.</summary>
    public int Culled { get; }

    /// <summary>Missed at a count.</summary>
    public int Missing { get; }

    /// <summary>Dead on arrival at the plant.</summary>
    public int DeadOnArrival { get; }

    /// <summary>Condemned whole.</summary>
    public int Condemned { get; }

    /// <summary>Passed and kept by the farm.</summary>
    public int Kept { get; }

    /// <summary>Passed and for sale: of those that passed by the plant's own count where it gave one, else of those delivered, less dead on arrival and condemned.</summary>
    public int Sold => passed - Kept;

    /// <summary>Left alive on the farm.</summary>
    public int OnHand { get; }

    /// <summary>Placed less all others: above 0 birds are not accounted for, below 0 there are more than were placed.</summary>
    public int Remainder => Placed - Dead - Culled - Missing - DeadOnArrival - Condemned - Kept - Sold - OnHand;

    /// <summary>The part of the remainder between chicks and loading: placed less dead, culled, missing, on hand and delivered.</summary>
    public int RemainderOnFarm => Placed - Dead - Culled - Missing - OnHand - delivered;

    /// <summary>The part between unloading and pack: delivered less dead on arrival, condemned and passed; 0 where the plant gave no count of its own.</summary>
    public int RemainderAtPlant => delivered - DeadOnArrival - Condemned - passed;

    /// <summary>Birds that were placed and never loaded, whatever the records say of them: placed less delivered and on hand. Below 0 a count is wrong.</summary>
    public int Lost => Placed - delivered - OnHand;

    /// <summary>Whether deaths were written down day by day.</summary>
    internal bool DeathsWritten { get; }

    /// <summary>Dead and culled without a day.</summary>
    internal int Undated { get; }

    /// <summary>Birds that passed.</summary>
    internal int Passed => passed;

    /// <summary>The balance in one line and in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Placed} placed = {Dead} dead + {Culled} culled + {Missing} missing + {DeadOnArrival} dead on arrival + {Condemned} condemned + {Kept} kept + {Sold} sold + {OnHand} on hand + {Remainder} not accounted for");
}
