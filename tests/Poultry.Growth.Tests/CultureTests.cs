using System.Globalization;

namespace Poultry.Growth.Tests;

/// <summary>Without culture data every culture prints like the invariant one, and the runs under other cultures would pass for nothing.</summary>
public class CultureTests
{
    /// <summary>Set by .ci/run beside LC_ALL: the culture that this run must be under.</summary>
    private const string Wanted = "POULTRY_GROWTH_CULTURE";

    [Fact]
    public void The_run_is_under_the_culture_that_was_asked_for()
    {
        string? wanted = Environment.GetEnvironmentVariable(Wanted);
        CultureInfo culture = wanted is null ? CultureInfo.GetCultureInfo("de-DE") : CultureInfo.CurrentCulture;

        culture.Name.Should().Be(wanted ?? "de-DE");
        1.5.ToString(culture).Should().Be("1,5");
    }

    [Fact]
    public void Numbers_without_a_culture_really_take_that_of_the_run()
    {
        string separator = CultureInfo.CurrentCulture.NumberFormat.NumberDecimalSeparator;
        string expected = Environment.GetEnvironmentVariable(Wanted) is null ? "1" + separator + "5" : "1,5";

        $"{1.5}".Should().Be(expected);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ru-RU")]
    public void Culture_data_are_installed(string name) =>
        1.5.ToString(CultureInfo.GetCultureInfo(name)).Should().Be("1,5");
}
