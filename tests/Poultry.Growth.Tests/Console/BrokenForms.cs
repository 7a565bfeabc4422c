namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Broken batch files, each an edit of the templates, with every problem that must be told: files that are no JSON, no text, or name what nobody knows.</summary>
internal static class BrokenForms
{
    public static IReadOnlyList<BrokenBatch> All { get; } =
    [
        new("empty file", isStructural: false, [BrokenFile.Whole("batch.json", "")],
        [
            "batch.json:1:1: file is empty; expected one section in { }",
        ]),
        new("only a comment", isStructural: false, [BrokenFile.Whole("batch.json", "// nothing yet\n")],
        [
            "batch.json:2:1: file is empty; expected one section in { }",
        ]),
        new("not JSON but a table", isStructural: false, [BrokenFile.Whole("batch.json", "date,weight_g\n2027-04-19,180\n")],
        [
            "batch.json:1:1: file is no JSON here: \"d\" cannot follow what stands before it; expected names in quotes, a colon, a value, commas between; every bracket, quote and comment closed",
        ]),
        new("a list in place of a section", isStructural: true, [BrokenFile.Whole("batch.json", "[ 1 ]\n")],
        [
            "batch.json:1:1: file is a list in [ ]; expected one section in { }",
        ]),
        new("a season in place of a batch", isStructural: true, [BrokenFile.Whole("batch.json", "{\n  \"name\": \"2027\",\n  \"batches\": [ { \"batch\": \"spring.json\" } ],\n}\n")],
        [
            "batch.json:3:3: batches belongs to a season file; expected a batch file; a season file is for season",
        ]),
        new("bare text", isStructural: true, [BrokenFile.Whole("batch.json", "\"batch\"\n")],
        [
            "batch.json:1:1: file is text; expected one section in { }",
        ]),
        new("bracket not closed", isStructural: false, [BrokenFile.Edited("batch.json", "  // \"history\": \"history\",                           // from the second batch on: the folder that reconcile --history keeps\n}", "")],
        [
            "batch.json:39:1: file is no JSON here: it ends too early; expected every bracket, quote and comment closed",
        ]),
        new("quote not closed", isStructural: false, [BrokenFile.Edited("batch.json", "\"sex\": \"mixed\",", "\"sex\": \"mixed,")],
        [
            "batch.json:8:19: file is no JSON here: \"t\" cannot follow what stands before it; expected names in quotes, a colon, a value, commas between; every bracket, quote and comment closed",
        ]),
        new("comma forgotten", isStructural: false, [BrokenFile.Edited("batch.json", "\"birds\": 300, ", "\"birds\": 300  ")],
        [
            "batch.json:8:3: file is no JSON here: \"\"\" cannot follow what stands before it; expected names in quotes, a colon, a value, commas between; every bracket, quote and comment closed",
        ]),
        new("colon forgotten", isStructural: false, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\" 300")],
        [
            "batch.json:7:11: file is no JSON here: \"3\" cannot follow what stands before it; expected names in quotes, a colon, a value, commas between; every bracket, quote and comment closed",
        ]),
        new("comment not closed", isStructural: false, [BrokenFile.Edited("batch.json", "  \"feed\": {", "  /* \"feed\": {")],
        [
            "batch.json:12:3: file is no JSON here: this comment never ends; expected every bracket, quote and comment closed",
        ]),
        new("trailing garbage", isStructural: false, [BrokenFile.Edited("batch.json", "reconcile --history keeps\n}", "reconcile --history keeps\n}\nmore")],
        [
            "batch.json:40:1: file is no JSON here: \"m\" cannot follow what stands before it; expected names in quotes, a colon, a value, commas between; every bracket, quote and comment closed",
        ]),
        new("two sections one after the other", isStructural: false, [BrokenFile.Edited("batch.json", "reconcile --history keeps\n}", "reconcile --history keeps\n}\n{ \"birds\": 3 }")],
        [
            "batch.json:40:1: file is no JSON here: \"{\" cannot follow what stands before it; expected names in quotes, a colon, a value, commas between; every bracket, quote and comment closed",
        ]),
        new("single quotes", isStructural: false, [BrokenFile.Edited("batch.json", "\"name\": \"My batch (invented figures)\"", "'name': 'My batch'")],
        [
            "batch.json:5:3: file is no JSON here: \"'\" cannot follow what stands before it; expected names in quotes, a colon, a value, commas between; every bracket, quote and comment closed",
        ]),
        new("nested too deep", isStructural: false, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\": [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]")],
        [
            "batch.json:7:43: file is no JSON of ours here: it goes deeper than 32 brackets; expected sections and lists as in docs/file-formats.md",
        ]),
        new("UTF-16", isStructural: false, [BrokenFile.Unicode("batch.json")],
        [
            "batch.json:1:1: text is in UTF-16; expected UTF-8: save it as plain text in UTF-8",
        ]),
        new("not UTF-8", isStructural: false, [BrokenFile.Latin("batch.json")],
        [
            "batch.json:5:25: text is not UTF-8; expected UTF-8: save it as plain text in UTF-8",
        ]),
        new("a zero byte", isStructural: false, [BrokenFile.Edited("batch.json", "My batch", "My\0batch")],
        [
            "batch.json:5:14: text holds a zero byte; expected text, not a program's own format",
        ]),
        new("a program's own format", isStructural: false, [BrokenFile.Whole("batch.json", "PK\u0003\u0004\0\0binary")],
        [
            "batch.json:1:5: text holds a zero byte; expected text, not a program's own format",
        ]),
        new("a number as text", isStructural: true, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\": \"300\"")],
        [
            "batch.json:7:12: birds \"300\" is text; expected a whole number without quotes, 1 to 1000000",
        ]),
        new("a whole number with a part", isStructural: true, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\": 300.5")],
        [
            "batch.json:7:12: birds \"300.5\" is no whole number in range; expected a whole number without quotes, 1 to 1000000",
        ]),
        new("no birds", isStructural: true, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\": 0")],
        [
            "batch.json:7:12: birds \"0\" is no whole number in range; expected a whole number without quotes, 1 to 1000000",
        ]),
        new("a huge number", isStructural: false, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\": 1e400")],
        [
            "batch.json:7:12: birds \"1e400\" is no whole number in range; expected a whole number without quotes, 1 to 1000000",
        ]),
        new("negative birds", isStructural: true, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"birds\": -300")],
        [
            "batch.json:7:12: birds \"-300\" is no whole number in range; expected a whole number without quotes, 1 to 1000000",
        ]),
        new("a key missing", isStructural: true, [BrokenFile.Edited("batch.json", "\"ageAtPlacement\": \"1d\", ", "")],
        [
            "batch.json:4:1: ageAtPlacement is missing; expected the age of the chicks when placed, up to 14d: chicks by mail are 1d to 3d old",
        ]),
        new("every needed key missing", isStructural: true, [BrokenFile.Whole("batch.json", "{}\n")],
        [
            "batch.json:1:1: ageAtPlacement is missing; expected the age of the chicks when placed, up to 14d: chicks by mail are 1d to 3d old",
            "batch.json:1:1: birds is missing; expected a whole number without quotes, 1 to 1000000",
            "batch.json:1:1: temperatures is missing; expected { \"moveOut\": \"21d\", \"outside\": \"14C\" } for birds outdoors, or { \"house\": \"standard\" }",
        ]),
        new("a key misspelt", isStructural: true, [BrokenFile.Edited("batch.json", "\"birds\": 300", "\"brids\": 300")],
        [
            "batch.json:4:1: birds is missing; expected a whole number without quotes, 1 to 1000000",
            "batch.json:7:3: brids is unknown (did you mean birds?); expected name, strain, system, placed, ageAtPlacement, birds, chicksLostInTransit, sex, type, hatchWeight, until, lossByWeek, deaths, weights, temperatures, feed, history, plant, selling, costs, shelters",
        ]),
        new("a key in other case", isStructural: true, [BrokenFile.Edited("batch.json", "\"feed\": {", "\"Feed\": {")],
        [
            "batch.json:12:3: Feed is unknown (did you mean feed?); expected name, strain, system, placed, ageAtPlacement, birds, chicksLostInTransit, sex, type, hatchWeight, until, lossByWeek, deaths, weights, temperatures, feed, history, plant, selling, costs, shelters",
        ]),
        new("an unknown key far from any", isStructural: true, [BrokenFile.Edited("batch.json", "\"waste\": \"3%\",", "\"waste\": \"3%\", \"colour\": \"blue\",")],
        [
            "batch.json:17:20: feed.colour is unknown; expected phases, waste, ranging, pasture, model, record",
        ]),
        new("a key twice", isStructural: false, [BrokenFile.Edited("batch.json", "\"sex\": \"mixed\",", "\"sex\": \"mixed\", \"sex\": \"male\",")],
        [
            "batch.json:8:19: sex stands a second time; expected each name once",
        ]),
        new("a unit missing", isStructural: true, [BrokenFile.Edited("batch.json", "\"ageAtPlacement\": \"1d\"", "\"ageAtPlacement\": \"1\"")],
        [
            "batch.json:6:45: ageAtPlacement \"1\" has no unit; expected an age with d or wk, as in 42d",
        ]),
        new("a bare number for a quantity", isStructural: true, [BrokenFile.Edited("batch.json", "\"ageAtPlacement\": \"1d\"", "\"ageAtPlacement\": 1")],
        [
            "batch.json:6:45: ageAtPlacement \"1\" has no unit; expected an age with d or wk, as in 42d",
        ]),
        new("a wrong unit", isStructural: true, [BrokenFile.Edited("batch.json", "\"ageAtPlacement\": \"1d\"", "\"ageAtPlacement\": \"1kg\"")],
        [
            "batch.json:6:45: ageAtPlacement \"1kg\" has an unknown unit; expected an age with d or wk, as in 42d",
        ]),
        new("a decimal comma", isStructural: true, [BrokenFile.Edited("batch.json", "\"waste\": \"3%\"", "\"waste\": \"3,5%\"")],
        [
            "batch.json:17:14: feed.waste \"3,5%\" has a decimal comma; expected \"3.5%\"",
        ]),
        new("a negative share", isStructural: true, [BrokenFile.Edited("batch.json", "\"waste\": \"3%\"", "\"waste\": \"-3%\"")],
        [
            "batch.json:17:14: feed.waste \"-3%\" is below 0; expected a share with %, as in 5%",
        ]),
        new("out of range", isStructural: false, [BrokenFile.Edited("batch.json", "\"waste\": \"3%\"", "\"waste\": \"33%\"")],
        [
            "batch.json:17:14: feed.waste \"33%\" is out of range; expected 0% to 30%",
        ]),
        new("a negative price", isStructural: true, [BrokenFile.Edited("batch.json", "\"chick\": 1.95", "\"chick\": -1.95")],
        [
            "batch.json:34:14: costs.chick \"-1.95\" is below 0; expected an amount of money without a sign for the currency, as in 9.50",
        ]),
    ];
}
