using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>An error planted in the tables of <see cref="Handbook"/> must be found; that nothing in them is flagged is in <see cref="WeighingChecks"/>.</summary>
public sealed class SuspicionConformance
{
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
}
