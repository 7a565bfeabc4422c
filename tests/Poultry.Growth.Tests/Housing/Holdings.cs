using Poultry.Growth.Curves;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>Invented places for birds: three shelters that are moved and two houses, each with its birds and its rules.</summary>
internal sealed record Holding(string Name, Area Floor, int Birds, Keeping Keeping)
{
    /// <summary>An invented fast-growing mixed flock outdoors: about 2.9 kg at 56 d.</summary>
    public static GompertzCurve Curve { get; } = GompertzCurve.Of(Mass.FromKilograms(4.9), DailyRate.FromPerDay(0.0395), Age.FromDays(38.5));

    public static IReadOnlyList<Holding> All { get; } =
    [
        new("hoop shelter, brook", Area.FromSquareFeet(120), 60, Advised("Producer-association leaflet (advice)")),
        new("hoop shelter, orchard", Area.FromSquareFeet(120), 70, Advised("Certified Naturally Grown (private)")),
        new("skid shelter, hill", Area.FromSquareMeters(18), 190, Advised("Better Chicken Commitment (pledge, not law)")),
        new("stone barn", Area.FromSquareMeters(60), 990, new() { Place = "Germany", System = RearingSystem.Indoor, House = HouseKind.Fixed, Meets = ["annex-ii"] }),
        new("mobile house, organic", Area.FromSquareMeters(45), 560, new() { Place = "Austria", System = RearingSystem.Organic, House = HouseKind.Mobile }),
    ];

    public DensityPath Path => DensityPath.Of(Floor, Curve, HeadCountPath.Expected(Birds, Age.FromDays(1), Survival.FastGrowingOutdoor), Keeping);

    private static Keeping Advised(string instrument) => new() { Place = "USA", System = RearingSystem.Shelter, Chosen = [instrument] };
}
