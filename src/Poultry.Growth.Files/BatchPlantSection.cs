using Poultry.Growth.Carcass;
using Poultry.Growth.Files.Json;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The section <c>plant</c> of a batch file: dressing, charges, days offered.</summary>
internal static class BatchPlantSection
{
    private static string DressingNames => "a share as in \"72%\", or one of " + string.Join(", ", Dressings.All.Select(ratio => ratio.Name));

    /// <summary>Dressing and loss in cutting.</summary>
    public static PlantConditions Conditions(JsonSection plant, BirdType type) => new()
    {
        Dressing = Dressing(plant, type),
        CuttingLoss = Share(plant, "cuttingLoss", 30) ?? default,
        Trim = Share(plant, "trim", 30) ?? default,
    };

    public static PlantCharges Charges(JsonSection plant) => PlantCharges.Of(Amount(plant, "cuttingPerBird"), Amount(plant, "perPack"));

    /// <summary>The days offered, in order.</summary>
    public static IReadOnlyList<OfferedDate> Dates(JsonSection plant, BatchFlock? flock)
    {
        PlantTerms terms = new()
        {
            PerBird = Amount(plant, "perBird"),
            LeastCharge = Amount(plant, "leastCharge"),
            Deposit = Amount(plant, "deposit"),
            PerMissingBird = Amount(plant, "perMissingBird"),
            PerCondemnedBird = Amount(plant, "perCondemnedBird"),
            PerFullCrop = Amount(plant, "perFullCrop"),
        };
        Duration? offFeed = plant.Quantity<Duration>("offFeed", QuantityText.TryDuration, time => time.Hours is >= 0 and <= 48, "0h to 48h");
        Duration? road = plant.Quantity<Duration>("road", QuantityText.TryDuration, time => time.Hours is >= 0 and <= 24, "0h to 24h");
        List<OfferedDate> dates = [];
        foreach (JsonValue item in plant.List("dates", required: true, "a list of days offered, each with a date, as in [{ \"date\": \"2027-06-08\" }]"))
        {
            if (JsonSection.Of(item, plant.Problems) is { } section)
            {
                Add(dates, section, terms, flock, offFeed, road);
            }
        }

        return [.. dates.OrderBy(date => date.Date)];
    }

    private static void Add(List<OfferedDate> dates, JsonSection section, PlantTerms terms, BatchFlock? flock, Duration? offFeed, Duration? road)
    {
        DateOnly? date = section.RequiredQuantity<DateOnly>("date", QuantityText.TryDate, "the day of killing, as in 2027-06-08");
        bool booked = section.Choice("booked", ("no", false), ("yes", true));
        int? birds = section.Whole("bookedBirds", 1, 1_000_000), fewest = section.Whole("fewestBirds", 0, 1_000_000), most = section.Whole("mostBirds", 1, 1_000_000);
        DateOnly? until = section.Quantity<DateOnly>("changeUntil", QuantityText.TryDate);
        Money cost = Amount(section, "changeCost");
        int collect = section.Whole("collectAfterDays", 0, 30) ?? 1;
        section.Close();
        if (date is not { } day)
        {
            return;
        }

        if (flock is { Placed: { } placed } && day.DayNumber - placed.DayNumber < 15)
        {
            section.Refuse("lies less than 15 days after the chicks come", "a later day");
            return;
        }

        if (dates.Any(other => other.Date == day))
        {
            section.Refuse("names a day a second time", "each day once");
            return;
        }

        dates.Add(new()
        {
            Date = day,
            IsBooked = booked,
            BookedBirds = birds,
            ChangeUntil = until,
            ChangeCost = cost,
            CollectAfterDays = collect,
            OffFeed = offFeed ?? Duration.FromHours(10),
            Road = road ?? Duration.Zero,
            Terms = terms.With(fewest ?? 0, most),
        });
    }

    private static DressingRatio Dressing(JsonSection plant, BirdType type)
    {
        JsonValue? value = plant.Optional("dressing");
        if (value is null)
        {
            return Dressings.For(type);
        }

        if (value is { Kind: JsonKind.Text } && Dressings.Named(value.Text) is { } known)
        {
            return known;
        }

        double? share = plant.Quantity<double>(value, QuantityText.TryPercent, fraction => fraction is >= 0.4 and <= 0.95, DressingNames);
        return share is { } own
            ? DressingRatio.Of("own", LikelyRange<Probability>.Exactly(Probability.FromFraction(own)), CarcassBasis.NotStated, LiveState.FullFed)
            : Dressings.For(type);
    }

    internal static Money Amount(JsonSection section, string name) => section.Quantity<Money>(name, QuantityText.TryMoney) ?? Money.Zero;

    internal static Probability? Share(JsonSection section, string name, double mostPercent) => section.Quantity<double>(
        name, QuantityText.TryPercent, share => 100 * share <= mostPercent, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"0% to {mostPercent}%")) is { } share
        ? Probability.FromFraction(share)
        : null;
}
