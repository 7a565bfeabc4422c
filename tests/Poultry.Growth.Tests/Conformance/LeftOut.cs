using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Conformance.ChickWeight;
using Poultry.Growth.Tests.Fitting;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>A real series whose end was left out: what was projected against what came.</summary>
internal sealed record LeftOut(double TrueGrams, double Percent, double WidthPercent, bool Inside, bool Disagrees)
{
    private static readonly Lazy<Dictionary<(string Table, double Stop), LeftOut>> Known = new(() =>
        Tables!.SelectMany(table => Stops!.Select(stop => (table, stop))).ToDictionary(one => one, one => Project(one.table, one.stop)));

    /// <summary>The last days that are weighed.</summary>
    public static IReadOnlyList<double> Stops { get; } = [21, 28, 35, 42];

    public static IReadOnlyList<string> Tables { get; } = ["objectives 2012 female", "objectives 2012 male", "NRC 1984 male", "NRC 1984 female", "Poultry CRC male", "Poultry CRC female"];

    public static IReadOnlyList<int> Diets { get; } = [1, 2, 3, 4];

    /// <summary>Every printed table from every stop.</summary>
    public static IReadOnlyCollection<LeftOut> OfTables => Known.Value.Values;

    public string Cell => string.Create(
        CultureInfo.InvariantCulture, $"{Percent:+0.0;-0.0;0.0} % ({WidthPercent:0} %){(Inside ? "" : " outside")}{(Disagrees ? ", disagrees" : "")}");

    /// <summary>A printed table weighed from 7 d to a stop, projected to 56 d.</summary>
    public static LeftOut Of(string table, double stop) => Known.Value[(table, stop)];

    /// <summary>A diet of ChickWeight, projected to 21 d by a plain fit, by the prior shipped, and by the other diets.</summary>
    public static (string Plain, LeftOut Shipped, LeftOut Own) Diet(int diet)
    {
        WeighInSeries Chicks(int number) => ChickWeightData.Series(string.Create(CultureInfo.InvariantCulture, $"dietpooled_{number}"));
        WeighInSeries early = WeighInSeries.Of(Chicks(diet).Where(weighIn => weighIn.Age.Days <= 12));
        double grams = Chicks(diet)[^1].MeanWeight.Grams;
        GrowthPrior slow = GrowthPrior.SlowGrowing(Sex.Mixed);
        BatchHistory others = BatchHistory.Of(Diets.Where(other => other != diet).Select(other => PastBatch.Of(
            string.Create(CultureInfo.InvariantCulture, $"diet {other}"), Chicks(other), BatchKind.Of())));
        GrowthFit fit = GrowthFit.Of(early);
        string plain = fit.Curve is null ? "none" : string.Create(CultureInfo.InvariantCulture, $"{100 * ((fit.MeanAt(Age.FromDays(21)).Value.Grams / grams) - 1):+0.0;-0.0} %");
        return (plain, Of(Projection.Of(early, slow), 21, grams), Of(Projection.Of(early, others.Learn(BatchKind.Of(), slow).Prior), 21, grams));
    }

    private static LeftOut Project(string table, double stop) => Of(
        Projection.Of(Handbook.Series(table, birds: 50, fromDays: 7, toDays: stop), ProjectionCases.Measured), 56, Handbook.GramsAt(table, 56));

    private static LeftOut Of(Projection projection, double days, double grams)
    {
        Estimate<Mass> mean = projection.MeanAt(Age.FromDays(days));
        double width = 100 * (mean.Interval.High!.Value.Grams - mean.Interval.Low!.Value.Grams) / mean.Value.Grams;
        return new(grams, 100 * ((mean.Value.Grams / grams) - 1), width, mean.Interval.Contains(Mass.FromGrams(grams)), projection.Disagreement is not null);
    }
}
