using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>What is known of one batch after birds were opened, against R on a grid a hundred times finer. Tolerance: means 1e-6, limits 0.5 % asked for, 0.02 % held.</summary>
public class LesionPosteriorTests
{
    [Fact]
    public void The_share_after_an_inspection_is_that_of_a_fine_grid()
    {
        foreach (Table.Row row in Table.Read("Data/lesion-posterior.csv").Rows)
        {
            BatchPrevalence after = PlanningRisk.Of(row.Number("mu"), row.Number("sigma")).For(new() { KillAge = Age.FromDays(49) })
                .After(LesionInspection.Of((int)row.Number("n"), (int)row.Number("x")));

            after.Mean.Share.Fraction.Should().BeApproximately(row.Number("mean"), 1e-6 * row.Number("mean"));
            foreach ((string column, double probability) in new[] { ("q025", 0.025), ("q05", 0.05), ("q50", 0.5), ("q95", 0.95), ("q975", 0.975) })
            {
                after.Quantile(Probability.FromFraction(probability)).Share.Fraction.Should()
                    .BeApproximately(row.Number(column), 2e-4 * row.Number(column), $"{column} of {row.Text("x")} of {row.Text("n")}");
            }
        }
    }
}
