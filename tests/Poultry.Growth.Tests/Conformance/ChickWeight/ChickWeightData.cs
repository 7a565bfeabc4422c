using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance.ChickWeight;

/// <summary>R's ChickWeight as weigh-ins: diet means, all chicks of a diet, single chicks.</summary>
internal static class ChickWeightData
{
    private static readonly Table Weights = Table.Read("ChickWeight/chickweight.csv");

    /// <summary>The chicks that were weighed all twelve times.</summary>
    public static IEnumerable<int> WholeChicks { get; } =
        [.. Weights.Rows.GroupBy(row => (int)row.Number("Chick")).Where(chick => chick.Count() == 12).Select(chick => chick.Key).Order()];

    /// <summary>A set by the name the references use: dietmean_1, dietpooled_1, chick_1.</summary>
    public static WeighInSeries Series(string set)
    {
        string number = set.Split('_')[1];
        IEnumerable<IGrouping<double, Table.Row>> byAge = Weights.Rows
            .Where(row => row.Text(set.StartsWith("chick", StringComparison.Ordinal) ? "Chick" : "Diet") == number)
            .GroupBy(row => row.Number("Time"));
        return set.StartsWith("dietmean", StringComparison.Ordinal)
            ? WeighInSeries.Of(byAge.Select(day => WeighIn.Mean(Age.FromDays(day.Key), Mass.FromGrams(day.Average(Grams)), birds: 1)))
            : WeighInSeries.Of(byAge.Select(day => WeighIn.Birds(Age.FromDays(day.Key), day.Select(row => Mass.FromGrams(Grams(row))))));
    }

    /// <summary>The rows where a column has a value (Chick=1), or all, as weigh-ins read from the file.</summary>
    public static WeighInSeries FromFile(string where) => WeighInFile.Read(
        Path.Combine(AppContext.BaseDirectory, "Conformance", "ChickWeight", "chickweight.csv"),
        new() { AgeColumn = "Time", WeightColumn = "weight", WeightUnit = WeightUnit.Gram, Where = where.Length == 0 ? [] : [where] }).Series!;

    private static double Grams(Table.Row row) => row.Number("weight");
}
