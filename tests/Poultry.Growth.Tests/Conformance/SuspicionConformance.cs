using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Real weighings and printed tables hold no wrong units: nothing in them may be flagged, and a planted error must be found.</summary>
/// <remarks>
/// Sources: R datasets::ChickWeight (Crowder and Hand 1990, Example 5.3); the tables of <see cref="Handbook"/>.
/// </remarks>
public sealed class SuspicionConformance
{
    private static readonly string ChickWeight = Path.Combine(AppContext.BaseDirectory, "Conformance", "ChickWeight", "chickweight.csv");

    public static TheoryData<string> Names => [.. Handbook.Tables.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_printed_table_raises_no_suspicion(string table) => Handbook.Series(table, birds: 20).Suspicions.Should().BeEmpty();

    [Fact]
    public void No_chick_by_itself_raises_a_suspicion()
    {
        for (int chick = 1; chick <= 50; chick++)
        {
            Chicks($"Chick={chick}").Suspicions.Should().BeEmpty($"chick {chick} was weighed right");
        }
    }

    [Fact]
    public void No_diet_and_no_heap_of_all_chicks_raises_a_suspicion()
    {
        Chicks().Suspicions.Should().BeEmpty();
        for (int diet = 1; diet <= 4; diet++)
        {
            Chicks($"Diet={diet}").Suspicions.Should().BeEmpty();
        }
    }

    [Fact]
    public void Diet_means_with_their_spread_raise_no_suspicion()
    {
        for (int diet = 1; diet <= 4; diet++)
        {
            IReadOnlyList<Uniformity> means = Uniformity.ByAge(Chicks($"Diet={diet}"));

            WeighInSeries.Of(means.Select(day => WeighIn.Mean(day.Age, day.MeanWeight, day.Birds, day.StandardDeviation))).Suspicions.Should().BeEmpty();
        }
    }

    /// <summary>Every weigh-in of every table in turn, times and over six factors: how often exactly that weigh-in is flagged.</summary>
    [Fact]
    public void A_planted_factor_is_found_alone_in_98_of_100_cases()
    {
        int planted = 0, found = 0;
        foreach ((double[] days, double[] grams) in Handbook.Tables.Values)
        {
            for (int wrong = 0; wrong < days.Length; wrong++)
            {
                foreach (double factor in new[] { 2.2046, 10, 16, 28.35, 453.6, 1000, 1 / 2.2046, 0.1, 1 / 16.0, 1 / 28.35, 1 / 453.6, 0.001 })
                {
                    WeighInSeries series = WeighInSeries.Of(days.Select((day, index) =>
                        WeighIn.Mean(Age.FromDays(day), Mass.FromGrams(grams[index] * (index == wrong ? factor : 1)), 20)));
                    planted++;
                    found += series.Suspicions is [{ Code: Suspicion.UnlikeOtherAges } one] && one.WeighIn == series[wrong] ? 1 : 0;
                }
            }
        }

        planted.Should().Be(1296);
        ((double)found / planted).Should().BeGreaterThan(0.98);
    }

    private static WeighInSeries Chicks(params string[] where) => WeighInFile.Read(
        ChickWeight, new() { AgeColumn = "Time", WeightColumn = "weight", WeightUnit = WeightUnit.Gram, Where = where }).Series!;
}
