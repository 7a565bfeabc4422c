using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Housing;
using Poultry.Growth.Tests.Docs;

namespace Poultry.Growth.Tests.Housing;

/// <summary>The limits that come with the library are those of their table, and those from memory say so wherever they go.</summary>
public class LimitBookTests
{
    private const string Folder = "src/Poultry.Growth/Housing/Standards/";

    private static LimitReading Table => LimitFile.Read(Repository.PathOf(Folder + "limits.csv"));

    [Fact]
    public void The_library_carries_the_table_as_it_stands()
    {
        Table.Problems.Should().BeEmpty();
        GeneratedPage.ShouldBeFresh(Folder + "LimitBook.g.cs", LimitBookSource.Of(Table.Limits));
    }

    [Fact]
    public void Every_row_of_the_table_is_there_with_its_source()
    {
        LimitBook.Shipped.Select(limit => limit.ToString()).Should().Equal(Table.Limits.Select(limit => limit.ToString()));
        LimitBook.Shipped.Select(limit => limit.Citation.ToString()).Should().Equal(Table.Limits.Select(limit => limit.Citation.ToString()));
        LimitBook.Shipped.Should().HaveCountGreaterThan(200);
    }

    [Fact]
    public void A_limit_from_memory_reaches_no_verdict_without_the_word_unverified()
    {
        Limit[] recalled = [.. LimitBook.Shipped.Where(limit => limit.HowKnown == HowKnown.Memory)];
        Keeping[] keepings =
        [
            new(),
            .. LimitBook.Shipped.Select(limit => limit.Instrument.Jurisdiction).Distinct().SelectMany(place => Enum.GetValues<RearingSystem>().Select(system =>
                new Keeping { Place = place, System = system, House = HouseKind.Mobile, Meets = [.. recalled.Select(limit => limit.Requires).OfType<string>()], Measured = [Measured.Flock(600), Measured.BirdWeight(Mass.FromKilograms(2))] })),
        ];

        recalled.Should().NotBeEmpty();
        foreach (LimitVerdict verdict in keepings.SelectMany(keeping => LimitVerdict.Of(recalled, keeping)))
        {
            verdict.Text.Should().Contain("unverified");
            verdict.ToString().Should().Contain("unverified");
            verdict.Limit.ToString().Should().Contain("unverified");
            verdict.Binds.Should().BeFalse("nobody chose {0}", verdict.Limit);
        }
    }

    [Fact]
    public void Every_verdict_names_instrument_and_edition_and_is_no_legal_advice()
    {
        foreach (LimitVerdict verdict in LimitVerdict.Of(LimitBook.Shipped, new Keeping { Place = "Germany", System = RearingSystem.Indoor }))
        {
            verdict.Text.Should().ContainAll(verdict.Limit.Instrument.Name, verdict.Limit.Instrument.Edition, "Not legal advice; check the current text.");
            verdict.Why.Should().NotBeEmpty();
        }
    }

    [Fact]
    public void There_is_no_default_country() =>
        LimitVerdict.Of(LimitBook.Shipped, new Keeping { System = RearingSystem.Indoor, House = HouseKind.Fixed, Measured = [Measured.Flock(5000)] })
            .Where(verdict => verdict.Binds).ShouldBeNone();
}
