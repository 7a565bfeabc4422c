using Poultry.Growth.Carcass;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The sections of a batch file about plant, packs, costs and shelters: what a plan needs beside birds, weights and feed.</summary>
internal static class BatchHarvestSection
{
    /// <summary>All of it; null where the file has no plant, or a problem.</summary>
    public static BatchHarvest? Read(JsonSection file, BatchFlock? flock, BatchContext context)
    {
        JsonSection? plant = file.Section("plant");
        (CutOrder? order, IReadOnlyList<PackOffer> offers) = Selling(file.Section("selling"), context, out Probability deboned, out LikelyRange<double> prices, out (Mass, Mass)? wanted);
        BatchCosts costs = Costs(file.Section("costs"));
        ShelterSpace? shelters = Shelters(file.Section("shelters"));
        if (plant is null)
        {
            return null;
        }

        LikelyRange<Probability>? condemned = BatchPlantSection.ShareRange(plant, "condemned"), dead = BatchPlantSection.ShareRange(plant, "deadOnArrival");
        PlantConditions conditions = BatchPlantSection.Conditions(plant, flock?.Type ?? default, condemned, context);
        double? light = plant.Quantity<double>("cutsLow", QuantityText.TryPercent, share => share is >= 0.5 and <= 1, "50% to 100%");
        double? heavy = plant.Quantity<double>("cutsHigh", QuantityText.TryPercent, share => share is >= 1 and <= 1.5, "100% to 150%");
        PlantCharges charges = BatchPlantSection.Charges(plant);
        IReadOnlyList<OfferedDate> dates = BatchPlantSection.Dates(plant, flock);
        plant.Close();
        return order is null || offers.Count == 0
            ? Missing(file)
            : new()
            {
                Dates = dates,
                Plant = conditions,
                StatedDressing = context.Dressing!,
                CondemnedBirds = condemned,
                DeadOnArrival = dead is { } share ? RoadLoss.Of(share) : RoadLoss.Usual,
                Cutting = charges,
                CutWeights = LikelyRange<double>.Of(light ?? 1, 1, heavy ?? 1),
                Order = order,
                Offers = offers,
                Costs = costs,
                Shelters = shelters,
                WantedWeights = wanted,
                Deboned = deboned,
                Prices = prices,
            };
    }

    private static BatchHarvest? Missing(JsonSection file)
    {
        if (file.Section("selling") is null)
        {
            file.Refuse("has a plant and says nothing about what sells", "a section selling with packs, as in { \"packs\": \"prices.csv\" }");
        }

        return null;
    }

    private static (CutOrder? Order, IReadOnlyList<PackOffer> Offers) Selling(
        JsonSection? section, BatchContext context, out Probability deboned, out LikelyRange<double> prices, out (Mass Low, Mass High)? wanted)
    {
        (deboned, prices, wanted) = (default, LikelyRange<double>.Exactly(1), null);
        if (section is null)
        {
            return (null, []);
        }

        string? packs = section.Text("packs", required: true, "the name of a file of packs and prices beside this one");
        string? order = section.Text("order", expected: "the name of a file that says which birds are cut, beside this one; every bird stays whole where nothing is said");
        deboned = BatchPlantSection.Share(section, "deboned", 100) ?? default;
        double? low = section.Quantity<double>("pricesLow", QuantityText.TryPercent, share => share is > 0 and <= 1, "above 0%, at most 100%");
        double? high = section.Quantity<double>("pricesHigh", QuantityText.TryPercent, share => share is >= 1 and <= 5, "100% to 500%");
        prices = LikelyRange<double>.Of(low ?? 1, 1, high ?? 1);
        Mass? from = section.Quantity<Mass>("wantedFrom", QuantityText.TryMass), to = section.Quantity<Mass>("wantedTo", QuantityText.TryMass);
        section.Close();
        if (from is { } least && to is { } most)
        {
            wanted = (least, most);
            if (least >= most)
            {
                section.Refuse("wants birds from a weight to a lighter one", "wantedFrom below wantedTo");
            }
        }
        else if ((section.Optional("wantedFrom") is null) != (section.Optional("wantedTo") is null))
        {
            section.Refuse("says one end of the weights that customers want", "both wantedFrom and wantedTo, or neither");
        }

        return (order is null ? CutOrder.AllWhole : Read(context, order, path => CutOrderFile.Read(path, CutSets.All)),
            packs is null ? [] : Read(context, packs, PackOfferFile.Read) ?? []);
    }

    private static T? Read<T>(BatchContext context, string name, Func<string, FileReading<T>> read)
        where T : class
    {
        FileReading<T> reading = read(context.Beside(name));
        context.Add(reading.Problems);
        return reading.Value;
    }

    private static BatchCosts Costs(JsonSection? section)
    {
        if (section is null)
        {
            return new();
        }

        BatchCosts costs = new()
        {
            Chick = BatchPlantSection.Amount(section, "chick"),
            Bedding = BatchPlantSection.Amount(section, "bedding"),
            Fixed = BatchPlantSection.Amount(section, "fixed"),
            Trip = BatchPlantSection.Amount(section, "trip"),
            LabourHour = BatchPlantSection.Amount(section, "labourHour"),
            LabourADay = section.Quantity<Duration>("labourADay", QuantityText.TryDuration, time => time.Hours <= 24, "up to 24h") ?? Duration.Zero,
        };
        section.Close();
        return costs;
    }

    private static ShelterSpace? Shelters(JsonSection? section)
    {
        if (section is null)
        {
            return null;
        }

        Area? floor = section.RequiredQuantity<Area>("floor", QuantityText.TryArea, "the floor of all shelters together, as in 45m2 or 480ft2", area => area.SquareMeters > 0);
        StockingDensity? limit = section.RequiredQuantity<StockingDensity>("limit", QuantityText.TryFloorLoad, "live weight that the floor may carry, as in 20kg/m2 or 4lb/ft2", load => load.KilogramsPerSquareMeter > 0);
        int rest = section.Whole("restDays", 0, 365) ?? 0;
        section.Close();
        return floor is { } area && limit is { } load ? ShelterSpace.Of(area, load, Duration.FromDays(rest)) : null;
    }
}
