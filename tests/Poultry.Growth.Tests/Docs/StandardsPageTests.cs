using Poultry.Growth.Housing;

namespace Poultry.Growth.Tests.Docs;

/// <summary>docs/standards.md says what the library says.</summary>
public class StandardsPageTests
{
    [Fact]
    public void The_page_is_fresh() => GeneratedPage.ShouldBeFresh(StandardsPage.Path, StandardsPage.Text());

    [Fact]
    public void The_invented_holdings_are_fresh() => GeneratedPage.ShouldBeFresh(HoldingsPage.Path, HoldingsPage.Text());

    [Fact]
    public void Every_recalled_row_is_marked_on_the_page() =>
        StandardsPage.Text().Split('\n').Count(line => line.Contains("**memory, unverified**", StringComparison.Ordinal)).Should().Be(LimitBook.Shipped.Count(limit => limit.IsUnverified));
}
