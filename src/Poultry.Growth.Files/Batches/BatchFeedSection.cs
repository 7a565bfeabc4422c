using System.Globalization;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The sections <c>feed</c> and <c>temperatures</c> of a batch file.</summary>
internal static class BatchFeedSection
{
    private static readonly AgedColumn Delivered = new("delivered", Weights, IsOptional: true, 0, 1e7, "feed delivered that day, 0 or more, or nothing");
    private static readonly AgedColumn Left = new("left", Weights, IsOptional: true, 0, 1e7, "feed left in bins, bags and feeders, 0 or more, or nothing where it was not measured");

    private static IReadOnlyList<(string Unit, Func<double, double> Convert)> Weights =>
        [("kg", number => number), ("lb", number => number * QuantityText.KilogramsPerPound)];

    /// <summary>The feed; null, and problems, where it cannot be.</summary>
    public static BatchFeeding? Read(JsonSection file, BatchFlock? flock, BatchWeights weights, BatchContext context)
    {
        Temperatures? temperatures = BatchTemperatureSection.Read(file, context);
        FeedingPlan plan = FeedingPlan.UsualDiets;
        (Probability waste, Probability ranging, PastureIntake pasture, EnergyModel? model, FeedRecord? record) = (default, default, PastureIntake.None, null, null);
        if (file.Section("feed") is { } feed)
        {
            plan = Plan(feed) ?? plan;
            waste = Share(feed, "waste", 30) ?? default;
            ranging = Share(feed, "ranging", 15) ?? default;
            pasture = Pasture(feed) ?? pasture;
            if (temperatures is { MoveOut: null } && (pasture.EnergyShare.Fraction > 0 || ranging.Fraction > 0))
            {
                feed.Refuse("counts on pasture or ranging for birds that never go out", "temperatures with moveOut and outside");
            }

            if (feed.Optional("model") is not null)
            {
                model = feed.Choice("model", [.. EnergyModel.All.Select(known => (ModelName(known), known))]);
            }

            record = Record(feed, flock, context);
            feed.Close();
        }

        if (temperatures is null || flock is null)
        {
            return null;
        }

        return new()
        {
            Plan = plan,
            Record = record,
            Conditions = new()
            {
                Temperatures = temperatures,
                Sex = flock.Sex,
                Type = flock.Type,
                Model = model ?? EnergyModel.DefaultFor(flock.Type),
                Waste = waste,
                Ranging = ranging,
                Pasture = pasture,
                HatchWeight = weights.Table is null || weights.Table.Rows.Min(row => row.Age) > flock.HeadCount.AgeAtPlacement ? flock.HatchWeight : null,
            },
        };
    }

    /// <summary>The id of a model without the word that all begin with.</summary>
    private static string ModelName(EnergyModel model) => model.Model.Id["energy-".Length..];

    private static FeedingPlan? Plan(JsonSection feed)
    {
        int before = feed.Problems.Count;
        List<FeedPhase> phases = [];
        foreach (JsonValue item in feed.List("phases", expected: "a list of feeds, each with name, from and energy"))
        {
            if (JsonSection.Of(item, feed.Problems) is { } section && Phase(section, phases.Count > 0 ? phases[^1] : null) is { } phase)
            {
                phases.Add(phase);
            }
        }

        return phases.Count > 0 && feed.Problems.Count == before ? FeedingPlan.Of(phases) : null;
    }

    private static FeedPhase? Phase(JsonSection section, FeedPhase? before)
    {
        int problems = section.Problems.Count;
        string? name = section.Text("name", required: true, "the name of the feed");
        Age? from = section.RequiredQuantity<Age>("from", QuantityText.TryAge, "the age at which it is first fed, as in 21d");
        Age? to = section.Quantity<Age>("to", QuantityText.TryAge);
        SpecificEnergy? energy = section.RequiredQuantity<SpecificEnergy>(
            "energy", QuantityText.TryFeedEnergy, "metabolizable energy, 1000kcal/kg to 5000kcal/kg", value => value.KilojoulesPerKilogram is >= 4184 and <= 20920);
        Probability? protein = Share(section, "protein", 60);
        UnitPrice? price = section.Quantity<UnitPrice>("price", QuantityText.TryUnitPrice);
        Mass? bag = section.Quantity<Mass>("bag", QuantityText.TryMass, weight => weight.Kilograms is >= 0.1 and <= 5000, "100g to 5000kg");
        int delivery = section.Whole("deliveryDays", 0, 365) ?? 0;
        section.Close();
        if (from is { } first && before is not null && ((before.To is { } end && end != first) || first <= before.From))
        {
            section.Refuse("does not begin where " + before.Name + " ends", "feeds one after the other, without gap or overlap");
        }

        if (from is { } begin && to is { } last && last <= begin)
        {
            section.Refuse("ends before it begins", "to later than from");
        }

        return section.Problems.Count == problems
            ? new FeedPhase(name!, from!.Value, to, energy!.Value) { Protein = protein, Price = price, Bag = bag, DeliveryTime = Duration.FromDays(delivery) }
            : null;
    }

    private static PastureIntake? Pasture(JsonSection feed)
    {
        if (feed.Section("pasture") is not { } section)
        {
            return null;
        }

        MassFlow? dry = section.RequiredQuantity<MassFlow>("dryMatter", QuantityText.TryDailyWeight, "dry matter a bird a day, 0g/d to 50g/d", rate => rate.GramsPerDay <= 50);
        Probability? energy = Share(section, "energyShare", 20);
        section.Close();
        return dry is { } matter ? PastureIntake.Of(matter, energy ?? default) : null;
    }

    private static Probability? Share(JsonSection section, string name, double mostPercent) =>
        section.Quantity<double>(name, QuantityText.TryPercent, share => 100 * share <= mostPercent, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"0% to {mostPercent}%")) is { } share
            ? Probability.FromFraction(share)
            : null;

    private static FeedRecord? Record(JsonSection feed, BatchFlock? flock, BatchContext context)
    {
        const string Expected = "the name of a file of feed delivered and left beside this one";
        if (feed.Text("record", expected: Expected) is not { } name || flock is null)
        {
            return null;
        }

        IReadOnlyList<(Age Age, double?[] Values)> rows = context.Table(name, 0, Delivered, Left);
        int last = rows.Count - 1;
        while (last >= 0 && rows[last].Values[1] is null)
        {
            last--;
        }

        if (last < 0)
        {
            return null;
        }

        double delivered = rows.Take(last + 1).Sum(row => row.Values[0] ?? 0);
        double left = rows[last].Values[1]!.Value;
        if (delivered <= left)
        {
            feed.Refuse("names a record by which nothing was eaten: less was delivered than is left", "every delivery since the chicks came, those before placement as well");
            return null;
        }

        if ((rows[last].Age - flock.HeadCount.AgeAtPlacement).Days < 1 || rows[last].Age.Days > (flock.Until?.Days ?? BatchPlantSection.OldestDays))
        {
            feed.Refuse("names a record of " + rows[last].Age + ", which lies outside the batch", string.Create(CultureInfo.InvariantCulture, $"a day after placement to the age until, or to {BatchPlantSection.OldestDays} d where the file states none"));
            return null;
        }

        return new(rows[last].Age, Mass.FromKilograms(delivered), Mass.FromKilograms(left));
    }
}
