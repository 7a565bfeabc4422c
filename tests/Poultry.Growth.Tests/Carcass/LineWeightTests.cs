using Poultry.Growth.Carcass;
using Poultry.Growth.Flock;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Birds and live weight of the lines where mathematics gives them in closed form.</summary>
public sealed class LineWeightTests
{
    /// <summary>At the widest spread the normal law has four birds in ten thousand below no weight: they count too, or the birds and the mean would not be right.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void At_the_widest_spread_no_bird_and_no_weight_is_lost(bool heaviestFirst)
    {
        IReadOnlyList<LineYield> lines = Lines(100, 0.3, heaviestFirst ? SaleCase.CutHeaviest(40) : CutOrder.AllWhole);

        lines.Sum(line => line.ExpectedBirds).Should().BeApproximately(100, 1e-9);
        lines.Sum(line => line.LiveWeight.Kilograms).Should().BeApproximately(300, 1e-6);
    }

    /// <summary>The heavier of two birds of a normal law weighs its mean and the deviation over the root of pi: 3 + 0.3 / 1.7725 kg; here to a part in ten thousand.</summary>
    [Fact]
    public void The_heavier_of_two_birds()
    {
        double more = 0.3 / Math.Sqrt(Math.PI);
        IReadOnlyList<LineYield> lines = Lines(2, 0.1, SaleCase.CutHeaviest(50));

        lines[0].LiveWeight.Kilograms.Should().BeApproximately(3 + more, 3e-4);
        lines[1].LiveWeight.Kilograms.Should().BeApproximately(3 - more, 3e-4);
    }

    private static IReadOnlyList<LineYield> Lines(int birds, double spread, CutOrder order) => PlantReturn.Of(
        DeliveredBirds.Of(birds, WeightDistribution.Of(Mass.FromKilograms(3), spread), LiveState.FullFed), SaleCase.SeventyPercent(), order, []).Lines;
}
