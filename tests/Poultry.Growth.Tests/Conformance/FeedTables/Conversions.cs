namespace Poultry.Growth.Tests.Conformance.FeedTables;

/// <summary>Cumulative conversions by gain, weeks 1 to 6, of PMC7358716, Table 4 (read in the source), to be put on the weights of the 2012 objectives: a proxy.</summary>
internal static class Conversions
{
    public static IReadOnlyList<(string Table, double[] ByWeek)> BySex { get; } =
    [
        ("objectives 2012 male", [1.262, 1.223, 1.305, 1.367, 1.406, 1.711]),
        ("objectives 2012 female", [1.277, 1.248, 1.337, 1.416, 1.486, 1.866]),
    ];
}
