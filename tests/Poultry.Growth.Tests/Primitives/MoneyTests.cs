using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Primitives;

public class MoneyTests
{
    [Fact]
    public void Prices_by_pound_and_by_kilogram_are_the_same_price()
    {
        UnitPrice price = UnitPrice.FromAmountPerPound(4.30);

        price.AmountPerKilogram.Should().BeApproximately(9.4799, 0.00005);
        price.For(Mass.FromPounds(10)).Amount.Should().BeApproximately(43, 1e-12);
        price.ToString().Should().Be("9.48/kg (4.30/lb)");
        FluentActions.Invoking(() => UnitPrice.FromAmountPerKilogram(-1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*-1 per kg*");
    }

    [Fact]
    public void Money_adds_up_and_may_be_a_loss()
    {
        Money loss = (Money.Of(3) * 2) - Money.Of(10);

        loss.Should().Be(Money.Of(-4));
        loss.ToString().Should().Be("-4.00");
        (-loss + Money.Zero > loss).Should().BeTrue();
        FluentActions.Invoking(() => Money.Of(double.NaN)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
