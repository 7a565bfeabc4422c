using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What to do on which day, worked out back from the day of killing: from booking the plant to collecting the packs.</summary>
/// <remarks>
/// Days are common practice of the trade for small outdoor flocks (no source), unless the plant, the hatchery or the feed mill say otherwise; what they
/// say goes first.
/// </remarks>
public static class Timeline
{
    private const int LeadOfBrooder = 1;

    /// <summary>Loading takes time before the road.</summary>
    private static readonly TimeSpan Catching = TimeSpan.FromHours(1.5);

    private static Caution ClearOfDrugs { get; } = new(
        "feed-label-withdrawal", "Check the feed label and every treatment for a withdrawal time before killing; ask the vet. No advice on drugs is given here.");

    private static Caution Heat { get; } = new(
        "catch-in-the-cool", "Catch and load in the cool hours, with air between the crates. Above the heat that the haulier or the plant sets, fewer birds a crate or another day.");

    private static Caution Handling { get; } = new(
        "catch-calmly", "Catch calmly and in dim light, both legs or the whole body, never by a wing: struggling birds bruise, break bones and may carry dead tenders.");

    private static Caution Chicks { get; } = new(
        "look-at-the-chicks", "Let the chicks say whether it is warm enough: piled up they are cold, far from the heat with open beaks too hot. Piling kills within minutes.");

    private static Caution FoodSafety { get; } = new(
        "cold-chain", "Keep the meat at the temperature that the plant and the local code require from the dock to the customer; who may sell what, and with which label, is ruled by law.");

    /// <summary>The entries in order of day and time.</summary>
    /// <exception cref="ArgumentException">The chicks come after the day of killing.</exception>
    public static IReadOnlyList<TimelineEntry> Of(TimelineInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        OfferedDate date = inputs.Date;
        return inputs.Placed < date.Date
            ? [.. Before(inputs).Concat(Raising(inputs)).Concat(LastDays(inputs)).OrderBy(entry => entry.Date).ThenBy(entry => entry.Time ?? TimeOnly.MinValue)]
            : throw new ArgumentException("The chicks come on or after the day of killing; expected them earlier.", nameof(inputs));
    }

    private static IEnumerable<TimelineEntry> Before(TimelineInputs inputs)
    {
        yield return new(
            Earlier(inputs.Date.Date, inputs.PlantBooking), "Book the plant", "Plants fill months ahead: the date comes first, the chicks follow from it.",
            "date, head, fees, what is charged for birds missing, condemned or full, last day for changes");
        yield return new(
            Earlier(inputs.Placed, inputs.ChickOrder), "Order the chicks", "Hatcheries fill too; order what dies on the way and later as well.", "strain, sexes, number, price, hatch date");
        yield return new(inputs.Placed.AddDays(-LeadOfBrooder), "Warm and bed the brooder", "Litter and water are warm when the chicks come.", "temperature at chick height");
    }

    private static IEnumerable<TimelineEntry> Raising(TimelineInputs inputs)
    {
        yield return new(inputs.Placed, "Place the chicks", "Count, dip beaks, see every chick drink.", "placed alive, dead on arrival, age, mean weight of 20", Chicks);
        if (On(inputs, inputs.MoveOut) is var moved && moved < inputs.Date.Date)
        {
            yield return new(moved, "Move out to the shelters", "Feathered, and when the weather allows; heat is lowered to the outside's in the days before.", "day, birds in each shelter, night temperature");
        }

        foreach ((string name, Age from, Duration delivery) in inputs.Feeds)
        {
            DateOnly needed = On(inputs, from);
            if (needed >= inputs.Date.Date)
            {
                continue;
            }

            if (from > inputs.AgeAtPlacement)
            {
                yield return new(needed, "Change to " + name, "Mix the old feed in for two days.", "day, what is left of the old feed");
            }

            yield return new(Earlier(needed, delivery + Duration.FromDays(2)), "Order " + name, "So that it is there two days before it is needed.", "bags, price");
        }

        foreach (Age age in WeighIns(inputs))
        {
            yield return new(On(inputs, age), "Weigh a sample", "From three places, every bird caught; about 30 tell the mean within 4 %.", "date, birds, each weight");
        }
    }

    private static IEnumerable<TimelineEntry> LastDays(TimelineInputs inputs)
    {
        OfferedDate date = inputs.Date;
        DateOnly sheet = date.ChangeUntil ?? Earlier(date.Date, inputs.CutSheet);
        yield return new(
            sheet, "Decide: keep the date or move it, head count, cut sheet", date.ChangeUntil is null ? "Usual time for the cut sheet; ask the plant." : "Last day for changes by the plant's terms.",
            "head, whole and cut birds, sizes of packs");
        yield return new(sheet, "Tell the customers and make room in the freezer", "Weights are known well enough by then.", "orders confirmed");
        DateTime arrival = date.Date.ToDateTime(date.Arrival);
        DateTime caught = arrival - TimeSpan.FromHours(date.Road.Hours) - Catching;

        // The birds are killed when they come or later: counted to arrival, the time off feed is the shortest. Birds in crates have none anyway.
        DateTime feedOff = arrival - TimeSpan.FromHours(date.OffFeed.Hours);
        yield return At(feedOff < caught ? feedOff : caught, "Feed off, water stays on", "The plant's rule, 8 to 12 h as a rule: full crops soil carcasses, long hunger costs weight and welfare.", "time", ClearOfDrugs);
        yield return At(caught, "Catch and crate", "Road, loading and arrival counted back.", "crates, birds a crate, birds left behind", Handling);
        yield return At(caught.AddHours(0.5), "Load with air between the crates", "Heat kills on the road.", "temperature, time", Heat);
        yield return At(arrival, "Deliver the birds", "As booked.", "head delivered, dead on arrival");
        yield return new(date.Date.AddDays(date.CollectAfterDays), "Collect the packs", "Weigh and count before they are put away.", "packs and weight by cut, condemned with reasons, dead tenders by look, invoice", FoodSafety);
    }

    private static IEnumerable<Age> WeighIns(TimelineInputs inputs)
    {
        Age last = Age.On(inputs.Date.Date, inputs.Placed, inputs.AgeAtPlacement);
        return (inputs.WeighIns ?? [.. Enumerable.Range(2, 50).Select(week => Age.FromWeeks(week))]).Where(age => age > inputs.AgeAtPlacement && age < last);
    }

    private static TimelineEntry At(DateTime when, string what, string why, string record, Caution? caution = null) =>
        new(DateOnly.FromDateTime(when), what, why, record, caution, TimeOnly.FromDateTime(when));

    private static DateOnly On(TimelineInputs inputs, Age age) => age.ReachedOn(inputs.Placed, inputs.AgeAtPlacement);

    private static DateOnly Earlier(DateOnly date, Duration time) => date.AddDays(-(int)Math.Ceiling(time.Days));
}
