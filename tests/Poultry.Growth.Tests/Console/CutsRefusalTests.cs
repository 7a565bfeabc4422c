namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>What <c>cuts</c> asks for and refuses.</summary>
public sealed class CutsRefusalTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Every_fault_of_the_words_is_told_at_once()
    {
        string prices = scratch.Write("p.csv", "piece,price,sells_likely\nwhole,9,ten\n");
        ConsoleRun run = ConsoleRun.Of(
            "cuts", "--live", "2.9", "--birds", "0", "--live-state", "hungry", "--dressing", "x", "--set", "trade-8", "--order", "much", "--prices", prices, "--part", "giblets", "--chill", "4%");

        run.Exit.Should().Be(2);
        run.ErrorLines.Select(line => line.Split(' ')[0].TrimEnd(':')).Should().BeEquivalentTo(
            ["--live", "--birds", "--live-state", "--dressing", "--part", "--set", "--order", "p.csv:2:7", "p.csv:2:9"]);
        run.Errors.Should().Contain("No set with the back left on the pieces is published: weigh the pieces of a few birds");
    }

    [Theory]
    [InlineData("--off-feed: is needed, since the dressing ratio planning-fast is taken for live weight at killing", "--live-state", "full-fed")]
    [InlineData("--chill: belongs to a hot carcass, and the dressing ratio planning-fast is hot or chilled not stated", "--live-state", "12h", "--chill", "4%")]
    [InlineData("--pieces: The share of the keel piece of a nine-piece cut is not published; expected 4, 6, 8 or 10, or a set of your own: weigh the pieces of a few birds.", "--live-state", "12h", "--pieces", "9")]
    [InlineData("--off-feed: is less than the hours at weighing", "--live-state", "12h", "--off-feed", "8h")]
    [InlineData("--road: is more than the hours off feed", "--live-state", "full-fed", "--off-feed", "8h", "--road", "9h")]
    [InlineData("--live-state: \"full-fd\" does not start with a number", "--live-state", "full-fd", "--off-feed", "12h", "--road", "13h")]
    [InlineData("--off-feed: \"long\" does not start with a number", "--live-state", "full-fed", "--off-feed", "long", "--road", "3h")]
    [InlineData("--own-batches: \"x\" is not a number of batches; expected a whole number of 1 or more", "--live-state", "12h", "--dressing", "71%", "--own-batches", "x")]
    [InlineData("--shrink: \"1.5%\" is out of range; expected 0 % to 1 %", "--live-state", "12h", "--shrink", "1.5%")]
    [InlineData("--own-batches: belongs to a ratio of your own", "--live-state", "12h", "--own-batches", "3")]
    [InlineData("--trim: is in the dressing ratio planning-fast and own batches already", "--live-state", "12h", "--dressing", "71%", "--trim", "1%")]
    [InlineData("--drip: belongs to --chill", "--live-state", "12h", "--drip", "3%")]
    [InlineData("--tenders: the set rudn-42d has no boneless breast", "--live-state", "12h", "--tenders", "cited")]
    [InlineData("--exponents: \"breast\" is no exponent", "--live-state", "12h", "--exponents", "breast")]
    [InlineData("--exponents: The piece \"thigh\" has no exponent, and none is published that would fit every set", "--live-state", "12h", "--exponents", "breast=1.1", "--shares-at", "2.1kg")]
    [InlineData("--shares-at: is needed with exponents of your own", "--live-state", "12h", "--exponents", "breast=1.1,thigh=1,drumstick=1,wing=1,frame=1")]
    public void What_is_not_known_is_asked_where_it_is_needed(string problem, params string[] options)
    {
        ConsoleRun run = ConsoleRun.Of(["cuts", "--live", "2.9kg", "--birds", "300", .. options]);

        run.Exit.Should().Be(2);
        run.Errors.Should().Contain(problem);
        run.ErrorLines.Should().HaveCount(1);
    }

    [Fact]
    public void The_state_of_the_live_weight_is_never_taken_for_granted() =>
        ConsoleRun.Of("cuts", "--live", "2.9kg", "--birds", "300").Errors.Should().Contain("--live-state");
}
