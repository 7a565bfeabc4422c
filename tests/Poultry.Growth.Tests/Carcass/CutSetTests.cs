using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Carcass;

/// <summary>Shares of pieces: always 100 % together, the back in one place, and nothing invented.</summary>
public sealed class CutSetTests
{
    [Fact]
    public void Published_sets_are_100_percent_with_a_frame_or_rest_and_a_source()
    {
        foreach (CutSet set in CutSets.All)
        {
            set.Pieces.Sum(piece => piece.Share.Percent).Should().BeApproximately(100, 1e-9, set.Name);
            set.Back.Should().Be(BackCut.SeparateFrame, "no set with the back on the pieces is published");
            set.Model.Citations.Should().OnlyContain(source => source.HowKnown == HowKnown.ReadInSource);
            CutSets.Named(set.Name).Should().BeSameAs(set);
        }
    }

    [Theory]
    [InlineData(4, "2 breast with wing: 46.91 %", "2 leg: 31.29 %", "1 frame: 21.8 %")]
    [InlineData(8, "2 breast: 36.23 %", "2 thigh: 17.09 %", "2 drumstick: 14.2 %", "2 wing: 10.68 %", "1 frame: 21.8 %")]
    [InlineData(10, "4 breast: 36.23 %", "2 thigh: 17.09 %", "2 drumstick: 14.2 %", "2 wing: 10.68 %", "1 frame: 21.8 %")]
    public void A_bird_in_so_many_pieces(int pieces, params string[] expected) =>
        CutSets.InPieces(CutSets.Rudn42Days, pieces).Pieces.Select(piece => piece.ToString()).Should().Equal(expected);

    [Theory]
    [InlineData(9, "The share of the keel piece of a nine-piece cut is not published*")]
    [InlineData(7, "A bird is cut into 4, 6, 8, 9 or 10 pieces*")]
    public void What_is_not_published_is_asked_from_the_user(int pieces, string message)
    {
        Action cut = () => CutSets.InPieces(CutSets.Rudn42Days, pieces), muscle = () => CutSets.InPieces(CutSets.SlowLocal90Days, 4);

        cut.Should().Throw<ArgumentException>().WithMessage(message);
        muscle.Should().Throw<ArgumentException>().WithMessage("The set \"slow-local-90d\" has no piece \"breast\"*");
    }

    [Fact]
    public void Allometric_shares_are_the_set_s_at_its_weight_and_follow_the_exponents()
    {
        CutSet growing = CutSets.Rudn42Days.Growing(CutSets.TwoPointExponents, CutSets.Rudn42DaysCarcass);

        growing.SharesAt(CutSets.Rudn42DaysCarcass).Zip(CutSets.Rudn42Days.Pieces).Should()
            .OnlyContain(pair => Math.Abs(pair.First.Fraction - pair.Second.Share.Fraction) < 1e-12);

        // The exponents came from both ages, so the weight of the younger age gives back its shares.
        growing.SharesAt(Mass.FromGrams(994 / 0.6557)).Zip(CutSets.Rudn33Days.Pieces).Should()
            .OnlyContain(pair => Math.Abs(pair.First.Percent - pair.Second.Share.Percent) < 1e-9);
        growing.SharesAt(Mass.FromKilograms(3)).Sum(share => share.Fraction).Should().BeApproximately(1, 1e-12);
        (growing.IsAllometric, CutSets.Rudn42Days.IsAllometric).Should().Be((true, false));
    }

    /// <summary>Fillet and tender have no exponents, nor has a leg of thigh and drumstick: a set that grows would stop growing without a word.</summary>
    [Fact]
    public void A_set_that_grows_is_not_cut_otherwise()
    {
        CutSet growing = CutSets.Rudn42Days.Growing(CutSets.TwoPointExponents, CutSets.Rudn42DaysCarcass);
        Action four = () => CutSets.InPieces(growing, 4), tenders = () => growing.WithTenders("breast", Probability.FromPercent(4));

        four.Should().Throw<InvalidOperationException>().WithMessage("The shares of rudn-42d change with the weight of the carcass*Growing last.");
        tenders.Should().Throw<InvalidOperationException>();
        CutSets.InPieces(growing, 8).IsAllometric.Should().BeTrue("eight pieces are the set's own");
    }

    [Fact]
    public void Exponents_are_never_made_up_and_never_so_far_apart_that_a_heavier_bird_gives_less()
    {
        Action none = () => CutSets.SlowLocal90Days.Growing(CutSets.TwoPointExponents, Mass.FromKilograms(1.3));
        Action apart = () => CutSets.SlowLocal90Days.Growing(
            new Dictionary<string, double> { ["breast muscle"] = 1.6, ["leg muscle"] = 0.5, ["bones, skin and rest"] = 1 }, Mass.FromKilograms(1.3));

        none.Should().Throw<ArgumentException>().WithMessage("The piece \"breast muscle\" has no exponent*");
        apart.Should().Throw<ArgumentException>().WithMessage("The exponents lie 1 or more apart*");
    }

    [Fact]
    public void Tenders_come_off_a_boneless_breast_by_a_stated_share_only()
    {
        Probability pair = Probability.FromFraction(CutSets.TenderPairOfLive.Likely.Fraction / 0.72);
        CutSet split = CutSets.BonelessBreastSet.WithTenders("boneless breast", pair);
        Action bone = () => CutSets.BonelessBreastSet.WithTenders("breast", pair);
        Action all = () => CutSets.BonelessBreastSet.WithTenders("boneless breast", Probability.FromPercent(21));
        Action none = () => CutSets.BonelessBreastSet.WithTenders("boneless breast", default), again = () => split.WithTenders("fillet", pair);

        split.Pieces.Take(2).Select(piece => piece.Name).Should().Equal("fillet", "tender");
        split.Pieces[0].Share.Percent.Should().BeApproximately(21.55 - (4 / 0.72), 1e-9);
        split.Pieces[1].Share.Percent.Should().BeApproximately(4 / 0.72, 1e-9);
        split.Pieces.Sum(piece => piece.Share.Fraction).Should().BeApproximately(1, 1e-12);
        bone.Should().Throw<ArgumentException>().WithMessage("The set has no piece \"breast\"*");
        all.Should().Throw<ArgumentOutOfRangeException>();
        none.Should().Throw<ArgumentOutOfRangeException>().WithMessage("0 is not allowed; expected above 0.*");
        again.Should().Throw<ArgumentException>().WithMessage("A piece stands twice in the set*");
    }

    [Fact]
    public void A_set_of_one_s_own_is_brought_to_100_and_refused_far_from_it()
    {
        CutSet own = CutSet.Of("mine", BackCut.InThePieces, [Piece("breast", 2, 40), Piece("thigh", 2, 30), Piece("drumstick", 2, 17), Piece("wing", 2, 12)]);
        Action far = () => CutSet.Of("mine", BackCut.InThePieces, [Piece("breast", 2, 40), Piece("thigh", 2, 30)]);
        Action twice = () => CutSet.Of("mine", BackCut.InThePieces, [Piece("breast", 2, 60), Piece("Breast", 2, 40)]);

        own.Pieces[0].Share.Percent.Should().BeApproximately(40 / 0.99, 1e-9);
        far.Should().Throw<ArgumentOutOfRangeException>().WithMessage("70*% is not allowed; expected 98 to 102 %*");
        twice.Should().Throw<ArgumentException>().WithMessage("A piece stands twice in the set*");
    }

    [Fact]
    public void Used_for_other_birds_it_says_in_which_direction_it_errs()
    {
        IReadOnlyList<Caution> cautions = CutSets.Rudn42Days.CautionsFor(Sex.Mixed, Age.FromDays(56), Mass.FromKilograms(2.5));

        cautions.Select(caution => caution.Code).Should().Equal("cuts-other-sex", "cuts-other-age", "cuts-other-weight");
        CutSets.Rudn42Days.CautionsFor(Sex.Male, Age.FromDays(44), Mass.FromKilograms(2)).ShouldBeNone();
        CutSets.Rudn42Days.CautionsFor(Sex.Male, null, null).ShouldBeNone();
    }

    [Fact]
    public void A_thigh_with_back_and_one_without_are_not_packed_together()
    {
        CutSet trade = CutSet.Of("trade eight", BackCut.InThePieces, [Piece("breast", 2, 47), Piece("thigh", 2, 27), Piece("drumstick", 2, 14), Piece("wing", 2, 12)]);
        CutSet renamed = CutSet.Of("trade eight", BackCut.InThePieces, [Piece("breast with back", 2, 60), Piece("leg with back", 2, 40)]);
        Probability half = Probability.FromPercent(50);
        Action mix = () => CutOrder.AsTheyCome(CutOrderLine.Of(trade, half), CutOrderLine.Of(CutSets.Rudn42Days, half));

        mix.Should().Throw<ArgumentException>().WithMessage("A breast of trade eight has its part of the back, one of rudn-42d has not*");
        CutOrder.AsTheyCome(CutOrderLine.Of(renamed, half), CutOrderLine.Of(CutSets.Rudn42Days, half)).Lines.Should().HaveCount(2);
    }

    [Fact]
    public void Shares_that_make_no_set_are_kept_with_their_base_and_none_is_from_memory()
    {
        PublishedShares.All.Should().HaveCount(42).And.OnlyContain(share => share.Source.HowKnown != HowKnown.Memory);
        PublishedShares.All.Select(share => (share.Birds, share.Age, share.Part)).Should().OnlyHaveUniqueItems();

        // The carcass weights of the exponents come from the muscle printed in grams and in percent.
        PublishedShare muscle = PublishedShares.All.Single(share => share.ToString() == "Cobb 500, 42 d: muscle in all 66.95 % of carcass");
        (1410 / muscle.Share.Fraction).Should().BeApproximately(CutSets.Rudn42DaysCarcass.Grams, 1e-9);
        PublishedShares.All.Where(share => share.Part == "boneless breast").Average(share => share.Share.Percent).Should().BeApproximately(
            CutSets.BonelessBreastSet.Pieces[0].Share.Percent, 1e-9);
    }

    [Fact]
    public void A_set_of_one_s_own_keeps_its_source_and_without_one_knows_no_range_of_weights()
    {
        CutPiece[] pieces = [Piece("front", 2, 60), Piece("rear", 2, 40)];

        CutSet.Of("mine", BackCut.InThePieces, pieces, CutSets.Rudn42Days.Model).Model.Should().BeSameAs(CutSets.Rudn42Days.Model);
        CutSet.Of("mine", BackCut.InThePieces, pieces).CautionsFor(Sex.Mixed, null, Mass.FromKilograms(9)).ShouldBeNone();
    }

    [Fact]
    public void Exponents_exactly_1_apart_are_too_far_apart()
    {
        CutSet set = CutSet.Of("mine", BackCut.InThePieces, [Piece("front", 2, 60), Piece("rear", 2, 40)]);
        Action apart = () => set.Growing(new Dictionary<string, double> { ["front"] = 1.5, ["rear"] = 0.5 }, Mass.FromKilograms(2));

        apart.Should().Throw<ArgumentException>().WithMessage("The exponents lie 1 or more apart*");
        set.Growing(new Dictionary<string, double> { ["front"] = 1.4, ["rear"] = 0.5 }, Mass.FromKilograms(2)).IsAllometric.Should().BeTrue();
    }

    private static CutPiece Piece(string name, int perBird, double percent) => CutPiece.Of(name, perBird, Probability.FromPercent(percent));
}
