namespace Poultry.Growth.Tests.Conformance;

public class ManyFiguresTests
{
    [Fact]
    public void The_worst_figure_speaks_for_all_and_is_named_when_it_is_off()
    {
        static OutsideCheck Row(int asked) => ManyFigures.Digits("id", "what", "source", asked, () => [new("near", 1 + 3e-9, 1), new("far", 2.0001, 2), new("nothing", 0, 0)]);

        Row(4).Got.Should().Be(4);
        Row(2).Got.Should().Be(2);
        Row(4).Figures().Should().Be(3);
        FluentActions.Invoking(() => Row(5).Got).Should().Throw<Exception>().WithMessage("*far*");
    }

    [Fact]
    public void Nothing_but_nothing_agrees_with_a_reference_of_zero() => new Compared("what", 1e-300, 0).Deviation.Should().Be(double.PositiveInfinity);
}
