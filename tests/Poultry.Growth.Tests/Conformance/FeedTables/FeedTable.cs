using System.Collections.Concurrent;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance.FeedTables;

/// <summary>A printed table of weight and feed, and what a model says from its weights.</summary>
/// <remarks>
/// Weights between the rows by a monotone cubic of ln W; hatch weight 40 g where none is printed; the standard house; the diet printed (NRC 1984: 3200 kcal/kg) or the usual
/// ones (3000, 3100, 3200). Poultry CRC, male, week 5 is printed as 2250 g, which gives gains of 840 and then 450 g: 2050 g is taken. NRC 1984, female, week 4 is
/// printed as 355 g of feed; the cumulative column requires 500.
/// </remarks>
internal sealed class FeedTable
{
    private readonly double stepDays;
    private readonly TabulatedCurve curve;
    private readonly FeedingPlan plan;
    private readonly Sex sex;
    private readonly ConcurrentDictionary<FeedTableModel, double[]> predicted = new();

    private FeedTable(string name, Sex sex, double stepDays, double[] grams, double[] printed, FeedingPlan plan)
    {
        (Name, this.sex, this.stepDays, Grams, Printed, this.plan) = (name, sex, stepDays, grams, [0, .. printed], plan);
        curve = Curve(grams, stepDays);
    }

    /// <summary>The six tables of one sex to nine weeks (the objectives to ten).</summary>
    public static IReadOnlyList<FeedTable> All { get; } =
    [
        Weekly("objectives 2012 male", Sex.Male, [162, 541, 1217, 2225, 3543, 5110, 6853, 8700, 10589, 12463]),
        Weekly("objectives 2012 female", Sex.Female, [169, 528, 1143, 2030, 3155, 4470, 5921, 7453, 8994, 10464]),
        Weekly("Poultry CRC male", Sex.Male, [150, 480, 1120, 2020, 3200, 4500, 6000, 7400, 8800]),
        Weekly("Poultry CRC female", Sex.Female, [145, 460, 1030, 1825, 2830, 4020, 5400, 6800, 8200]),
        Weekly("NRC 1984 male", Sex.Male, [120, 380, 770, 1305, 2045, 3025, 4120, 5330, 6650]),
        Weekly("NRC 1984 female", Sex.Female, [110, 350, 705, 1205, 1850, 2650, 3560, 4530, 5540]),
    ];

    /// <summary>Four slow Korean lines by fortnights, both sexes together, diet unknown (Korean J. Poult. Sci. 48(4):277, Table 2; gains summed up from 40 g).</summary>
    public static IReadOnlyList<FeedTable> Slow { get; } = SlowAs(Sex.Mixed);

    public string Name { get; }

    /// <summary>Weights at the rows, hatch first, g.</summary>
    public double[] Grams { get; }

    /// <summary>Cumulative feed at the rows, 0 first, g.</summary>
    public double[] Printed { get; }

    public int Rows => Printed.Length - 1;

    /// <summary>The slow lines with the body composition of one sex, or of both.</summary>
    public static IReadOnlyList<FeedTable> SlowAs(Sex sex) =>
    [
        Fortnightly("slow G", sex, [335.4, 834.5, 945.4, 1285, 1398, 1514]),
        Fortnightly("slow V", sex, [338.2, 917.3, 1045, 1299, 1484, 1594]),
        Fortnightly("slow S", sex, [251.1, 793.2, 960.7, 1101, 1194, 945.5]),
        Fortnightly("slow W", sex, [257.5, 852.4, 979.1, 1179, 1225, 1260]),
    ];

    public static FeedTable Named(string name) => All.Single(table => table.Name == name);

    /// <summary>Cumulative feed by a model at every row, 0 first, g.</summary>
    public double[] Predicted(FeedTableModel model) => predicted.GetOrAdd(model, known => Predicted(known, Temperatures.StandardHouse));

    /// <summary>Errors of cumulative feed at every row, %; the first is no error and 0.</summary>
    public double[] CumulativeErrors(FeedTableModel model) =>
        [.. Predicted(model).Zip(Printed, (predicted, printed) => printed == 0 ? 0 : 100 * ((predicted / printed) - 1))];

    /// <summary>Errors of the feed between rows, %; the first is none and 0.</summary>
    public double[] StepErrors(FeedTableModel model)
    {
        double[] predicted = Predicted(model);
        return [0, .. Enumerable.Range(1, Rows).Select(row => 100 * (((predicted[row] - predicted[row - 1]) / (Printed[row] - Printed[row - 1])) - 1))];
    }

    /// <summary>Error of the feed from a row to week 9 once the feed to that row is taken as known, with a farm's factor or without, %.</summary>
    public double RestError(FeedTableModel model, int row, bool corrected)
    {
        double[] predicted = Predicted(model);
        double factor = corrected ? Printed[row] / predicted[row] : 1;
        return 100 * ((factor * (predicted[9] - predicted[row]) / (Printed[9] - Printed[row])) - 1);
    }

    /// <summary>How much more feed than in the standard house to a row, %.</summary>
    public double Excess(FeedTableModel model, Temperatures temperatures, int row) =>
        100 * ((Predicted(model, temperatures)[row] / Predicted(model)[row]) - 1);

    private static FeedTable Weekly(string name, Sex sex, double[] cumulative)
    {
        double[] grams = [.. Handbook.Tables[name].Grams];
        bool nrc = name.StartsWith("NRC", StringComparison.Ordinal);
        if (nrc)
        {
            grams = [40, .. grams];
        }
        else if (name == "Poultry CRC male")
        {
            grams[5] = 2050;
        }

        return new(name, sex, 7, grams, cumulative, nrc ? FeedingPlan.OneFeed(Calories.PerKilogram(3200)) : FeedingPlan.UsualDiets);
    }

    private static FeedTable Fortnightly(string name, Sex sex, double[] feed)
    {
        double sum = 0;
        return new(name, sex, 14, Handbook.Tables[name].Grams, [.. feed.Select(grams => sum += grams)], FeedingPlan.UsualDiets);
    }

    private static TabulatedCurve Curve(double[] grams, double stepDays)
    {
        MonotoneCubic logarithms = new([.. grams.Select((_, row) => row * stepDays)], [.. grams.Select(weight => Math.Log(weight))]);
        int halves = (int)(2 * stepDays * (grams.Length - 1));
        (Age, Mass)[] rows = [.. Enumerable.Range(0, halves + 1).Select(half => (Age.FromDays(half / 2.0), Mass.FromGrams(Math.Exp(logarithms.Value(half / 2.0)))))];
        return TabulatedCurve.Of("rows and what lies between them", new Citation("Rows", "the table", HowKnown.Derived), rows);
    }

    private double[] Predicted(FeedTableModel model, Temperatures temperatures)
    {
        FeedForecast forecast = FeedForecast.For(
            curve,
            HeadCountPath.Constant(1),
            plan,
            new FeedingConditions { Temperatures = temperatures, Sex = sex, Model = model.For(Mass.FromGrams(Grams[0])) },
            Age.FromDays(stepDays * Rows));
        return [0, .. Enumerable.Range(1, Rows).Select(row => forecast.ByDay[(int)(row * stepDays) - 1].CumulativeFeed.Value.Grams)];
    }
}
