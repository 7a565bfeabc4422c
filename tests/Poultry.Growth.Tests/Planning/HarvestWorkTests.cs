using Poultry.Growth.Planning;

namespace Poultry.Growth.Tests.Planning;

public class HarvestWorkTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void What_one_piece_of_work_refuses_is_refused_as_if_it_had_been_the_only_one(int threads)
    {
        BatchPlan plan = HarvestCase.Plan();
        HarvestDay Refused(int at) => throw new ArgumentException("Day " + at.ToString(System.Globalization.CultureInfo.InvariantCulture) + " is refused.", nameof(at));

        FluentActions.Invoking(() => HarvestWork.Run(plan, 3, Refused, count => new MarginDraws(count), new() { Draws = 100, Threads = threads }, CancellationToken.None, out _))
            .Should().ThrowExactly<ArgumentException>().WithMessage("Day ? is refused. (Parameter 'at')");
    }
}
