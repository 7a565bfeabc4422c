using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Conformance.MixedModels;

/// <summary>Fixtures as the kernel takes them, and a search for the maximum of the likelihood alone.</summary>
internal static class MixedModelData
{
    /// <summary>The groups of a table, in its order, with nothing known of their errors.</summary>
    public static MixedGroup[] Groups(string file, string group, string age, string value) =>
    [
        .. Table.Read(file).Rows.GroupBy(row => row.Text(group)).Select(rows => new MixedGroup(
            [.. rows.Select(row => row.Number(age))], [.. rows.Select(row => row.Number(value))], new double[rows.Count()])),
    ];

    public static LaplaceEmSettings Likelihood(double[] mean, double[] deviations, int[] random, double residual, double tolerance)
    {
        double[] spread = new double[deviations.Length * deviations.Length];
        for (int a = 0; a < deviations.Length; a++)
        {
            spread[a * (deviations.Length + 1)] = deviations[a] * deviations[a];
        }

        return new()
        {
            Start = MixedPopulation.Of(mean, spread, random, residual * residual)!,
            Tolerance = tolerance,
            RoundLimit = 5000,
        };
    }
}
