using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The section <c>plant</c> of a batch file: dressing, charges, days offered.</summary>
internal static class BatchPlantSection
{
    internal const int OldestDays = 119;

    /// <summary>What a ratio that the file states as a share is called: the farm's own word, that its past does not change.</summary>
    private const string StatedRatio = "own";

    private static string DressingNames => "a share of 40% to 95%, as in \"72%\", or one of " + string.Join(", ", Dressings.All.Select(ratio => ratio.Name));

    /// <summary>Dressing, what is condemned and loss in cutting.</summary>
    public static PlantConditions Conditions(JsonSection plant, BirdType type, LikelyRange<Probability>? condemned, BatchContext context)
    {
        DressingRatio dressing = context.Dressing = Dressing(plant, type);
        if (dressing.IncludesCondemned && condemned is not null)
        {
            plant.Refuse("says what is condemned, which the dressing ratio " + dressing.Name + " holds already", "another ratio, or nothing about it");
        }

        return new()
        {
            Dressing = Pooled(plant, dressing, context.Farm?.Dressing),
            Condemned = condemned is { } birds ? Condemnation.Of(default, birds.Likely) : Condemnation.UnitedStates,
            CuttingLoss = Share(plant, "cuttingLoss", 30) ?? default,
            Trim = Share(plant, "trim", 30) ?? default,
        };
    }

    /// <summary>A share, or its low, likely and high.</summary>
    public static LikelyRange<Probability>? ShareRange(JsonSection section, string name)
    {
        const string Expected = "a share up to 50%, as in \"1%\", or low, likely and high, as in [\"0.5%\", \"1%\", \"4%\"]";
        if (section.Optional(name) is not { } value)
        {
            return null;
        }

        IReadOnlyList<JsonValue> items = value.Kind == JsonKind.List ? value.Items : [value];
        double[] shares = [.. items.Select(item => section.Quantity<double>(item, QuantityText.TryPercent, share => share <= 0.5, Expected)).OfType<double>()];
        if (shares.Length < items.Count)
        {
            return null;
        }

        if (shares.Length is not (1 or 3) || !shares.Order().SequenceEqual(shares))
        {
            section.Refuse(value, shares.Length == 3 ? "is not in order" : "is neither one share nor three", Expected);
            return null;
        }

        return LikelyRange<Probability>.Of(Probability.FromFraction(shares[0]), Probability.FromFraction(shares[shares.Length / 2]), Probability.FromFraction(shares[^1]));
    }

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
            LightestBird = plant.Quantity<Mass>("lightestBird", QuantityText.TryMass, weight => weight.Kilograms > 0, "a live weight above 0"),
            HeaviestBird = plant.Quantity<Mass>("heaviestBird", QuantityText.TryMass, weight => weight.Kilograms > 0, "a live weight above 0"),
        };
        if (terms.HeaviestBird < terms.LightestBird)
        {
            plant.Refuse("takes no bird at all", "lightestBird up to heaviestBird");
        }

        Duration offFeed = plant.Quantity<Duration>("offFeed", QuantityText.TryDuration, time => time.Hours <= 48, "0h to 48h") ?? Duration.FromHours(10);
        Duration road = plant.Quantity<Duration>("road", QuantityText.TryDuration, time => time.Hours <= 24, "0h to 24h") ?? Duration.Zero;
        if (road.Hours > offFeed.Hours)
        {
            plant.Refuse("has the birds longer on the road than off feed", "road up to offFeed, which counts to killing and is 10h where nothing is said");
        }

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

    private static void Add(List<OfferedDate> dates, JsonSection section, PlantTerms terms, BatchFlock? flock, Duration offFeed, Duration road)
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

        // A plan looks a day beyond the last one offered, and projected growth ends.
        if (flock is { Placed: { } came } && Age.On(day, came, flock.HeadCount.AgeAtPlacement).Days > OldestDays)
        {
            section.Refuse("lies beyond an age of 119 d, where projected growth ends", "an earlier day");
            return;
        }

        if (until > day)
        {
            section.Refuse("may be changed after the day itself", "changeUntil on or before the date");
        }

        if (most < fewest)
        {
            section.Refuse("takes fewer birds than it opens for", "fewestBirds up to mostBirds");
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
            OffFeed = offFeed,
            Road = road,
            Terms = terms.With(fewest ?? 0, most),
        });
    }

    /// <summary>A published ratio with the farm's own past, as many batches as stand behind it.</summary>
    private static DressingRatio Pooled(JsonSection plant, DressingRatio ratio, PastDressing? own)
    {
        if (own is null || ratio.Name == StatedRatio)
        {
            return ratio;
        }

        if (!ratio.Basis.Covers(own.Basis))
        {
            plant.Refuse("names a dressing ratio of other carcasses than the farm's own past, " + own.Basis, "another ratio, or none: planning-fast fits any");
            return ratio;
        }

        try
        {
            return ratio.PooledWith(own);
        }
        catch (ArgumentException refused)
        {
            (string fault, string expected) = ProblemList.Said(refused);
            plant.Refuse(fault, expected);
            return ratio;
        }
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
            ? DressingRatio.Of(StatedRatio, LikelyRange<Probability>.Exactly(Probability.FromFraction(own)), CarcassBasis.NotStated, LiveState.FullFed)
            : Dressings.For(type);
    }

    internal static Money Amount(JsonSection section, string name) => section.Quantity<Money>(name, QuantityText.TryMoney) ?? Money.Zero;

    internal static Probability? Share(JsonSection section, string name, double mostPercent) => section.Quantity<double>(
        name, QuantityText.TryPercent, share => 100 * share <= mostPercent, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"0% to {mostPercent}%")) is { } share
        ? Probability.FromFraction(share)
        : null;
}
