using Poultry.Growth.Calculators.Printing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>Numbers as tables show them.</summary>
public sealed class NumbersTests
{
    [Theory]
    [InlineData(-0.3, 0, "0")]
    [InlineData(-0.004, 2, "0.00")]
    [InlineData(-0.005, 2, "-0.01")]
    [InlineData(-10, 0, "-10")]
    [InlineData(-0.0, 1, "0.0")]
    [InlineData(2.6, 0, "3")]
    public void What_rounds_to_nothing_has_no_sign(double value, int decimals, string text) => Numbers.Fixed(value, decimals).Should().Be(text);

    [Fact]
    public void Money_has_no_cents_and_an_unknown_bound_is_open() =>
        (Numbers.Amount(Money.Of(-12.6)), Numbers.Amount(null)).Should().Be(("-13", "open"));
}
