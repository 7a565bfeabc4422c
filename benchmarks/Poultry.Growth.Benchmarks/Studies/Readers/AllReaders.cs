using System.Text;
using Poultry.Growth.Carcass;
using Poultry.Growth.Files;

namespace Poultry.Growth.Benchmarks.Studies.Readers;

/// <summary>Every public reader of the package Poultry.Growth.Files, with files of invented data.</summary>
internal static class AllReaders
{
    private const string WeighInRows = "age_d,weight_g,mean_weight_g,total_weight_kg,birds,sd_g,sex,note\n7,171,,,,,,\n7,164,,,,,,\"a, b\"\n14,,428,,20,37,m,\n21,,,17.4,20,,,\n28,1480,,,,,f,\n";

    private const string OlderBatch = "# strain: Strain A\n# system: movable shelter\n# sex: mixed\nage_d,mean_weight_g,birds,sd_g\n14,312,15,31\n28,992,20,139\n42,1912,15,182\n";

    private const string FinishedBatch = """
        # sex: mixed
        # killed: 2027-06-08
        # age_at_placement_d: 1
        # placed_birds: 300
        # lost_birds: 41
        # age_at_killing: 58d
        # feed_eaten: 2172.7kg
        # feed_expected: 2018.8kg
        # feed_model: energy-heat-production
        # live_weight: 791.5kg
        # off_feed: 10h
        # road: 1.5h
        # carcass_weight: 560kg
        # neck: with
        # giblets: without
        age_d,sex,mean_weight_kg,birds,sd_kg
        7,,0.1475,20,
        14,,0.328,20,0.039
        42,,2.043,16,0.27
        58,,3.156,259,
        """;

    private const string Inspections = "batch,killed,birds_opened,birds_found,detection_percent,note\nsecond,2027-06-08,102,1,100,\nfirst,2025-06-02,120,0,,quiet\n";

    private const string Season = """
        // Invented.
        {
          "name": "Two batches",
          "limits": { "brooderPlaces": 320, "shelters": 9, "restDays": 7, "ground": "3ac", "labourADay": "2h" },
          "plant": { "dates": [ { "date": "2027-06-01", "mostBirds": 300 }, { "date": "2027-06-08", "mostBirds": 300 }, { "date": "2027-08-03", "mostBirds": 300 } ], "youngest": "49d", "oldest": "66d" },
          "batches": [
            { "batch": "batch.json", "name": "spring", "shelters": 5, "ground": "0.7ac", "promised": "yes" },
            { "batch": "batch.json", "name": "summer", "shelters": 5, "ground": "0.7ac", "outside": "20C", "placed": { "from": "2027-05-31", "to": "2027-06-14", "everyDays": 7 } },
          ],
        }
        """;

    private const string Limits = """
        jurisdiction,instrument,edition,scope,quantity,operator,value,unit,mark,kind,subject,system,house,when,requires,step
        our farm,Our own rule,2027,hot months,density,<=,5.5,lb/ft2,practice,scheme,stocking-density,shelter;free-range?,mobile,bird-weight>=5lb;bird-age>4wk?,shade,2
        our farm,Our own rule,2027,"all months, all birds",density,<=,33,kg/m2,practice,scheme,stocking-density,indoor,,flock-size>=500birds,,1
        """;

    private static readonly string[] Quantities =
        ["2.6kg", "920 g", "5.7lb", "5lb11oz", "42d", "8wk", "5%", "2027-04-12", "21C", "70F", "9.50/kg", "3.2/lb", "5.25", "90min", "10h", "55m2", "0.7ac", "20kg/m2", "3000kcal/kg", "1.2m/s", "30ft", "12 ppm", "60 g/d", "170kg/ha", "lb_oz"];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Reader> All { get; } =
    [
        Reader.OfText("WeighInFile", "weigh-ins.csv", WeighInRows, path => Of(WeighInFile.Read(path))),
        Reader.OfText("WeighInFile, dates", "weigh-ins.csv", "# placed: 2027-04-12\n# age_at_placement_d: 1\r\ndate;weight_lb_oz\r\n2027-05-01;1:11\r\n2027-05-20;3:09\r\n2027-06-01;4:15\r\n", path => Of(WeighInFile.Read(path))),
        Reader.OfText("StandardFile", "standard.csv", "# name: Invented table\n# year: 2027\n# source: Made up\nage_d,weight_g\n0,42\n7,150\n14,370\n21,710\n63,3570\n", path => Of(StandardFile.Read(path))),
        new("BatchHistoryFolder", [("spring.csv", Encoding.UTF8.GetBytes(OlderBatch)), ("autumn.csv", Encoding.UTF8.GetBytes(OlderBatch))], folder => Of(BatchHistoryFolder.Read(folder))),
        new("FarmHistoryFolder", [("first.csv", Encoding.UTF8.GetBytes(OlderBatch)), ("second.csv", Encoding.UTF8.GetBytes(FinishedBatch)), ("inspections/second.csv", Encoding.UTF8.GetBytes(Inspections))], folder => Of(FarmHistoryFolder.Read(folder))),
        Reader.OfText("InspectionFile", "inspections.csv", Inspections, path => Of(InspectionFile.Read(path))),
        Reader.OfText("DisturbanceFile", "disturbances.csv", "# hatched: 2027-04-11\ndate,what,share_low_percent,share_percent,share_high_percent,cycles_low,cycles,cycles_high,note\n2027-05-16,hail,,,,,,,ten minutes\n2027-05-23,weighed,2,5,8,3,5,10,\n", path => Of(DisturbanceFile.Read(path))),
        Reader.OfText("CutSetFile", "cuts.csv", "# name: own cuts\n# back: separate\npiece,per_bird,share_percent\nbreast,2,33.5\nthigh,2,18\ndrumstick,2,14\nwing,2,11\ntender,2,6\nback,1,17.5\n", path => Of(CutSetFile.Read(path))),
        Reader.OfText("CutOrderFile", "order.csv", "# rule: by-weight\ncut,from,to\nwhole,,2.4kg\nrudn-42d,2.4kg,5.5lb\nwhole,5.5lb,\n", path => Of(CutOrderFile.Read(path, CutSets.All))),
        Reader.OfText("PackOfferFile", "prices.csv", "piece,pieces_per_pack,from,to,price,pack_price,sells_low,sells_likely,sells_high,left_price,freezer_packs\nwhole,1,,1.7kg,9.50/kg,,20,30,45,5/kg,10\nbreast,2,,,,14.00,,any,,,\nthigh,4,,,4.20/lb,,10,20,30,,\n", path => Of(PackOfferFile.Read(path))),
        Reader.OfText("PlantSheetFile", "plant.csv", "# killed: 2027-06-08\n# neck: with\n# giblets: without\nline,what,pieces_per_pack,from,to,count,weight,money,note\ndelivered,,,,,259,1745lb,,\ncondemned,cellulitis,,,,2,,,\npassed,,,,,255,,,\ndead,,,,,34,,,\npacked,whole,1,,1.7kg,28,98lb,,\npacked,breast,2,,,102,206lb,,\nfeed-eaten,,,,,,4790lb,,\nopened,,,,,102,,,\nlesion,green,,,,1,,,\n", path => Of(PlantSheetFile.Read(path))),
        Reader.OfText("LimitFile", "limits.csv", Limits, path => Of(LimitFile.Read(path))),
        Reader.OfTemplates("BatchFile, metric", TemplateUnits.Metric, folder => Of(BatchFile.Read(Path.Combine(folder, "batch.json")))),
        Reader.OfTemplates("BatchFile, American units", TemplateUnits.UnitedStates, folder => Of(BatchFile.Read(Path.Combine(folder, "batch.json")))),
        Reader.OfTemplates("SeasonFile", TemplateUnits.Metric, folder => Of(SeasonFile.Read(Path.Combine(folder, "season.json"))), ("season.json", Season)),
        Reader.OfText("QuantityText", "quantities.txt", string.Join('\n', Quantities), path => OfQuantities(File.ReadAllText(path))),
    ];

    private static ReaderOutcome Of<T>(FileReading<T> reading)
        where T : class => ReaderOutcome.Of(reading.Value is not null, reading.Problems);

    private static ReaderOutcome Of(WeighInReading reading) => ReaderOutcome.Of(reading.Series is not null, reading.Problems);

    private static ReaderOutcome Of(StandardReading reading) => ReaderOutcome.Of(reading.Standard is not null, reading.Problems);

    private static ReaderOutcome Of(BatchHistoryReading reading) => ReaderOutcome.Of(reading.History is not null, reading.Problems);

    private static ReaderOutcome Of(InspectionReading reading) => ReaderOutcome.Of(reading.Inspections is not null, reading.Problems);

    private static ReaderOutcome Of(DisturbanceReading reading) => ReaderOutcome.Of(reading.Log is not null, reading.Problems);

    private static ReaderOutcome Of(LimitReading reading) => ReaderOutcome.Of(reading.Limits.Count > 0, reading.Problems);

    private static ReaderOutcome Of(BatchFileReading reading) => ReaderOutcome.Of(reading.Flock is not null, reading.Problems);

    /// <summary>Every line by every kind of quantity. A line that none can read is refused.</summary>
    private static ReaderOutcome OfQuantities(string text)
    {
        int refused = 0;
        string? fault = null;
        foreach (string line in text.Split('\n'))
        {
            string?[] problems =
            [
                QuantityText.TryMass(line, out _, out string? problem) ? null : problem,
                QuantityText.TryAge(line, out _, out problem) ? null : problem,
                QuantityText.TryPercent(line, out _, out problem) ? null : problem,
                QuantityText.TryDate(line, out _, out problem) ? null : problem,
                QuantityText.TryTemperature(line, out _, out problem) ? null : problem,
                QuantityText.TryUnitPrice(line, out _, out problem) ? null : problem,
                QuantityText.TryMoney(line, out _, out problem) ? null : problem,
                QuantityText.TryDuration(line, out _, out problem) ? null : problem,
                QuantityText.TryArea(line, out _, out problem) ? null : problem,
                QuantityText.TryFloorLoad(line, out _, out problem) ? null : problem,
                QuantityText.TryFeedEnergy(line, out _, out problem) ? null : problem,
                QuantityText.TryAirSpeed(line, out _, out problem) ? null : problem,
                QuantityText.TryLength(line, out _, out problem) ? null : problem,
                QuantityText.TryGasContent(line, out _, out problem) ? null : problem,
                QuantityText.TryDailyWeight(line, out _, out problem) ? null : problem,
                QuantityText.TryFieldLoad(line, out _, out problem) ? null : problem,
                QuantityText.TryWeightUnit(line, out _, out problem) ? null : problem,
            ];
            refused += problems.All(said => said is not null) ? 1 : 0;
            fault ??= problems.FirstOrDefault(said => said is not null && (said.Length == 0 || said.Any(char.IsControl)));
        }

        return new(refused == 0, refused, fault);
    }
}
