using System.Globalization;
using System.Text;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Files;

/// <summary>A timeline as a calendar that phones and computers read: iCalendar, RFC 5545.</summary>
public static class CalendarFile
{
    /// <summary>Section 3.1: a line holds at most 75 octets, a longer one goes on behind a line break and a space.</summary>
    private const int MostOctets = 75;

    /// <summary>The calendar as text, the same for the same entries.</summary>
    /// <param name="batch">The batch, as the farm calls it: part of every entry's title and identity.</param>
    /// <param name="entries">What to do on which day. Times are the farm's own: they carry no zone.</param>
    /// <param name="made">When the calendar was made, in universal time.</param>
    public static string Write(string batch, IReadOnlyList<TimelineEntry> entries, DateTime made)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(entries);
        StringBuilder text = new();
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, "PRODID:-//Poultry.Growth//Timeline//EN");
        for (int at = 0; at < entries.Count; at++)
        {
            Event(text, batch, entries[at], string.Create(CultureInfo.InvariantCulture, $"{entries[at].Date:yyyyMMdd}-{at + 1}-{Identity(batch)}@poultry-growth"), made);
        }

        Line(text, "END:VCALENDAR");
        return text.ToString();
    }

    private static void Event(StringBuilder text, string batch, TimelineEntry entry, string identity, DateTime made)
    {
        Line(text, "BEGIN:VEVENT");
        Line(text, "UID:" + identity);
        Line(text, string.Create(CultureInfo.InvariantCulture, $"DTSTAMP:{made:yyyyMMdd'T'HHmmss'Z'}"));
        Line(text, entry.Time is { } time
            ? string.Create(CultureInfo.InvariantCulture, $"DTSTART:{entry.Date:yyyyMMdd}T{time:HHmmss}")
            : string.Create(CultureInfo.InvariantCulture, $"DTSTART;VALUE=DATE:{entry.Date:yyyyMMdd}"));
        Line(text, "SUMMARY:" + Escaped(batch + ": " + entry.What));
        Line(text, "DESCRIPTION:" + Escaped(entry.Why + "\nWrite down: " + entry.Record + (entry.Caution is { } caution ? "\n" + caution.Text : "")));
        Line(text, "END:VEVENT");
    }

    /// <summary>Letters, digits and hyphens of a name.</summary>
    private static string Identity(string batch) => string.Concat(batch.Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));

    /// <summary>Section 3.3.11.</summary>
    private static string Escaped(string value) => value
        .Replace("\\", "\\\\", StringComparison.Ordinal).Replace(";", "\\;", StringComparison.Ordinal).Replace(",", "\\,", StringComparison.Ordinal)
        .ReplaceLineEndings("\\n");

    private static void Line(StringBuilder text, string line)
    {
        int octets = 0;
        foreach (Rune rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                text.Append("\r\n ");
                octets = 1;
            }

            text.Append(rune);
            octets += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }
}
