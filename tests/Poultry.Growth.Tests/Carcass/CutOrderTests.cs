using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Bands of weight take every bird once; a piece with its part of the back is never taken for one without.</summary>
public sealed class CutOrderTests
{
    [Theory]
    [InlineData(true, 0.0, 0.0)]
    [InlineData(true, 0.0, 2.5, 2.5, 3.0, 3.0, 0.0)]
    [InlineData(true, 3.0, 0.0, 0.0, 3.0)]
    [InlineData(false, 0.0, 2.5)]
    [InlineData(false, 2.5, 0.0)]
    [InlineData(false, 0.0, 2.5, 2.5, 3.0, 3.1, 0.0)]
    [InlineData(false, 0.0, 2.5, 2.4, 3.0, 3.0, 0.0)]
    public void Bands_of_weight_are_closed_or_refused(bool closed, params double[] limits)
    {
        static Mass? Limit(double kilograms) => kilograms > 0 ? Mass.FromKilograms(kilograms) : null;
        CutOrderLine[] lines = [.. limits.Chunk(2).Select(band => CutOrderLine.Of(null, Limit(band[0]), Limit(band[1])))];
        Func<CutOrder> order = () => CutOrder.ByWeight(lines);

        if (closed)
        {
            order().Lines.Should().HaveCount(lines.Length);
        }
        else
        {
            order.Should().Throw<ArgumentException>().WithMessage("The bands of weight leave a gap or overlap*");
        }
    }

    [Fact]
    public void One_name_in_common_is_enough_to_keep_two_sets_apart_even_the_first()
    {
        CutSet trade = SaleCase.InTwo("trade", "breast", 50, "leg with back");
        Action mix = () => CutOrder.AsTheyCome(CutOrderLine.Of(trade, Probability.FromPercent(50)), CutOrderLine.Of(CutSets.Rudn42Days, Probability.FromPercent(50)));

        mix.Should().Throw<ArgumentException>().WithMessage("A breast of trade has its part of the back, one of rudn-42d has not*");
    }

    [Fact]
    public void A_line_is_called_by_its_set_or_whole() =>
        SaleCase.CutHeaviest(40).ToString().Should().Be("heaviest first: 40 % " + CutSets.Rudn42Days.Name + ", 60 % whole");
}
