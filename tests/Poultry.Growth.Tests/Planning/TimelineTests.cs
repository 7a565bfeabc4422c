using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

public class TimelineTests
{
    private static readonly TimelineInputs Inputs = new()
    {
        Placed = new(2027, 4, 12),
        AgeAtPlacement = Age.FromDays(1),
        Date = new() { Date = new(2027, 6, 8), Road = Duration.FromHours(2) },
        Feeds = [("starter", Age.Hatch, Duration.FromDays(3)), ("grower", Age.FromDays(21), Duration.FromDays(5))],
    };

    private static readonly IReadOnlyList<TimelineEntry> Entries = Timeline.Of(Inputs);

    [Theory]
    [InlineData("Book the plant", "2027-01-09")]
    [InlineData("Order the chicks", "2027-02-15")]
    [InlineData("Order starter", "2027-04-07")]
    [InlineData("Warm and bed the brooder", "2027-04-11")]
    [InlineData("Place the chicks", "2027-04-12")]
    [InlineData("Order grower", "2027-04-25")]
    [InlineData("Change to grower", "2027-05-02")]
    [InlineData("Move out to the shelters", "2027-05-02")]
    [InlineData("Decide: keep the date or move it, head count, cut sheet", "2027-05-29")]
    [InlineData("Feed off, water stays on", "2027-06-07 21:00")]
    [InlineData("Catch and crate", "2027-06-08 03:30")]
    [InlineData("Load with air between the crates", "2027-06-08 04:00")]
    [InlineData("Deliver the birds", "2027-06-08 07:00")]
    [InlineData("Collect the packs", "2027-06-09")]
    public void Every_day_is_counted_from_hatch_or_back_from_killing(string what, string when) =>
        Entries.Single(entry => entry.What == what).ToString().Should().Be(when + " " + what);

    [Fact]
    public void Chicks_of_one_day_reach_two_weeks_13_days_after_they_came() =>
        Entries.First(entry => entry.What == "Weigh a sample").Date.Should().Be(new DateOnly(2027, 4, 25));

    [Fact]
    public void Entries_come_in_order_and_no_weigh_in_after_killing()
    {
        Entries.Should().BeInAscendingOrder(entry => entry.Date);
        Entries.Last(entry => entry.What == "Weigh a sample").Date.Should().BeBefore(new DateOnly(2027, 6, 8));
    }

    [Fact]
    public void Cautions_stand_where_they_belong()
    {
        Entries.Single(entry => entry.What.StartsWith("Feed off", StringComparison.Ordinal)).Caution!.Code.Should().Be("feed-label-withdrawal");
        Entries.Single(entry => entry.What == "Catch and crate").Caution!.Code.Should().Be("catch-calmly");
        Entries.Single(entry => entry.What.StartsWith("Load", StringComparison.Ordinal)).Caution!.Code.Should().Be("catch-in-the-cool");
        Entries.Single(entry => entry.What == "Collect the packs").Caution!.Code.Should().Be("cold-chain");
    }

    [Fact]
    public void The_plants_last_day_for_changes_goes_before_custom()
    {
        TimelineInputs inputs = new()
        {
            Placed = Inputs.Placed, AgeAtPlacement = Inputs.AgeAtPlacement, Date = new() { Date = new(2027, 6, 8), ChangeUntil = new(2027, 5, 11) },
        };

        Timeline.Of(inputs).Single(entry => entry.What.StartsWith("Decide", StringComparison.Ordinal)).Date.Should().Be(new DateOnly(2027, 5, 11));
    }

    [Fact]
    public void What_would_come_on_or_after_the_day_of_killing_is_left_out()
    {
        TimelineInputs inputs = new()
        {
            Placed = Inputs.Placed,
            AgeAtPlacement = Inputs.AgeAtPlacement,
            Date = new() { Date = new(2027, 5, 10) },
            MoveOut = Age.FromDays(29),
            Feeds = [.. Inputs.Feeds, ("finisher", Age.FromDays(29), Duration.FromDays(5)), ("last", Age.FromDays(42), Duration.FromDays(5))],
        };

        string[] what = [.. Timeline.Of(inputs).Select(entry => entry.What)];

        what.Should().Contain("Change to grower").And.NotContain(entry => entry.StartsWith("Move out", StringComparison.Ordinal) || entry.EndsWith("finisher", StringComparison.Ordinal) || entry.EndsWith("last", StringComparison.Ordinal));
        what[^1].Should().Be("Collect the packs");
    }

    [Fact]
    public void Feed_is_off_when_the_birds_are_caught_at_the_latest() =>
        Timeline.Of(new() { Placed = Inputs.Placed, AgeAtPlacement = Inputs.AgeAtPlacement, Date = new() { Date = new(2027, 6, 8), Road = Duration.FromHours(4), OffFeed = Duration.FromHours(5) } })
            .Single(entry => entry.What.StartsWith("Feed off", StringComparison.Ordinal)).ToString().Should().StartWith("2027-06-08 01:30", "they are caught an hour and a half before four hours on the road, to be there at seven");

    [Fact]
    public void Chicks_that_come_older_go_straight_out() =>
        Timeline.Of(new() { Placed = Inputs.Placed, AgeAtPlacement = Age.FromDays(25), Date = Inputs.Date }).Single(entry => entry.What == "Move out to the shelters").Date.Should().Be(Inputs.Placed);

    [Fact]
    public void Chicks_after_the_day_of_killing_are_refused() =>
        FluentActions.Invoking(() => Timeline.Of(new() { Placed = new(2027, 6, 8), AgeAtPlacement = Age.Hatch, Date = Inputs.Date })).Should().Throw<ArgumentException>();
}
