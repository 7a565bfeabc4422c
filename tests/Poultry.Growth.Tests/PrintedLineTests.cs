using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Curves;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests;

/// <summary>What objects of all rooms print, worked out by hand from what they were made of; the same on every machine.</summary>
public class PrintedLineTests
{
    private static readonly HeadCountPath Counted = HeadCountPath.Recorded(
        500, Age.FromDays(1), [Deaths.Of(Age.FromDays(3), 4), Deaths.Of(Age.FromDays(9.5), 3, culled: 1)], Survival.WithoutLoss);

    private static readonly BirdLimit Plant = BirdLimit.Of("plant", 300, Age.FromDays(56));

    public static TheoryData<object, string> Lines { get; } = new()
    {
        // 5 / 0.45359237 = 11.0231 lb; 1.5 kg = 3.3069 lb; 30 g = 1.0582 oz; 40 m2 = 430.556 ft2.
        { GompertzCurve.Of(Mass.FromKilograms(5), DailyRate.FromPerDay(0.04), Age.FromDays(40)), "Gompertz growth curve, mature weight 5 kg (11.02 lb)" },
        { Condemnation.UnitedStates, "0.24 % of live weight, 0.97 % of carcasses" },
        { CutOrder.AllWhole, "as they come: 100 % whole" },
        { CutOrder.ByWeight(CutOrderLine.Of(null, null, Mass.FromKilograms(1.5)), CutOrderLine.Of(null, Mass.FromKilograms(1.5), null)), "by live weight: whole below 1.5 kg (3.31 lb), whole from 1.5 kg (3.31 lb)" },
        { PlantCharges.Of(Money.Of(1.5), Money.Of(0.3)), "1.50 a bird cut, 0.30 a pack" },
        { Deaths.Of(Age.FromDays(9.5), 1), "9.5 d: 1 bird" },
        { Deaths.Of(Age.FromDays(9.5), 3, culled: 1), "9.5 d: 3 birds, 1 of them culled" },
        { Counted, "500 placed at 1 d, 493 alive at 9.5 d; then Survival by the farm's own weekly losses: 100 % alive at 8 weeks" },
        // H = -ln(0.985 x 0.988^6 x 0.98) = 0.10775; z log-normal of spread 0.45 has mean 1.1066 and variance 0.275: exp(-0.11924) (1 + 0.10775^2 0.275/2) = 0.889.
        { Survival.FastGrowingOutdoor, "Survival of fast-growing birds outdoors: 88.9 % alive at 8 weeks" },
        { FeedWithdrawal.Usual, "0.3 (0.2 to 0.4) % an hour off feed, 0.11 (0.05 to 0.17) % more on the road" },
        { new FinishedBatch(500, 480, Age.FromDays(42), Mass.FromKilograms(1920), Mass.FromKilograms(1200)), "480 of 500 birds sold at 42 d: 1200 kg (2646 lb) live, 1920 kg (4233 lb) of feed" },

        // 480/500; 1200/480; 2500 g over 42 d; 1920/1200.
        {
            BatchFigures.Of(new FinishedBatch(500, 480, Age.FromDays(42), Mass.FromKilograms(1920), Mass.FromKilograms(1200))),
            "96 % sold at 42 d, 2.5 kg (5.51 lb) each, 59.5 g/d, 1.600 (feed over live weight sold)"
        },
        { new Keeping { Place = "Germany", System = RearingSystem.FreeRange, House = HouseKind.Mobile }, "Germany, free range, mobile house" },
        { new Keeping(), "place unknown, system unknown" },
        { Measured.BirdWeight(Mass.FromKilograms(1.5)), "bird weight 1.5 kg (3.31 lb)" },
        { BroodingGuide.ColoradoState2018.Stages[0], "0 d to 7 d: 33.9 to 35 °C (93 to 95 °F)" },
        { BroodingGuide.PastureLeaflet.Stages[0], "14 d to 21 d: 0.093 m2 (1 ft2) a bird or more" },
        { SpreadableNitrogen.All[2], "standard: 30 g (1.06 oz) of nitrogen a bird" },

        // 1.5 sides of 2 % of 2.5 kg and as much fillet.
        { MeatAtRisk.OfLiveWeight(Mass.FromKilograms(2.5)), "150 g (5.29 oz) of an affected bird" },
        { SaleSplit.Of(120, 300), "120 birds deboned, 300 on the bone" },
        { LesionSides.Usual, "k 1.33, between 1 (both sides together) and 2 (each side by itself)" },
        { LargeLoss.Never, "never" },
        { LargeLoss.OneBatchInThirty, "3.3 % of batches lose 25 % (10 % to 60 %) of the birds" },
        { RoadLoss.Usual, "0.33 % (0.23 to 0.42 %) dead on arrival" },
        { ShelterSpace.Of(Area.FromSquareMeters(40), StockingDensity.FromKilogramsPerSquareMeter(20), Duration.FromDays(7)), "40 m2 (431 ft2) for at most 20 kg/m2 (4.1 lb/ft2), 7 d of rest" },
        { WeightDistribution.Of(Mass.FromKilograms(2.5), 0.12), "mean 2.5 kg (5.51 lb), CV 12 %" },
        { MoveSchedule.ByAge((Age.FromDays(35), 2), (Age.FromDays(21), 0.25)), "0.25 from 21 d, 2 from 35 d: moves a day" },
        { Plant, "plant: at most 300 birds at 56 d" },
        { new PlantTerms { PerBird = Money.Of(4.5), LeastCharge = Money.Of(200), FewestBirds = 50, MostBirds = 1200 }, "4.50 a bird, at least 200.00, 50 birds or more, at most 1200" },
        { new SeasonLimits { BrooderPlaces = 1300, Ground = Area.FromSquareMeters(40) }, "brooder 1300 birds, shelters any, ground 40 m2 (431 ft2), work any" },
        { new SeasonNeeds { BrooderPlaces = 300, Shelters = 1, Head = 285, LabourADay = Duration.FromHours(1.5) }, "300 brooder places, 1 shelter, 285 head, 0 m2 (0 ft2), 1.5 h a day" },
    };

    [Theory]
    [MemberData(nameof(Lines), DisableDiscoveryEnumeration = true)]
    public void An_object_prints_its_line_in_every_culture(object printed, string line)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            printed.ToString().Should().Be(line);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
