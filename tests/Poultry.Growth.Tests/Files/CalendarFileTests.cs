using System.Text;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

/// <summary>RFC 5545: sections 3.1 (lines), 3.3.11 (text), 3.6.1 (events).</summary>
public class CalendarFileTests
{
    private static readonly IReadOnlyList<TimelineEntry> Entries =
        Timeline.Of(new() { Placed = new(2027, 4, 12), AgeAtPlacement = Age.FromDays(1), Date = new() { Date = new(2027, 6, 8) } });

    private static readonly string Text = CalendarFile.Write("Märzküken; Wiese 3, oben", Entries, new DateTime(2027, 1, 2, 3, 4, 5, DateTimeKind.Utc));

    [Fact]
    public void Every_line_ends_in_CRLF_and_holds_at_most_75_octets()
    {
        string[] lines = Text.Split("\r\n");

        lines[^1].Should().BeEmpty();
        lines.Should().OnlyContain(line => Encoding.UTF8.GetByteCount(line) <= 75 && !line.Contains('\n') && !line.Contains('\r'));
        lines.Should().Contain(line => line.StartsWith(' '), "something was folded");
    }

    [Fact]
    public void Unfolded_it_says_what_the_timeline_says()
    {
        string[] lines = Text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n");

        lines.Count(line => line == "BEGIN:VEVENT").Should().Be(Entries.Count);
        lines.Count(line => line == "END:VEVENT").Should().Be(Entries.Count);
        lines.Should().Contain("SUMMARY:Märzküken\\; Wiese 3\\, oben: Deliver the birds");
        lines.Should().Contain("DTSTART:20270608T070000").And.Contain("DTSTART;VALUE=DATE:20270412").And.Contain("DTSTAMP:20270102T030405Z");
        lines.Should().Contain(line => line.StartsWith("DESCRIPTION:The plant's rule\\, 8 to 12 h as a rule: full crops", StringComparison.Ordinal) && line.Contains("\\nWrite down: time\\n", StringComparison.Ordinal));
        lines.Where(line => line.StartsWith("UID:", StringComparison.Ordinal)).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void It_begins_and_ends_as_a_calendar() =>
        Text.Should().StartWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:").And.EndWith("END:VEVENT\r\nEND:VCALENDAR\r\n");
}
