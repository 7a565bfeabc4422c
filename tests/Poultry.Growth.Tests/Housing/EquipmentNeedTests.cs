using Poultry.Growth.Housing;

namespace Poultry.Growth.Tests.Housing;

/// <summary>What feeders, drinkers and fans a flock needs by one limit each.</summary>
public class EquipmentNeedTests
{
    private static readonly Keeping Anywhere = new() { Place = "anywhere" };

    [Theory]
    [InlineData(LimitSubject.RoundDrinkerPerWeight, 0.4, "round drinkers, rim", 300)]
    [InlineData(LimitSubject.TroughDrinkerPerWeight, 1.5, "drinking troughs, edge", 1125)]
    [InlineData(LimitSubject.RoundFeederPerWeight, 0.66, "round feeders, rim", 495)]
    [InlineData(LimitSubject.TroughFeederPerWeight, 1.5, "feed troughs, edge", 1125)]
    [InlineData(LimitSubject.RoundDrinkerPerBird, 1, "round drinkers, rim", 300)]
    [InlineData(LimitSubject.TroughDrinkerPerBird, 2.5, "drinking troughs, edge", 750)]
    [InlineData(LimitSubject.RoundFeederPerBird, 2, "round feeders, rim", 600)]
    [InlineData(LimitSubject.TroughFeederPerBird, 4, "feed troughs, edge", 1200)]
    public void Edges_are_so_long_for_each_bird_or_kilogram(LimitSubject subject, double centimeters, string item, double edge)
    {
        EquipmentNeed need = Of(subject, centimeters);

        need.Edge!.Value.Centimeters.Should().BeApproximately(edge, 1e-9);
        (need.Item, need.Pieces, need.AirCapacity).Should().Be((item, null, null));
    }

    [Theory]
    [InlineData(LimitSubject.BirdsPerNipple, 15, "drinking nipples: 20")]
    [InlineData(LimitSubject.BirdsPerNipple, 14, "drinking nipples: 22")]
    [InlineData(LimitSubject.BirdsPerCup, 28, "open cups: 11")]
    public void So_many_birds_to_a_piece_are_rounded_up(LimitSubject subject, double birds, string need) => Of(subject, birds).ToString().Should().Be(need);

    [Fact]
    public void Air_is_moved_for_each_kilogram() => Of(LimitSubject.AirCapacity, 4.5).ToString().Should().Be("air that can be moved: 3375 m3/h");

    [Theory]
    [InlineData(299, 400, true)]
    [InlineData(300, null, false)]
    public void The_flock_is_the_birds_unless_another_is_stated(int mostBirds, int? stated, bool binds)
    {
        // The limit is for flocks above so many birds.
        Limit limit = MadeUpLimit.On(LimitSubject.BirdsPerNipple, 15, when: new LimitClause(LimitSubject.FlockSize, LimitComparison.Above, mostBirds));
        Keeping keeping = stated is { } flock ? Anywhere.With(Measured.Flock(flock)) : Anywhere;

        EquipmentNeed.For(300, Mass.FromKilograms(2.5), keeping, [limit]).Single().Verdict.Binds.Should().Be(binds);
        EquipmentNeed.For(300, Mass.FromKilograms(2.5), Anywhere.With(Measured.Flock(mostBirds)), [limit]).Single().Verdict.Binds.Should().BeFalse();
    }

    private static EquipmentNeed Of(LimitSubject subject, double value) =>
        EquipmentNeed.For(300, Mass.FromKilograms(2.5), Anywhere, [MadeUpLimit.On(subject, value, LimitComparison.AtLeast)]).Single();
}
