using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Housing;

/// <summary>The chance of passing a limit, over growth curves and over how many birds are alive.</summary>
public class ChanceOverTests
{
    private const int Count = 400;

    private static readonly Age[] Ages = [Age.FromDays(28), Age.FromDays(49), Age.FromDays(56), Age.FromDays(63)];

    private static readonly CurveDraws Draws = Projection.Of(GrowthPrior.FastGrowingOutdoor(Sex.Mixed)).Draws(1, Ages);

    [Fact]
    public void It_is_the_share_of_draws_by_hand_where_no_bird_dies()
    {
        Holding barn = Holding.All[3];
        DensityPath path = DensityPath.Of(barn.Floor, Holding.Curve, HeadCountPath.Constant(barn.Birds), barn.Keeping);
        int[] over = new int[Ages.Length];
        double[] kilograms = new double[Ages.Length];
        for (int draw = 0; draw < Count; draw++)
        {
            Draws.Draw(draw, kilograms);
            for (int i = 0; i < over.Length; i++)
            {
                over[i] += barn.Birds * kilograms[i] / barn.Floor.SquareMeters > 39 ? 1 : 0;
            }
        }

        path.ChanceOver(Draws, Count).Select(chance => chance!.Value.Fraction).Should().Equal(over.Select(times => times / (double)Count));
        over.Should().BeInAscendingOrder().And.Contain(times => times > 20 && times < Count - 20);
    }

    [Fact]
    public void Deaths_make_room()
    {
        Holding barn = Holding.All[3];
        double[] none = [.. DensityPath.Of(barn.Floor, Holding.Curve, HeadCountPath.Constant(barn.Birds), barn.Keeping).ChanceOver(Draws, Count).Select(chance => chance!.Value.Fraction)];
        double[] some = [.. barn.Path.ChanceOver(Draws, Count).Select(chance => chance!.Value.Fraction)];

        some.Zip(none, (with, without) => with <= without).Should().OnlyContain(less => less);
        some[^1].Should().BeLessThan(none[^1]);
    }

    [Fact]
    public void Weight_classes_are_judged_by_the_drawn_weight()
    {
        // 6.5 lb/ft2 below 4.5 lb, 8.5 above 5.5 lb: recalled figures, chosen by name.
        Keeping keeping = new() { Place = "USA", System = RearingSystem.Indoor, Chosen = ["National Chicken Council guidelines (voluntary)"] };
        DensityPath path = DensityPath.Of(Area.FromSquareMeters(60), Holding.Curve, HeadCountPath.Constant(900), keeping);
        double[] kilograms = new double[Ages.Length];
        double[] over = new double[Ages.Length];
        for (int draw = 0; draw < 50; draw++)
        {
            Draws.Draw(draw, kilograms);
            for (int i = 0; i < over.Length; i++)
            {
                StockingVerdict verdict = StockingVerdict.Of(Area.FromSquareMeters(60), 900, Mass.FromKilograms(kilograms[i]), keeping.With(Measured.BirdAge(Ages[i])));
                over[i] += verdict.IsMet == false ? 1 / 50.0 : 0;
            }
        }

        path.ChanceOver(Draws, 50).Zip(over, (chance, byHand) => Math.Abs(chance!.Value.Fraction - byHand)).Should().OnlyContain(difference => difference < 1e-12);
    }

    [Fact]
    public void Where_no_limit_binds_there_is_no_chance() =>
        DensityPath.Of(Area.FromSquareMeters(60), Holding.Curve, HeadCountPath.Constant(900), new()).ChanceOver(Draws, 5).Should().OnlyContain(chance => chance == null);
}
