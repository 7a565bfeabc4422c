namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Broken batch files, each an edit of the templates, with every problem that must be told: figures, days and tables that cannot be.</summary>
internal static class BrokenFigures
{
    public static IReadOnlyList<BrokenBatch> All { get; } =
    [
        new("a currency sign", isStructural: true, [BrokenFile.Edited("batch.json", "\"chick\": 1.95", "\"chick\": \"$1.95\"")],
        [
            "batch.json:34:14: costs.chick \"$1.95\" is not a number; expected an amount of money without a sign for the currency, as in 9.50",
        ]),
        new("an infinite price", isStructural: false, [BrokenFile.Edited("batch.json", "\"chick\": 1.95", "\"chick\": 1e999")],
        [
            "batch.json:34:14: costs.chick \"1e999\" has an exponent; expected an amount of money without a sign for the currency, as in 9.50",
        ]),
        new("a date the other way round", isStructural: true, [BrokenFile.Edited("batch.json", "\"placed\": \"2027-04-12\"", "\"placed\": \"12.04.2027\"")],
        [
            "batch.json:6:13: placed \"12.04.2027\" is not a date; expected year, month and day, as in 2027-04-12",
        ]),
        new("dates and no day of placement", isStructural: true, [BrokenFile.Edited("batch.json", "\"placed\": \"2027-04-12\"", "\"placed\": null")],
        [
            "deaths.csv:2:1: header \"date\" needs the day the chicks were placed; expected the field placed in the batch file, or ages in place of dates",
            "weigh-ins.csv:2:1: header \"date\" needs the day the chicks were placed; expected a line \"# placed: 2027-04-12\" in the file, or the option placed",
            "feed.csv:2:1: header \"date\" needs the day the chicks were placed; expected the field placed in the batch file, or ages in place of dates",
        ]),
        new("a day that is no day", isStructural: false, [BrokenFile.Edited("batch.json", "\"placed\": \"2027-04-12\"", "\"placed\": \"2027-02-30\"")],
        [
            "batch.json:6:13: placed \"2027-02-30\" is not a date; expected year, month and day, as in 2027-04-12",
        ]),
        new("a date before placing", isStructural: false, [BrokenFile.Edited("batch.json", "\"date\": \"2027-06-01\"", "\"date\": \"2026-06-01\"")],
        [
            "batch.json:24:7: plant.dates[0] lies less than 15 days after the chicks come; expected a later day",
        ]),
        new("a date offered twice", isStructural: false, [BrokenFile.Edited("batch.json", "\"date\": \"2027-06-15\"", "\"date\": \"2027-06-08\"")],
        [
            "batch.json:26:7: plant.dates[2] names a day a second time; expected each day once",
        ]),
        new("no date offered", isStructural: true, [BrokenFile.Edited("batch.json", "\"dates\": [ // EDIT 6", "\"dates\": [], \"days\": [ // EDIT 6")],
        [
            "batch.json:23:14: plant.dates is empty; expected a list of days offered, each with a date, as in [{ \"date\": \"2027-06-08\" }]",
            "batch.json:23:18: plant.days is unknown; expected condemned, deadOnArrival, dressing, cuttingLoss, trim, cutsLow, cutsHigh, cuttingPerBird, perPack, perBird, leastCharge, deposit, perMissingBird, perCondemnedBird, perFullCrop, lightestBird, heaviestBird, offFeed, road, dates",
        ]),
        new("a date as a word", isStructural: true, [BrokenFile.Edited("batch.json", "{ \"date\": \"2027-06-01\", ", "{ \"date\": \"soon\", ")],
        [
            "batch.json:24:17: plant.dates[0].date \"soon\" is not a date; expected year, month and day, as in 2027-04-12",
        ]),
        new("a word of yes and no", isStructural: true, [BrokenFile.Edited("batch.json", "\"booked\": \"yes\"", "\"booked\": true")],
        [
            "batch.json:25:108: plant.dates[1].booked \"true\" is true or false; expected no, yes",
        ]),
        new("an unknown word", isStructural: true, [BrokenFile.Edited("batch.json", "\"type\": \"fast\"", "\"type\": \"fats\"")],
        [
            "batch.json:8:27: type \"fats\" is unknown (did you mean fast?); expected fast, slow",
        ]),
        new("feeds that overlap", isStructural: false, [BrokenFile.Edited("batch.json", "\"name\": \"grower\", \"from\": \"21d\"", "\"name\": \"grower\", \"from\": \"14d\"")],
        [
            "batch.json:15:7: feed.phases[1] does not begin where starter ends; expected feeds one after the other, without gap or overlap",
        ]),
        new("feeds that end before the last day offered", isStructural: false, [BrokenFile.Edited("batch.json", "\"name\": \"grower\", \"from\": \"21d\"", "\"name\": \"grower\", \"from\": \"21d\", \"to\": \"50d\"")],
        [
            "batch.json: says too little for a plan; expected feed phases from 1 d to 66 d, a day beyond the last one offered: they go from 0 d to 50 d",
        ]),
        new("a plant that takes no bird at all", isStructural: false, [BrokenFile.Edited("batch.json", "\"perBird\": 5.25,", "\"perBird\": 5.25, \"lightestBird\": \"3kg\", \"heaviestBird\": \"2kg\",")],
        [
            "batch.json:20:12: plant takes no bird at all; expected lightestBird up to heaviestBird",
        ]),
        new("feeds with a gap", isStructural: false, [BrokenFile.Edited("batch.json", "\"name\": \"grower\", \"from\": \"21d\"", "\"name\": \"grower\", \"from\": \"28d\"")],
        [
            "batch.json:15:7: feed.phases[1] does not begin where starter ends; expected feeds one after the other, without gap or overlap",
        ]),
        new("a feed that ends before it begins", isStructural: false, [BrokenFile.Edited("batch.json", "\"from\": \"0d\", \"to\": \"21d\"", "\"from\": \"21d\", \"to\": \"14d\"")],
        [
            "batch.json:14:7: feed.phases[0] ends before it begins; expected to later than from",
        ]),
        new("a feed without energy", isStructural: true, [BrokenFile.Edited("batch.json", "\"energy\": \"3100kcal/kg\", ", "")],
        [
            "batch.json:15:7: feed.phases[1].energy is missing; expected metabolizable energy, 1000kcal/kg to 5000kcal/kg",
        ]),
        new("feed as water", isStructural: false, [BrokenFile.Edited("batch.json", "\"3000kcal/kg\"", "\"300kcal/kg\"")],
        [
            "batch.json:14:65: feed.phases[0].energy \"300kcal/kg\" is out of range; expected metabolizable energy, 1000kcal/kg to 5000kcal/kg",
        ]),
        new("a section as text", isStructural: true, [BrokenFile.Edited("batch.json", "\"shelters\": { \"floor\": \"55m2\", \"limit\": \"20kg/m2\", \"restDays\": 5 }", "\"shelters\": \"six\"")],
        [
            "batch.json:37:15: shelters \"six\" is text; expected a section in { }",
        ]),
        new("a list as a section", isStructural: true, [BrokenFile.Edited("batch.json", "\"phases\": [ //", "\"phases\": {}, \"more\": [ //")],
        [
            "batch.json:13:15: feed.phases is a section in { }; expected a list of feeds, each with name, from and energy",
            "batch.json:13:19: feed.more is unknown; expected phases, waste, ranging, pasture, model, record",
        ]),
        new("a shelter without floor", isStructural: true, [BrokenFile.Edited("batch.json", "{ \"floor\": \"55m2\", ", "{ ")],
        [
            "batch.json:37:15: shelters.floor is missing; expected the floor of all shelters together, as in 45m2 or 480ft2",
        ]),
        new("birds wanted from heavy to light", isStructural: false, [BrokenFile.Edited("batch.json", "\"wantedTo\": \"3.2kg\"", "\"wantedTo\": \"2.2kg\"")],
        [
            "batch.json:29:14: selling wants birds from a weight to a lighter one; expected wantedFrom below wantedTo",
        ]),
        new("outside without moving out", isStructural: false, [BrokenFile.Edited("batch.json", "\"moveOut\": \"21d\", ", "")],
        [
            "batch.json:11:19: temperatures says how warm it is outside and not when the birds go there; expected { \"moveOut\": \"21d\", \"outside\": \"14C\" } for birds outdoors, or { \"house\": \"standard\" }",
        ]),
        new("a file that is not there", isStructural: false, [BrokenFile.Edited("batch.json", "\"deaths\": \"deaths.csv\"", "\"deaths\": \"death.csv\"")],
        [
            "batch.json:9:13: deaths \"death.csv\" does not exist; expected a text file in UTF-8 of at most 50 MB",
        ]),
        new("a folder for a file", isStructural: false, [BrokenFile.Edited("batch.json", "\"deaths\": \"deaths.csv\"", "\"deaths\": \".\"")],
        [
            "batch.json:9:13: deaths \".\" is a folder; expected a text file in UTF-8 of at most 50 MB",
        ]),
        new("a plant and nothing to sell", isStructural: true, [BrokenFile.Edited("batch.json", "\"selling\": {", "\"selling\": null, \"sold\": {")],
        [
            "batch.json:4:1: file has a plant and says nothing about what sells; expected a section selling with packs, as in { \"packs\": \"prices.csv\" }",
            "batch.json:29:20: sold is unknown; expected name, strain, system, placed, ageAtPlacement, birds, chicksLostInTransit, sex, type, hatchWeight, until, lossByWeek, deaths, weights, temperatures, feed, history, plant, selling, costs, shelters",
        ]),
        new("a table with rows that cannot be", isStructural: false, [BrokenFile.Whole("deaths.csv", "date,dead_birds,culled_birds,note\n2027-04-13,two,,\n2027-04-12,1,,\n13.4.2027,1,,\n2027-04-20,1\n2027-04-21,-1,,\n")],
        [
            "deaths.csv:2:12: dead_birds \"two\" is not a number; expected birds dead or culled that day, 0 or more",
            "deaths.csv:3:1: date \"2027-04-12\" does not come after the row before it; expected rows in the order of age, each once",
            "deaths.csv:4:1: date \"13.4.2027\" is not a date; expected year, month and day, as in 2027-04-12",
            "deaths.csv:5:1: row has 2 cells; expected 4 cells, as in the header",
            "deaths.csv:6:12: dead_birds \"-1\" is out of range; expected birds dead or culled that day, 0 or more",
        ]),
        new("a table of another kind", isStructural: false, [BrokenFile.Whole("deaths.csv", "date,delivered_kg,left_kg,note\n")],
        [
            "deaths.csv:1:1: header lacks dead_birds; expected age_d, age_wk or date; dead_birds; culled_birds (may be left out); note",
            "deaths.csv:1:6: header \"delivered_kg\" is no known column; expected age_d, age_wk or date; dead_birds; culled_birds (may be left out); note",
            "deaths.csv:1:19: header \"left_kg\" is no known column; expected age_d, age_wk or date; dead_birds; culled_birds (may be left out); note",
        ]),
        new("more dead than placed", isStructural: false, [BrokenFile.Whole("deaths.csv", "date,dead_birds\n2027-04-13,301\n")],
        [
            "batch.json:9:13: deaths \"deaths.csv\" names deaths of more birds than were placed, or before placement; expected deaths from placement on",
        ]),
        new("an empty table", isStructural: false, [BrokenFile.Whole("feed.csv", "")],
        [
            "feed.csv:1:1: file is empty; expected a header with age_d, age_wk or date; delivered_kg or delivered_lb (may be left out); left_kg or left_lb (may be left out); note, and a row",
        ]),
        new("feed left that never came", isStructural: false, [BrokenFile.Whole("feed.csv", "date,delivered_kg,left_kg\n2027-04-30,100,200\n")],
        [
            "batch.json:12:11: feed names a record by which nothing was eaten: less was delivered than is left; expected every delivery since the chicks came, those before placement as well",
        ]),
        new("weigh-ins that cannot be", isStructural: false, [BrokenFile.Whole("weigh-ins.csv", "date,weight_g,mean_weight_g,birds,sd_g,note\n2027-04-10,150,,,,\n2027-04-19,18O,,,,\n2027-04-19,\"180,5\",,,,\n2027-04-19,,180,,,\n")],
        [
            "weigh-ins.csv:2:1: date \"2027-04-10\" lies before the chicks were placed; expected a date not before 2027-04-12",
            "weigh-ins.csv:3:12: weight_g \"18O\" is not a number; expected a weight above 0 in g",
            "weigh-ins.csv:4:12: weight_g \"180,5\" has a decimal comma; expected a weight above 0 in g with a decimal point",
            "weigh-ins.csv:5:17: birds \"\" is empty; expected a whole number of birds, 1 to 1000000",
        ]),
        new("temperatures without a row", isStructural: false, [BrokenFile.Whole("temperatures.csv", "age_wk,mean_c\n")],
        [
            "temperatures.csv:1:1: file has no rows below the header; expected a header with age_d, age_wk or date; mean_c or mean_f; note, and a row",
        ]),
        new("temperatures in the wrong unit", isStructural: false, [BrokenFile.Whole("temperatures.csv", "age_wk,mean_c\n3,55\n4,130\n")],
        [
            "temperatures.csv:2:3: mean_c \"55\" is out of range; expected the mean temperature of a day, -20 to 50 °C",
            "temperatures.csv:3:3: mean_c \"130\" is out of range; expected the mean temperature of a day, -20 to 50 °C",
        ]),
        new("prices without demand", isStructural: false, [BrokenFile.Whole("prices.csv", "piece,price\nwhole,9.00/kg\n")],
        [
            "prices.csv:1:1: sells_likely is missing from the header; expected piece, sells_likely; if wanted pieces_per_pack, from, to, price, pack_price, sells_low, sells_high, left_price, freezer_packs",
        ]),
        new("prices with a currency and two prices", isStructural: false, [BrokenFile.Whole("prices.csv", "piece,price,pack_price,sells_likely\nwhole,$9/kg,,30\nwing,9/kg,3,30\nneck,,,any\n")],
        [
            "prices.csv:2:7: price \"$9/kg\" does not start with a number; expected a price by weight with /kg or /lb, as in 9.50/kg",
            "prices.csv:3:11: price \"3\" is stated twice; expected either price, as in 9.50/kg, or pack_price, as in 12.00",
            "prices.csv:4:1: price \"neck\" is not stated; expected either price, as in 9.50/kg, or pack_price, as in 12.00",
        ]),
        new("an order above all birds", isStructural: false, [BrokenFile.Whole("order.csv", "# rule: heaviest-first\ncut,birds\nrudn-42d,60%\nwhole,60%\n")],
        [
            "order.csv: birds are 120 % together; expected 100 %",
        ]),
        new("a table not in UTF-8", isStructural: false, [BrokenFile.Latin("prices.csv")],
        [
            "prices.csv:1:14: text is not UTF-8; expected UTF-8: save it as \"CSV UTF-8\"",
        ]),
        new("faults in five files at once", isStructural: true, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\": 0"), BrokenFile.Edited("batch.json", "\"restDays\": 5", "\"rest\": 5"), BrokenFile.Whole("deaths.csv", "date,dead_birds\n2027-04-13,x\n"), BrokenFile.Whole("weigh-ins.csv", "date,weight_g\n2027-04-19,x\n"), BrokenFile.Whole("feed.csv", "date,delivered_kg,left_kg\n2027-04-12,x,\n"), BrokenFile.Whole("prices.csv", "piece,price,sells_likely\nwhole,x,any\n")],
        [
            "batch.json:7:12: birds \"0\" is no whole number in range; expected a whole number without quotes, 1 to 1000000",
            "batch.json:37:54: shelters.rest is unknown (did you mean restDays?); expected floor, limit, restDays",
            "deaths.csv:2:12: dead_birds \"x\" is not a number; expected birds dead or culled that day, 0 or more",
            "weigh-ins.csv:2:12: weight_g \"x\" is not a number; expected a weight above 0 in g",
            "feed.csv:2:12: delivered_kg \"x\" is not a number; expected feed delivered that day, 0 or more, or nothing",
            "prices.csv:2:7: price \"x\" does not start with a number; expected a price by weight with /kg or /lb, as in 9.50/kg",
        ]),
    ];
}
