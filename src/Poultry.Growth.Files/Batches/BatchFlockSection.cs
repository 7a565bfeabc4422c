using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The fields of a batch file about its birds.</summary>
internal static class BatchFlockSection
{
    private const int MostBirds = 1_000_000;
    private static readonly Mass UsualHatchWeight = Mass.FromGrams(42);

    /// <summary>The birds, and a problem for whatever is not known of them.</summary>
    public static BatchFlock Read(JsonSection file)
    {
        string? name = file.Text("name");
        string? strain = file.Text("strain", expected: "the strain of the birds, as in the farm's history"), system = file.Text("system", expected: "how the birds are kept, as in movable shelter");
        DateOnly? placed = file.Quantity<DateOnly>("placed", QuantityText.TryDate);
        Age? ageAtPlacement = file.RequiredQuantity<Age>("ageAtPlacement", QuantityText.TryAge, "the age of the chicks when placed, up to 14d: chicks by mail are 1d to 3d old", age => age.Days <= 14);
        int? birds = file.Whole("birds", 1, MostBirds, required: true);
        double lost = file.Quantity<double>("chicksLostInTransit", QuantityText.TryPercent, share => share <= 0.5, "the share of chicks ordered that come dead, 0% to 50%") ?? 0;
        Sex sex = file.Choice("sex", ("mixed", Sex.Mixed), ("male", Sex.Male), ("female", Sex.Female));
        BirdType type = file.Choice("type", ("fast", BirdType.Fast), ("slow", BirdType.Slow));
        Mass hatch = file.Quantity<Mass>("hatchWeight", QuantityText.TryMass, weight => weight.Grams is >= 20 and <= 80, "20g to 80g") ?? UsualHatchWeight;
        Age? until = file.Quantity<Age>("until", QuantityText.TryAge, age => age.Days is >= 15 and <= 120, "15d to 120d");
        Survival survival = Losses(file);

        // Without a number or an age the file is refused; stand-ins that contradict nothing let the rest of it be checked in the same pass.
        HeadCountPath placedBirds = HeadCountPath.Expected(birds ?? MostBirds, ageAtPlacement ?? default, survival);
        return new() { Name = name, Strain = strain, System = system, Placed = placed, HeadCount = placedBirds, Sex = sex, Type = type, HatchWeight = hatch, Until = until, ChicksLostInTransit = Probability.FromFraction(lost) };
    }

    /// <summary>The farm's own losses by week, or what to count on outdoors.</summary>
    private static Survival Losses(JsonSection file)
    {
        const string Expected = "losses of each week of age from the first, 0% to 50%, as in [\"1.5%\", \"1%\"]; the last holds for later weeks";
        Probability[] weeks = [.. file.List("lossByWeek", expected: Expected)
            .Select(item => file.Quantity<double>(item, QuantityText.TryPercent, share => share <= 0.5, Expected))
            .OfType<double>().Select(Probability.FromFraction)];
        return weeks.Length == 0 ? Survival.FastGrowingOutdoor : Survival.ByWeek(weeks, Survival.FastGrowingOutdoor.LogSpread);
    }
}
