using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Weighing;

public sealed class BirdsToWeighTests
{
    [Fact]
    public void A_small_flock_takes_fewer_birds()
    {
        // Without end 99; n0 = (t CV/E)^2 at n = 51 is 100.9 and 100.9 / (1 + 100.9/100) = 50.2: 51 birds suffice, 50 do not.
        BirdsToWeigh.For(0.10, 0.02).Should().Be(99);
        BirdsToWeigh.For(0.10, 0.02, flock: 100).Should().Be(51);
        BirdsToWeigh.For(0.10, 0.02, flock: 1_000_000_000).Should().Be(99);
    }

    [Theory]
    [InlineData(0.08, 13, 30, 64)]
    [InlineData(0.10, 18, 46, 99)]
    [InlineData(0.12, 25, 64, 141)]
    public void The_table_of_the_docs_page_is_right(double variation, int within5, int within3, int within2) =>
        new[] { 0.05, 0.03, 0.02 }.Select(precision => BirdsToWeigh.For(variation, precision)).Should().Equal(within5, within3, within2);

    [Fact]
    public void The_whole_flock_always_suffices()
    {
        BirdsToWeigh.For(0.10, 0.0001, flock: 12).Should().Be(12);
        BirdsToWeigh.For(0.10, 0.02, flock: 1).Should().Be(1);
        BirdsToWeigh.For(0.01, 0.50).Should().Be(2);
    }

    [Fact]
    public void What_makes_no_sense_is_refused()
    {
        FluentActions.Invoking(() => BirdsToWeigh.For(0, 0.02)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*coefficientOfVariation*");
        FluentActions.Invoking(() => BirdsToWeigh.For(0.1, -1)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*precision*");
        FluentActions.Invoking(() => BirdsToWeigh.For(0.1, 0.02, level: 95)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("95*level*");
        FluentActions.Invoking(() => BirdsToWeigh.For(0.1, 0.02, flock: 0)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*flock*");
        FluentActions.Invoking(() => BirdsToWeigh.For(0.1, 1e-9)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*wider precision*");
    }
}
